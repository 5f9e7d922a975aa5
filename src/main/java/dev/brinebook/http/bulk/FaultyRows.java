// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import dev.brinebook.api.FormulaGuard;
import java.util.ArrayList;
import java.util.List;

/** The rows with errors alone, in the caller's own columns, and behind them what is wrong: a table to correct and send again. */
final class FaultyRows implements AnswerLines {

    private final RowReader lines;
    private final CsvRows rows;

    FaultyRows(RowReader lines) {
        this.lines = lines;
        this.rows = new CsvRows(lines.form().separator());
    }

    @Override
    public byte[] start() {
        List<String> names = new ArrayList<>(lines.columns().stream().map(FormulaGuard::ofPassed).toList());
        AnswerTable.FIRST.forEach(name -> names.add("problem." + name));
        names.addAll(CsvRows.PROBLEM);
        return rows.row(names.toArray(String[]::new));
    }

    @Override
    public byte[] answer(SentLine line, byte[] answer) {
        return new byte[0];
    }

    /** What is no row stands in its first cell, as it came. */
    @Override
    public byte[] problem(SentLine line, int status, byte[] problem) {
        int own = lines.columns().size();
        List<String> sent = line.cells() != null ? lines.own(line) : line.bytes() == null ? List.of() : List.of(line.text());
        String[] cells = new String[own + AnswerTable.OF_PROBLEMS.size()];
        for (int i = 0; i < Math.min(own, sent.size()); i++) {
            cells[i] = FormulaGuard.ofPassed(sent.get(i));
        }
        cells[own] = Long.toString(line.number());
        cells[own + 1] = Integer.toString(status);
        CsvRows.putProblem(cells, problem);
        return rows.row(cells);
    }

    /** A row more would be sent again. */
    @Override
    public byte[] summary(CheckSummary.Totals totals) {
        return new byte[0];
    }
}
