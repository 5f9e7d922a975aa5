// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.guard.NoResultReason;
import dev.brinebook.resin.Brining.Direction;
import dev.brinebook.resin.ColumnResult.Settled;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The curve against the columns that it stands for, each calculated alone. */
class CapacityCurveTest {

    private static final int WATERS_EACH_WAY = 1000;
    /** Share of a result that is left open when a column counts as settled, where it no longer changes with the dose. */
    private static final double SETTLED = 2e-4;

    /** A relative difference that 99 of 100 keep, and one that all keep. */
    private record Bound(double most, double all) {

        void assertHolds(String what, double[] differences) {
            double[] sorted = IntStream.range(0, differences.length).mapToDouble(i -> differences[i]).sorted().toArray();
            double most = sorted[sorted.length * 99 / 100];
            assertTrue(most <= this.most, what + ": one in a hundred differs by more than " + most);
            assertTrue(sorted[sorted.length - 1] <= all, what + ": differs by " + sorted[sorted.length - 1]);
        }
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            # shifts | capacity   | start        | mean
            # doses  | 99 %, all  | 99 %, all    | 99 %, all
            WHOLE, 0.0002, 0.0004, 0.005, 0.01,  0.003, 0.006
            ANY,   0.0015, 0.008,  0.01,  0.03,  0.005, 0.01""")
    void agreesWithSingleColumnsInRandomWaters(Doses doses, double capacityMost, double capacityAll, double startMost, double startAll,
            double meanMost, double meanAll) {
        for (Direction direction : Direction.values()) {
            Random random = new Random(41);
            double[][] differences = IntStream.range(0, WATERS_EACH_WAY).mapToObj(i -> differences(random, direction, doses))
                    .filter(one -> one.length > 0).toArray(double[][]::new);
            assertTrue(differences.length > 0.8 * WATERS_EACH_WAY, "too few hold their end point");
            new Bound(capacityMost, capacityAll).assertHolds("capacity", column(differences, 0));
            new Bound(startMost, startAll).assertHolds("leakage at the start", column(differences, 1));
            new Bound(meanMost, meanAll).assertHolds("mean leakage", column(differences, 2));
        }
    }

    enum Doses { WHOLE, ANY }

    private static double[] column(double[][] rows, int index) {
        return IntStream.range(0, rows.length).mapToDouble(i -> rows[i][index]).toArray();
    }

    private static double[] differences(Random random, Direction direction, Doses doses) {
        CurveCase of = randomCase(random, direction);
        CapacityCurve curve = of.curve();
        double shift = gramsPerShift(of);
        double most = CapacityTable.maxSaltDoseGramsPerLitre(of.salt());
        double least = leastOr(curve, most);
        double any = least + random.nextDouble() * (most - least);
        double dose = doses == Doses.ANY ? any : Math.min(Math.ceil(any / shift), Math.floor(most / shift)) * shift;
        if (!curve.holds(dose) || !(CyclicColumn.of(of.resin(), of.water(), Brining.of(of.salt(), dose, direction),
                of.endPointMgPerL()) instanceof Settled column)) {
            return new double[0];
        }
        Settled at = curve.at(dose);
        return new double[] {difference(at.capacityEquivalentsPerLitre(), column.capacityEquivalentsPerLitre()),
            difference(at.startLeakageMgPerL(), column.startLeakageMgPerL()),
            difference(at.meanLeakageMgPerL(), column.meanLeakageMgPerL())};
    }

    private static double leastOr(CapacityCurve curve, double none) {
        return curve.leastSaltDoseGramsPerLitre().exists() ? curve.leastSaltDoseGramsPerLitre().value() : none;
    }

    private static double difference(double value, double expected) {
        return Math.abs(value / expected - 1);
    }

    /** Hardness 40 to 1,000 mg/L, sodium 0 to 15 meq/L, at times potassium; new and worn resin, both salts, end points 9 to 43 mg/L. */
    private static CurveCase randomCase(Random random, Direction direction) {
        double end = CyclicColumn.DEFAULT_END_POINT_MG_PER_L * (random.nextInt(3) == 0 ? 0.5 + 2 * random.nextDouble() : 1);
        double hardness = (2.5 * end + random.nextDouble() * random.nextDouble() * 900) / FeedWater.MG_PER_EQUIVALENT;
        double calcium = 0.4 + 0.5 * random.nextDouble();
        FeedWater water = new FeedWater(hardness * calcium, hardness * (1 - calcium), 0.015 * random.nextDouble() * random.nextDouble(),
                random.nextInt(4) == 0 ? 1e-4 : 0);
        Resin resin = Resin.STANDARD.withSitesLeft(random.nextBoolean() ? 1 : 0.6 + 0.4 * random.nextDouble());
        return new CurveCase(resin, water, Salt.values()[random.nextInt(Salt.values().length)], direction, end);
    }

    private static double gramsPerShift(CurveCase of) {
        return new CurveNodes(of, Brining.of(of.salt(), CapacityTable.maxSaltDoseGramsPerLitre(of.salt()), of.direction()))
                .gramsPerShift();
    }

    /** Where the least dose is above that of the tables, the column one shift higher holds the end point, and one lower does not. */
    @ParameterizedTest
    @EnumSource
    void theLeastDoseIsWhereSingleColumnsBeginToHold(Direction direction) {
        Random random = new Random(43);
        int above = 0;
        for (int i = 0; i < 300; i++) {
            CurveCase of = randomCase(random, direction);
            CapacityCurve curve = of.curve();
            double shift = gramsPerShift(of);
            double min = CapacityTable.minSaltDoseGramsPerLitre(of.salt());
            double least = leastOr(curve, Double.NaN);
            if (least > min + shift) {
                above++;
                assertTrue(holds(of, Math.min(least + shift, CapacityTable.maxSaltDoseGramsPerLitre(of.salt()))), of.toString());
                assertTrue(!holds(of, least - shift), of.toString());
            }
        }
        assertTrue(above > (direction == Direction.CO_CURRENT ? 20 : -1), "only " + above + " above the tables");
    }

    private static boolean holds(CurveCase of, double dose) {
        return CyclicColumn.of(of.resin(), of.water(), Brining.of(of.salt(), dose, of.direction()), of.endPointMgPerL())
                instanceof Settled;
    }

    @ParameterizedTest
    @EnumSource
    void moreSaltGivesMoreCapacityAndLessLeakage(Direction direction) {
        Random random = new Random(47);
        for (int i = 0; i < 200; i++) {
            CurveCase of = randomCase(random, direction);
            CapacityCurve curve = of.curve();
            double most = CapacityTable.maxSaltDoseGramsPerLitre(of.salt());
            Settled last = null;
            for (double dose = CapacityTable.minSaltDoseGramsPerLitre(of.salt()); dose <= most; dose *= 1.03) {
                if (curve.holds(dose)) {
                    Settled more = curve.at(dose);
                    assertTrue(last == null || more.capacityEquivalentsPerLitre() > last.capacityEquivalentsPerLitre() * (1 - SETTLED)
                            && more.startLeakageMgPerL() < last.startLeakageMgPerL() * (1 + 1e-3),
                            of + " at " + dose + " " + last + " then " + more);
                    last = more;
                }
            }
        }
    }

    @Test
    void seaWaterIsHeldByNoDose() {
        double hardness = 300 / FeedWater.MG_PER_EQUIVALENT;
        CurveCase of = new CurveCase(Resin.STANDARD, new FeedWater(hardness / 2, hardness / 2, 0.5, 0), Salt.SODIUM_CHLORIDE,
                Direction.CO_CURRENT, CyclicColumn.DEFAULT_END_POINT_MG_PER_L);
        assertEquals(NoResultReason.NO_DOSE_HOLDS_END_POINT, of.curve().leastSaltDoseGramsPerLitre().reason());
        assertTrue(!of.curve().holds(300));
    }

    @ParameterizedTest
    @CsvSource({"1", "2", "40"})
    void doesForAnyNumberOfStages(int stages) {
        double hardness = 300 / FeedWater.MG_PER_EQUIVALENT;
        CurveCase of = new CurveCase(Resin.STANDARD.withStages(stages), new FeedWater(hardness / 2, hardness / 2, 0.0005, 0),
                Salt.SODIUM_CHLORIDE, Direction.COUNTER_CURRENT, 100);
        double shift = gramsPerShift(of);
        double dose = Math.floor(200 / shift) * shift;
        Settled alone = (Settled) CyclicColumn.of(of.resin(), of.water(), Brining.of(of.salt(), dose, of.direction()), 100);
        assertEquals(alone.capacityEquivalentsPerLitre(), of.curve().at(dose).capacityEquivalentsPerLitre(),
                2e-3 * alone.capacityEquivalentsPerLitre());
    }

    @Test
    void refusesDosesOutsideTheTables() {
        CapacityCurve curve = randomCase(new Random(1), Direction.CO_CURRENT).curve();
        assertThrows(IllegalArgumentException.class, () -> curve.holds(40));
        assertThrows(IllegalArgumentException.class, () -> curve.holds(500));
    }

    /** The same case gives the same bits, whatever was asked before. */
    @Test
    void dependsOnNothingButItsCase() {
        for (int seed = 0; seed < 20; seed++) {
            CurveCase of = randomCase(new Random(seed), Direction.COUNTER_CURRENT);
            assertEquals(of.curve().at(300), of.curve().at(300));
        }
    }
}
