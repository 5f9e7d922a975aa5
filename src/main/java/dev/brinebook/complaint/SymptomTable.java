// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.complaint;

import dev.brinebook.guard.Guard;
import dev.brinebook.source.Table;
import java.util.EnumMap;
import java.util.Map;

/** How often a cause shows a symptom. Source: [CP-SOFTENER-FAULTS]. */
public final class SymptomTable {

    private static final Map<Cause, String[]> LETTERS = read();
    /** Weight that makes a symptom certain. */
    private static final double CERTAIN = 10;

    /**
     * Weights of the classes of the table. Their ratios alone matter for a single symptom.
     *
     * @param often of O
     * @param sometimes of S
     * @param rarely of R
     */
    public record Weights(double often, double sometimes, double rarely) {

        public static final double ASSUMED_OFTEN = 6;
        public static final double ASSUMED_SOMETIMES = 2;
        public static final double ASSUMED_RARELY = 0.5;
        /** Weight of what is not to be expected: a symptom seen wrongly, or two faults at once. */
        public static final double ASSUMED_NOT = 0.05;
        public static final double MAX = 9;
        public static final Weights USUAL = new Weights(ASSUMED_OFTEN, ASSUMED_SOMETIMES, ASSUMED_RARELY);

        public Weights {
            Guard.within(often, ASSUMED_NOT, MAX, "often");
            Guard.within(sometimes, ASSUMED_NOT, MAX, "sometimes");
            Guard.within(rarely, ASSUMED_NOT, MAX, "rarely");
        }

        double of(String letter) {
            return switch (letter) {
                case "O" -> often;
                case "S" -> sometimes;
                case "R" -> rarely;
                default -> ASSUMED_NOT;
            };
        }
    }

    private SymptomTable() {
    }

    /** Probability that somebody with this fault reports the symptom. */
    static double probability(Cause cause, Symptom symptom, Weights weights) {
        return weights.of(LETTERS.get(cause)[symptom.ordinal() + 1]) / CERTAIN;
    }

    private static Map<Cause, String[]> read() {
        Map<Cause, String[]> letters = new EnumMap<>(Cause.class);
        for (String[] row : Table.read("/complaint/symptoms.csv", ',', Symptom.values().length + 1)) {
            letters.put(SignTable.cause(row[0]), row);
        }
        return letters;
    }
}
