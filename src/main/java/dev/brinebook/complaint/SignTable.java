// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.complaint;

import dev.brinebook.source.Table;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What each cause lets one expect of each sign. Source: [CP-SOFTENER-FAULTS]. */
final class SignTable {

    /** Share of readings that are wrong in a way that nobody foresees. */
    static final double ASSUMED_STRAY_SHARE = 0.02;
    /** Fewest uncertainties that two ends of outcomes lie apart. */
    private static final double CLOSEST_ENDS = 0.5;
    private static final int MOST_OUTCOMES = 8;

    private static final Map<Sign, Set<Cause>> NAMED = new EnumMap<>(Sign.class);
    private static final Map<Sign, Map<Cause, Double>> LOOKS = looks();
    private static final Map<Sign, Double> USUAL = new EnumMap<>(Sign.class);
    private static final Map<Sign, Map<Cause, Prediction>> NUMBERS = numbers();
    private static final Map<Sign, double[][]> OUTCOMES = outcomes();
    private static final Map<Sign, double[]> ENTROPIES = entropies();

    private SignTable() {
    }

    /** Probability that a look is answered so. */
    static double look(Sign sign, Cause cause, boolean yes) {
        double probability = LOOKS.get(sign).get(cause);
        return yes ? probability : 1 - probability;
    }

    /** Whether a look has a probability of its own under a cause. */
    static boolean isNamed(Sign sign, Cause cause) {
        return NAMED.get(sign).contains(cause);
    }

    static Prediction prediction(Sign sign, Cause cause) {
        return NUMBERS.get(sign).get(cause);
    }

    /** Standard uncertainty of a usual test. */
    static double usualUncertainty(Sign sign) {
        return USUAL.get(sign);
    }

    /** Density of a reading, that of stray readings included. */
    static double density(Observation reading, Cause cause) {
        Map<Cause, Prediction> all = NUMBERS.get(reading.sign());
        return (1 - ASSUMED_STRAY_SHARE) * all.get(cause).density(reading.value(), reading.uncertainty())
                + ASSUMED_STRAY_SHARE / (high(all) - low(all));
    }

    /** Probability of each outcome of a sign, in the order of causes: rows are yes and no, or intervals of the number. */
    static double[][] outcomesOf(Sign sign) {
        return OUTCOMES.get(sign);
    }

    /** Entropy of the outcomes of a sign under each cause, bit. */
    static double[] entropyBits(Sign sign) {
        return ENTROPIES.get(sign);
    }

    private static Map<Sign, double[]> entropies() {
        Map<Sign, double[]> entropies = new EnumMap<>(Sign.class);
        OUTCOMES.forEach((sign, rows) -> entropies.put(sign, Arrays.stream(Cause.values()).mapToDouble(cause -> Belief.entropyBits(
                Arrays.stream(rows).mapToDouble(row -> row[cause.ordinal()]).toArray())).toArray()));
        return entropies;
    }

    private static Map<Sign, Map<Cause, Double>> looks() {
        Map<Sign, Map<Cause, Double>> looks = new EnumMap<>(Sign.class);
        for (String[] row : Table.read("/complaint/looks.csv", '|', 3)) {
            Map<Cause, Double> of = new EnumMap<>(Cause.class);
            named(row[2], row[1]).forEach((cause, text) -> of.put(cause, Double.parseDouble(text)));
            looks.put(sign(row[0]), of);
            NAMED.put(sign(row[0]), Arrays.stream(row[2].split(" ")).map(cell -> cause(cell.split("=")[0])).collect(Collectors.toSet()));
        }
        return looks;
    }

    private static Map<Sign, Map<Cause, Prediction>> numbers() {
        Map<Sign, Map<Cause, Prediction>> numbers = new EnumMap<>(Sign.class);
        for (String[] row : Table.read("/complaint/numbers.csv", '|', 4)) {
            Map<Cause, Prediction> of = new EnumMap<>(Cause.class);
            named(row[3], row[2]).forEach((cause, text) -> of.put(cause, Prediction.of(text)));
            numbers.put(sign(row[0]), of);
            USUAL.put(sign(row[0]), Double.parseDouble(row[1]));
        }
        return numbers;
    }

    /** The text of every cause: its own, else that of the rest. */
    private static Map<Cause, String> named(String cells, String rest) {
        Map<Cause, String> texts = new EnumMap<>(Cause.class);
        for (Cause cause : Cause.values()) {
            texts.put(cause, rest);
        }
        for (String cell : cells.split(" ")) {
            String[] parts = cell.split("=");
            texts.put(cause(parts[0]), parts[1]);
        }
        return texts;
    }

    private static Map<Sign, double[][]> outcomes() {
        Map<Sign, double[][]> outcomes = new EnumMap<>(Sign.class);
        for (Sign sign : Sign.values()) {
            outcomes.put(sign, sign.isLook() ? lookOutcomes(sign) : numberOutcomes(sign));
        }
        return outcomes;
    }

    private static double[][] lookOutcomes(Sign sign) {
        double[][] rows = new double[2][Cause.values().length];
        for (Cause cause : Cause.values()) {
            rows[0][cause.ordinal()] = look(sign, cause, true);
            rows[1][cause.ordinal()] = look(sign, cause, false);
        }
        return rows;
    }

    /** Intervals between the ends of all predictions: within them no cause differs from itself. */
    private static double[][] numberOutcomes(Sign sign) {
        double usual = usualUncertainty(sign);
        double[] ends = ends(NUMBERS.get(sign), usual);
        double[][] rows = new double[ends.length + 1][Cause.values().length];
        for (Cause cause : Cause.values()) {
            double before = 0;
            for (int i = 0; i <= ends.length; i++) {
                double below = i == ends.length ? 1 : prediction(sign, cause).below(ends[i], usual);
                rows[i][cause.ordinal()] = (1 - ASSUMED_STRAY_SHARE) * (below - before) + ASSUMED_STRAY_SHARE / rows.length;
                before = below;
            }
        }
        return rows;
    }

    private static double[] ends(Map<Cause, Prediction> all, double usual) {
        TreeSet<Double> ends = new TreeSet<>();
        all.values().stream().flatMap(prediction -> prediction.ranges().stream()).forEach(range -> {
            ends.add(range.low());
            ends.add(range.high());
        });
        double apart = CLOSEST_ENDS * usual;
        double[] kept = spread(ends, apart);
        while (kept.length >= MOST_OUTCOMES) {
            apart *= 2;
            kept = spread(ends, apart);
        }
        return kept;
    }

    private static double[] spread(TreeSet<Double> ends, double apart) {
        TreeSet<Double> kept = new TreeSet<>();
        for (double end : ends) {
            if (kept.isEmpty() || end - kept.last() >= apart) {
                kept.add(end);
            }
        }
        return kept.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static double low(Map<Cause, Prediction> all) {
        return all.values().stream().mapToDouble(Prediction::low).min().orElseThrow();
    }

    private static double high(Map<Cause, Prediction> all) {
        return all.values().stream().mapToDouble(Prediction::high).max().orElseThrow();
    }

    static Sign sign(String wire) {
        return Sign.valueOf(constant(wire));
    }

    static Cause cause(String wire) {
        return Cause.valueOf(constant(wire));
    }

    /** The constant of a code in camel case. */
    static String constant(String wire) {
        return wire.replaceAll("([A-Z])", "_$1").toUpperCase(Locale.ROOT);
    }
}
