// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.field;

import dev.brinebook.measurement.Measured;
import dev.brinebook.source.Table;
import dev.brinebook.text.Localizable;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A further measurement that would make a result more certain. */
public enum NextMeasurement implements Localizable {
    HARDNESS_TESTS, DRAIN_BUCKET, REFILL_BUCKET, SALT_BOOKS, BRINE_LEVELS, NAMEPLATE, TANK_DEPTH, BREAKTHROUGH_RUN, HYDROMETER,
    WEIGH_BUCKET, WEIGH_BUCKET_FOR_DRAIN, METER_CHECK;

    private static final List<Row> ROWS = Table.read("/field/next-measurements.csv", ',', 6).stream().map(Row::of).toList();
    private static final String NONE = "-";
    /** The least that is worth a measurement: a spread that falls by a twentieth. */
    private static final double ASSUMED_LEAST_GAIN = -StrictMath.log(0.95);

    /** Spread below which a question is answered well enough for any advice. */
    public static final double ASSUMED_ENOUGH_SPREAD = 0.02;
    /** Part of the variance of a reading that a better instrument takes away. */
    private static final double ASSUMED_IMPROVEMENT = 0.95;

    private record Row(NextMeasurement measurement, double minutes, Optional<FieldQuantity> gives, FieldQuestion settles, double spread,
            Optional<ReadingCode> improves) {

        static Row of(String[] cells) {
            return new Row(NextMeasurement.valueOf(constant(cells[0])), Double.parseDouble(cells[1]),
                    cells[2].equals(NONE) ? Optional.empty() : Optional.of(FieldQuantity.valueOf(constant(cells[2]))),
                    FieldQuestion.valueOf(constant(cells[3])), Double.parseDouble(cells[4]),
                    cells[5].equals(NONE) ? Optional.empty() : Optional.of(ReadingCode.valueOf(constant(cells[5]))));
        }

        private static String constant(String wire) {
            return wire.replaceAll("([A-Z])", "_$1").toUpperCase(Locale.ROOT);
        }
    }

    /**
     * What a measurement would do.
     *
     * @param measurement to make
     * @param settles the question that it answers
     * @param minutes that it takes on site
     * @param spreadNow standard uncertainty of the answer as a share, {@link FieldQuestion#spread}
     * @param spreadAfter the same afterwards, to expect
     */
    public record Advice(NextMeasurement measurement, FieldQuestion settles, double minutes, double spreadNow, double spreadAfter) {

        /** Fall of uncertainty, natural logarithm of the ratio of the spreads: that of the entropy of a normal distribution. */
        double gain() {
            return StrictMath.log(Math.max(spreadNow, ASSUMED_ENOUGH_SPREAD) / Math.max(spreadAfter, ASSUMED_ENOUGH_SPREAD));
        }

        double gainPerMinute() {
            return gain() / minutes;
        }
    }

    @Override
    public String textId() {
        return Localizable.idOf("nextMeasurement", this);
    }

    /**
     * Every measurement that would make a result more certain, the largest gain per minute first.
     *
     * <pre>u' = 1 / √(1/u² + 1/u_n²) for a further answer;  u' = u √(1 − p) for a better reading;  gain = ln(u/u') / minutes</pre>
     *
     * <p>u spread now; u_n that of the further answer; p part of the reading in the variance. Spreads below 2 % count as 2 %.
     * Validity: answers that do not depend on each other.
     * Source: [OWN-ASSUMPTION]; the fall of entropy by definition.
     * Deviation: what an answer may contradict is not foreseen.
     */
    public static List<Advice> of(FieldResults results) {
        return ROWS.stream().flatMap(row -> advice(row, results).stream())
                .filter(advice -> advice.gain() >= ASSUMED_LEAST_GAIN)
                .sorted(Comparator.comparingDouble(Advice::gainPerMinute).reversed().thenComparing(Advice::measurement)).toList();
    }

    private static Optional<Advice> advice(Row row, FieldResults results) {
        double now = row.settles.spread(results);
        if (row.gives.isPresent()) {
            boolean known = row.gives.get() == FieldQuantity.CAPACITY ? results.capacity().isPresent()
                    : results.of(row.gives.get()).isPresent();
            return known ? Optional.empty() : Optional.of(new Advice(row.measurement, row.settles, row.minutes, now,
                    1 / Math.sqrt(1 / (now * now) + 1 / (row.spread * row.spread))));
        }
        Optional<Measured<ReadingCode>> answer = row.settles.answer(results);
        return answer.map(measured -> new Advice(row.measurement, row.settles, row.minutes, now,
                now * Math.sqrt(1 - ASSUMED_IMPROVEMENT * Math.min(1, measured.varianceShare(row.improves.orElseThrow())))));
    }
}
