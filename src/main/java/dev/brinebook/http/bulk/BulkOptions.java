// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import dev.brinebook.api.AnswerPart;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.CsvColumn;
import dev.brinebook.api.CsvColumns;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

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
        return CsvColumns.ofAnswer(answer).stream().filter(this::isWanted)
                .sorted(Comparator.comparingInt(column -> place(column.name()))).toList();
    }

    /** The same, with answers that have nothing but what is in their columns. */
    BulkOptions inColumns(Class<? extends Record> answer) {
        return new BulkOptions(check, onlyFaulty, afterUpload, from, table, parts.in(columns(answer)));
    }

    private boolean isWanted(CsvColumn column) {
        if (!column.isOfEveryUnit()) {
            return isWanted(column.path());
        }
        List<String> list = column.path().subList(0, column.path().size() - 1);
        return Stream.of("value", "unit").allMatch(name -> isWanted(Stream.concat(list.stream(), Stream.of(name)).toList()));
    }

    /** The fields asked for of which a table has no column, each with its index. */
    Map<Integer, String> withoutColumn(Class<? extends Record> answer) {
        List<CsvColumn> columns = columns(answer);
        Map<Integer, String> without = new TreeMap<>();
        for (int i = 0; i < parts.fields().size(); i++) {
            String field = parts.fields().get(i);
            if (columns.stream().map(CsvColumn::name).noneMatch(name -> (name + ".").startsWith(field + ".")
                    || field.startsWith(name + "."))) {
                without.put(i, field);
            }
        }
        return without;
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
