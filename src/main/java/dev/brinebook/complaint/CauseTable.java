// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.complaint;

import dev.brinebook.source.Table;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What is known of each cause beside its signs. Source: [CP-SOFTENER-FAULTS]. */
final class CauseTable {

    private static final String NONE = "-";
    private static final String REPLACED = "*";
    private static final int FIRST_FACTOR = 4;
    private static final int COLUMNS = 13;

    /** What a cause changes. The order is that of the columns of the table. */
    enum Factor {
        CAPACITY, SALT, METER, USE, HARDNESS, RAW, DRAIN
    }

    /**
     * A cause.
     *
     * @param proof the sign that proves it; empty where none does
     * @param hurts whether somebody can come to harm
     * @param ofMeters whether it needs a meter that starts regenerations
     * @param factors what it changes, of a typical case
     * @param stops whether regenerations stop
     * @param severity the sign whose number replaces factors
     * @param replaced those factors
     */
    record Row(Optional<Sign> proof, boolean hurts, boolean ofMeters, Map<Factor, Double> factors, boolean stops,
            Optional<Sign> severity, Set<Factor> replaced) {
    }

    private static final Map<Cause, Row> ROWS = read();

    private CauseTable() {
    }

    static Row of(Cause cause) {
        return ROWS.get(cause);
    }

    /** Causes that a softener with this control can have. */
    static Set<Cause> possible(boolean metered) {
        Set<Cause> possible = EnumSet.allOf(Cause.class);
        possible.removeIf(cause -> of(cause).ofMeters && !metered);
        return possible;
    }

    private static Map<Cause, Row> read() {
        Map<Cause, Row> rows = new EnumMap<>(Cause.class);
        for (String[] cells : Table.read("/complaint/causes.csv", '|', COLUMNS)) {
            Map<Factor, Double> factors = new EnumMap<>(Factor.class);
            Set<Factor> replaced = EnumSet.noneOf(Factor.class);
            for (Factor factor : Factor.values()) {
                String cell = cells[FIRST_FACTOR + factor.ordinal()];
                factors.put(factor, Double.parseDouble(cell.replace(REPLACED, "")));
                if (cell.endsWith(REPLACED)) {
                    replaced.add(factor);
                }
            }
            rows.put(SignTable.cause(cells[0]), new Row(sign(cells[1]), cells[2].equals("yes"), cells[3].equals("meter"), factors,
                    cells[COLUMNS - 2].equals("yes"), sign(cells[COLUMNS - 1]), replaced));
        }
        return rows;
    }

    private static Optional<Sign> sign(String cell) {
        return cell.equals(NONE) ? Optional.empty() : Optional.of(SignTable.sign(cell));
    }
}
