// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import dev.brinebook.api.Violation;
import dev.brinebook.api.WireNames;
import dev.brinebook.http.problem.ProblemType;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Counts what a dry run finds, each kind of error of each place once, up to a limit. */
final class CheckSummary {

    /** Kinds of error that are listed. */
    static final int MAX_KINDS = 100;

    private final Map<List<String>, Kind> kinds = new LinkedHashMap<>();
    private final RequestLines lines;
    private long ready;
    private long faulty;
    private boolean more;

    CheckSummary(RequestLines lines) {
        this.lines = lines;
    }

    /**
     * What was found.
     *
     * @param lines lines read
     * @param ready those without errors
     * @param faulty those with errors
     * @param kinds kinds of error, in the order of their first lines
     * @param complete whether all kinds are listed
     */
    record Totals(long lines, long ready, long faulty, List<Kind> kinds, boolean complete) {
    }

    /**
     * One kind of error of one place.
     *
     * @param pointer where in the request, null where it is an error of the whole line
     * @param column the column of the table, or null
     * @param code code of the error, or path of the problem
     * @param lines lines that have it
     * @param firstLine the first of them
     */
    record Kind(String pointer, String column, String code, long lines, long firstLine) {

        private Kind again() {
            return new Kind(pointer, column, code, lines + 1, firstLine);
        }
    }

    void countReady() {
        ready++;
    }

    void countFaulty(long line, List<Violation> violations) {
        faulty++;
        violations.forEach(violation -> count(new Kind(violation.pointer(), lines.columnOf(violation), WireNames.of(violation.code()), 1,
                line)));
    }

    void countFaulty(long line, ProblemType problem) {
        faulty++;
        count(new Kind(null, null, problem.path(), 1, line));
    }

    private void count(Kind kind) {
        List<String> key = List.of(String.valueOf(kind.pointer), kind.code);
        if (kinds.containsKey(key) || kinds.size() < MAX_KINDS) {
            kinds.merge(key, kind, (known, again) -> known.again());
        } else {
            more = true;
        }
    }

    Totals totals() {
        return new Totals(ready + faulty, ready, faulty, List.copyOf(kinds.values()), !more);
    }
}
