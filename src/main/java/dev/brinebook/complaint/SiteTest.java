// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.complaint;

import dev.brinebook.source.Table;
import dev.brinebook.text.Localizable;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What can be done at a softener to find a fault. Source: [CP-SOFTENER-FAULTS] for minutes and signs. */
public enum SiteTest implements Localizable {
    LOOK_AROUND, READ_CONTROLLER, TASTE_RAW_WATER, HARDNESS_TESTS, HOT_WATER_TEST, HYDROMETER, SALT_BOOKS, CHLORIDE_TEST,
    LOOK_AT_SCREEN, MARK_LEVEL_OVERNIGHT, HOUSE_METER_AT_NIGHT, BRINE_DRAW, STEP_THROUGH, DRAIN_BUCKET, REFILL_BUCKET,
    PRESSURE_TEST, METER_CHECK, ACID_TEST, TANK_DEPTH, HOT_WATER_RUN, BREAKTHROUGH_RUN, HAND_START;

    /** Least gain that is worth a test, bit. */
    static final double ASSUMED_LEAST_GAIN_BITS = 0.02;

    /** What every further test takes beside its own minutes: to fetch the kit, to write down, to ask again. */
    public static final double ASSUMED_MINUTES_OF_A_ROUND = 5;

    private record Row(double minutes, List<Sign> signs) {
    }

    private static final Map<SiteTest, Row> ROWS = rows();

    /**
     * What a test is expected to show.
     *
     * @param test to make
     * @param minutes of somebody who is there
     * @param gainBits expected fall of entropy
     */
    public record Advice(SiteTest test, double minutes, double gainBits) {

        /** Fall of entropy for a minute, those of the round included. */
        public double gainBitsPerMinute() {
            return gainBits / (minutes + ASSUMED_MINUTES_OF_A_ROUND);
        }
    }

    private static Map<SiteTest, Row> rows() {
        Map<SiteTest, Row> rows = new EnumMap<>(SiteTest.class);
        for (String[] row : Table.read("/complaint/tests.csv", '|', 3)) {
            rows.put(valueOf(SignTable.constant(row[0])), new Row(Double.parseDouble(row[1]),
                    Arrays.stream(row[2].split(" ")).map(SignTable::sign).toList()));
        }
        return rows;
    }

    public double minutes() {
        return ROWS.get(this).minutes;
    }

    /** The signs that it shows. */
    public List<Sign> signs() {
        return ROWS.get(this).signs;
    }

    /** The test that shows a sign. */
    static SiteTest showing(Sign sign) {
        return Arrays.stream(values()).filter(test -> test.signs().contains(sign)).findFirst().orElseThrow();
    }

    /** Tests that are worth their minutes, the most information per minute first. */
    static List<Advice> advice(Belief belief, Set<Sign> known) {
        return Arrays.stream(values()).map(test -> adviceOn(test, belief, known))
                .filter(advice -> advice.gainBits >= ASSUMED_LEAST_GAIN_BITS)
                .sorted(Comparator.comparingDouble(Advice::gainBitsPerMinute).reversed().thenComparing(Advice::test)).toList();
    }

    static Advice adviceOn(SiteTest test, Belief belief, Set<Sign> known) {
        return new Advice(test, test.minutes(), test.gainBits(belief, known));
    }

    private double gainBits(Belief belief, Set<Sign> known) {
        List<Sign> open = signs().stream().filter(sign -> !known.contains(sign)).toList();
        if (open.isEmpty()) {
            return 0;
        }
        double[] within = new double[Cause.values().length];
        double[][] joint = {belief.shares()};
        for (Sign sign : open) {
            double[] entropies = SignTable.entropyBits(sign);
            Arrays.setAll(within, c -> within[c] + entropies[c]);
            joint = product(joint, SignTable.outcomesOf(sign));
        }
        return belief.gainBits(joint, within);
    }

    /** Outcomes of two signs that do not depend on each other under any cause. */
    private static double[][] product(double[][] one, double[][] other) {
        double[][] joint = new double[one.length * other.length][];
        for (int i = 0; i < one.length; i++) {
            for (int j = 0; j < other.length; j++) {
                double[] cell = one[i].clone();
                for (int c = 0; c < cell.length; c++) {
                    cell[c] *= other[j][c];
                }
                joint[i * other.length + j] = cell;
            }
        }
        return joint;
    }

    @Override
    public String textId() {
        return Localizable.idOf("siteTest", this);
    }
}
