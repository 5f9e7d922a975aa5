// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import dev.brinebook.api.AnswerPart;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.CsvColumn;
import dev.brinebook.api.CsvColumns;
import java.util.Comparator;
import java.util.List;

/**
 * What a caller asks of a stream, from its query.
 *
 * @param check whether lines are only read and checked, and nothing is calculated
 * @param onlyFaulty whether only lines with errors are answered, in a form to correct and send again
 * @param afterUpload whether the first answer waits for the last line
 * @param from first line answered; those before are counted and skipped
 * @param table what it says of a table
 * @param parts the parts of the answers that are wanted
 */
record BulkOptions(boolean check, boolean onlyFaulty, boolean afterUpload, long from, TableOptions table,
        AnswerParts parts) {

    /** Whether lines without errors get an answer. */
    boolean answersAll() {
        return !check && !onlyFaulty;
    }

    /** How answers are written as a table, where there is no table of requests. */
    TableForm form() {
        return new TableForm(table.separator() == null ? TableForm.USUAL.separator() : table.separator().sign(), table.numbers());
    }

    /** The columns that answers have: those wanted, in the order in which they were asked for. */
    List<CsvColumn> columns(Class<? extends Record> answer) {
        return CsvColumns.ofAnswer(answer).stream().filter(column -> isWanted(column.path()))
                .sorted(Comparator.comparingInt(column -> place(column.name()))).toList();
    }

    private boolean isWanted(List<String> path) {
        AnswerPart part = parts.wanted();
        for (String name : path) {
            part = part == null ? null : part.at(name);
        }
        return part != null;
    }

    /** Index of the field that a column belongs to; behind all others where it was not asked for. */
    private int place(String column) {
        for (int i = 0; i < parts.fields().size(); i++) {
            if (column.equals(parts.fields().get(i)) || column.startsWith(parts.fields().get(i) + ".")) {
                return i;
            }
        }
        return parts.fields().size();
    }
}
