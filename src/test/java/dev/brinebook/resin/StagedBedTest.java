// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

class StagedBedTest {

    private static final double END_POINT_MG_PER_L = 17.118;
    private static final double MG_PER_EQUIVALENT = 50_043.5;
    /** How far the reference numbers its rows ahead of the shifts; see the head of its file. */
    private static final int ROWS_AHEAD = 2;

    @ParameterizedTest
    @CsvFileSource(resources = "/resin/cross-column.csv", useHeadersInDisplayName = true)
    void agreesWithAnIndependentProgramShiftByShift(ArgumentsAccessor row) {
        Resin resin = new Resin(row.getDouble(2), row.getDouble(3), row.getInteger(1), Selectivity.GEL_8_PERCENT);
        FeedWater feed = water(row.getDouble(4), row.getDouble(5), row.getDouble(6));
        int rows = row.getInteger(10);
        double[] effluent = secondServiceMgPerL(resin, feed, row.getDouble(7), row.getInteger(8), row.getInteger(9), rows);
        double actual = switch (row.getString(11)) {
            case "effluent" -> effluent[row.getInteger(12) - ROWS_AHEAD];
            case "break" -> breakShift(effluent) + ROWS_AHEAD;
            case "removed" -> removed(effluent, row.getDouble(4), rows - ROWS_AHEAD) * resin.voidShare() / resin.stages();
            default -> throw new IllegalArgumentException(row.getString(11));
        };
        Printed.assertAgrees(row.getString(13), row.getString(14), actual);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/resin/cross-column-front.csv", useHeadersInDisplayName = true)
    void agreesWithAnIndependentProgramOnTheFrontIntoSodium(String quantity, int shift, String expected,
            String tolerance) {
        Resin resin = Resin.STANDARD.withStages(10);
        StagedBed bed = StagedBed.inEquilibriumWith(resin, FeedWater.brine(Salt.SODIUM_CHLORIDE, 1));
        double[] feed = water(300, 0.7, 1).ions();
        int shifts = 0;
        if (quantity.equals("crossing")) {
            while (bed.exitHardness() * MG_PER_EQUIVALENT < END_POINT_MG_PER_L || shifts == 0) {
                bed.advance(feed, 1, false);
                shifts++;
            }
            Printed.assertAgrees(expected, tolerance, shifts);
            return;
        }
        for (; shifts < shift; shifts++) {
            bed.advance(feed, 1, false);
        }
        int ion = quantity.equals("calcium") ? StageEquilibrium.CALCIUM : StageEquilibrium.MAGNESIUM;
        Printed.assertAgrees(expected, tolerance, bed.exit(ion) * 1000 / 2);
    }

    @Test
    void readsEveryRow() {
        assertEquals(23, Rows.in("/resin/cross-column.csv"));
        assertEquals(3, Rows.in("/resin/cross-column-front.csv"));
    }

    @Test
    void manyShiftsAtOnceComeToTheSameAsOneByOne() {
        Resin resin = Resin.STANDARD.withStages(15);
        FeedWater feed = water(300, 0.7, 1);
        StagedBed oneByOne = StagedBed.inEquilibriumWith(resin, FeedWater.brine(Salt.SODIUM_CHLORIDE, feed
                .totalEquivalentsPerLitre()));
        StagedBed atOnce = oneByOne.copy();
        for (int i = 0; i < 575 * 22; i++) {
            oneByOne.advance(feed.ions(), 1, false);
        }
        for (int i = 0; i < 575; i++) {
            atOnce.advance(feed.ions(), 22, false);
        }
        assertTrue(oneByOne.exitHardness() * MG_PER_EQUIVALENT > 1, "the front is about to arrive");
        assertEquals(oneByOne.heldHardness(), atOnce.heldHardness(), 1e-6 * oneByOne.heldHardness());
        assertEquals(1, atOnce.exitHardness() / oneByOne.exitHardness(), 1e-3);
    }

    /** With any ions in, the water ends up as strong as it should be and the resin as full. */
    @Test
    void everyStageIsInEquilibriumAndNeutral() {
        Random random = new Random(23);
        for (int n = 0; n < 2000; n++) {
            Resin resin = new Resin(0.5 + 2 * random.nextDouble(), 0.3 + 0.2 * random.nextDouble(), 1,
                    new Selectivity(1 + 4 * random.nextDouble(), 1 + 2 * random.nextDouble(), 1 + random.nextDouble()));
            double strength = StrictMath.pow(10, -4 + 4.5 * random.nextDouble());
            double[] share = {random.nextDouble(), random.nextInt(3) * random.nextDouble(), random.nextInt(2) * 0.5,
                random.nextInt(2) * random.nextDouble()};
            double sum = share[0] + share[1] + share[2] + share[3];
            FeedWater feed = new FeedWater(strength * share[0] / sum, strength * share[1] / sum,
                    strength * share[2] / sum, strength * share[3] / sum);
            StagedBed bed = StagedBed.inEquilibriumWith(resin, feed);
            FeedWater other = FeedWater.brine(Salt.values()[random.nextInt(2)],
                    Math.min(5, strength * (1 + random.nextInt(1000))));
            bed.advance(other.ions(), 1, false);
            assertInEquilibrium(resin, bed, other.totalEquivalentsPerLitre(), "seed 23, case " + n);
        }
    }

    private static void assertInEquilibrium(Resin resin, StagedBed bed, double strength, String seed) {
        double[] resinShare = new double[StageEquilibrium.IONS];
        double[] waterShare = new double[StageEquilibrium.IONS];
        double onResin = 0;
        double inWater = 0;
        for (int i = 0; i < StageEquilibrium.IONS; i++) {
            waterShare[i] = bed.exit(i) / strength;
            resinShare[i] = (bed.held(i) - resin.voidShare() * bed.exit(i)) / resin.totalEquivalentsPerLitre();
            inWater += waterShare[i];
            onResin += resinShare[i];
        }
        assertEquals(1, inWater, 1e-9, seed);
        assertEquals(1, onResin, 1e-9, seed);
        double sodiumRatio = waterShare[2] / resinShare[2];
        if (resinShare[2] > 1e-6) {
            double constant = resinShare[0] * strength * sodiumRatio * sodiumRatio
                    / (resin.totalEquivalentsPerLitre() * waterShare[0]);
            assertEquals(1, constant / resin.selectivity().calcium(), 1e-6, seed);
            if (resinShare[3] > 1e-6) {
                assertEquals(1, resinShare[3] * sodiumRatio / waterShare[3] / resin.selectivity().potassium(), 1e-6, seed);
            }
        }
    }

    /** Effluent of the second service by shift; place 0 is the last of the rinse. */
    private static double[] secondServiceMgPerL(Resin resin, FeedWater feed, double brineStrength, int brineShifts,
            int rinseShifts, int serviceShifts) {
        double[] brine = FeedWater.brine(Salt.SODIUM_CHLORIDE, brineStrength).ions();
        double[] ions = feed.ions();
        StagedBed bed = StagedBed.inEquilibriumWith(resin, feed);
        double[] effluent = new double[serviceShifts + 1];
        for (int cycle = 0; cycle < 2; cycle++) {
            shift(bed, brine, brineShifts);
            shift(bed, ions, rinseShifts);
            for (int s = 0; s <= serviceShifts; s++) {
                effluent[s] = bed.exitHardness() * MG_PER_EQUIVALENT;
                if (s < serviceShifts) {
                    bed.advance(ions, 1, false);
                }
            }
        }
        return effluent;
    }

    private static void shift(StagedBed bed, double[] water, int shifts) {
        for (int i = 0; i < shifts; i++) {
            bed.advance(water, 1, false);
        }
    }

    private static int breakShift(double[] effluentMgPerL) {
        int shift = 1;
        while (effluentMgPerL[shift] < END_POINT_MG_PER_L) {
            shift++;
        }
        return shift;
    }

    private static double removed(double[] effluentMgPerL, double hardnessMgPerL, int lastShift) {
        double sum = 0;
        for (int s = 0; s <= lastShift; s++) {
            sum += (hardnessMgPerL - effluentMgPerL[s]) / MG_PER_EQUIVALENT;
        }
        return sum;
    }

    private static FeedWater water(double hardnessMgPerL, double calciumShare, double sodiumMeqPerL) {
        double hardness = hardnessMgPerL / MG_PER_EQUIVALENT;
        return new FeedWater(hardness * calciumShare, hardness * (1 - calciumShare), sodiumMeqPerL / 1000, 0);
    }
}
