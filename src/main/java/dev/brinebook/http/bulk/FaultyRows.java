// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import dev.brinebook.api.FormulaGuard;
import java.util.ArrayList;
import java.util.List;

/** The rows with errors alone, in the caller's own columns, and behind them what is wrong: a table to correct and send again. */
final class FaultyRows implements AnswerLines {

    /** The column of the text of a row whose cells could not be read; a row that has it is one to correct. */
    static final String UNREAD = "problem.row";
    /** In the place of the text of a row that is too long, or did not arrive. */
    static final String LEFT_OUT = "\u2026";

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
        names.add(UNREAD);
        names.addAll(CsvRows.PROBLEM);
        return rows.row(names.toArray(String[]::new));
    }

    @Override
    public byte[] answer(SentLine line, byte[] answer) {
        return new byte[0];
    }

    @Override
    public byte[] problem(SentLine line, int status, byte[] problem) {
        int own = lines.columns().size();
        List<String> sent = line.cells() == null ? List.of() : lines.own(line);
        String[] cells = new String[own + AnswerTable.OF_PROBLEMS.size()];
        for (int i = 0; i < sent.size(); i++) {
            cells[i] = FormulaGuard.ofPassed(sent.get(i));
        }
        cells[own] = Long.toString(line.number());
        cells[own + 1] = Integer.toString(status);
        cells[own + 2] = FormulaGuard.ofPassed(line.cells() == null ? unread(line) : lines.unread(line.cells()));
        CsvRows.putProblem(cells, problem);
        return rows.row(cells);
    }

    private static String unread(SentLine line) {
        return line.bytes() == null ? LEFT_OUT : line.text();
    }

    /** A row more would be sent again. */
    @Override
    public byte[] summary(CheckSummary.Totals totals) {
        return new byte[0];
    }
}
