// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.quantity.CapacityUnit;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.resin.Brining.Direction;
import dev.brinebook.resin.ColumnResult.NotSettled;
import dev.brinebook.resin.ColumnResult.Settled;
import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class CyclicColumnTest {

    private static final double END_POINT = CyclicColumn.DEFAULT_END_POINT_MG_PER_L;
    /** No step longer than a shift: the scheme of the reference program to the letter. */
    private static final double SHIFT_BY_SHIFT = 0;
    /** Rows of the feed itself in the printed means; see the head of cross-column-cycle.csv. */
    private static final int FEED_ROWS = 3;

    @ParameterizedTest
    @CsvFileSource(resources = {"/resin/published-column.csv", "/resin/practice-column.csv"}, useHeadersInDisplayName = true)
    void reproducesTheTablesWithOneEfficiencyEach(CapacityTable table, double hardnessMgPerL, double poundsPerCubicFoot,
            String expected, String tolerance) {
        double efficiency = table == CapacityTable.WORKING ? ResinEfficiency.WORKING : ResinEfficiency.NEW_RESIN;
        Settled column = settled(water(hardnessMgPerL, 1), brining(poundsPerCubicFoot, Direction.CO_CURRENT));
        Printed.assertAgrees(expected, tolerance,
                kilograinsPerCubicFoot(ResinEfficiency.capacityGramsPerLitre(column, efficiency)));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/resin/cross-column-cycle.csv", useHeadersInDisplayName = true)
    void agreesWithAnIndependentProgramOnAWholeCycle(int stages, double sites, double hardnessMgPerL,
            ArgumentsAccessor row) {
        Resin resin = new Resin(sites, 0.38, stages, Selectivity.GEL_8_PERCENT);
        double bedVolumesPerShift = resin.voidShare() / stages;
        Brining usual = Brining.of(Salt.SODIUM_CHLORIDE, row.getDouble(5), Direction.CO_CURRENT);
        double brineShifts = StrictMath.rint(usual.brineBedVolumes() / bedVolumesPerShift);
        Settled cycle = assertInstanceOf(Settled.class, CyclicColumn.of(resin,
                water(hardnessMgPerL, row.getDouble(3), row.getDouble(4)),
                new Brining(usual.salt(), usual.saltDoseGramsPerLitre(),
                        usual.doseEquivalentsPerLitre() / (brineShifts * bedVolumesPerShift), Direction.CO_CURRENT, 1, 3),
                17.118));
        Printed.assertAgrees(row.getString(6), row.getString(9), cycle.capacityEquivalentsPerLitre());
        Printed.assertAgrees(row.getString(7), row.getString(9), cycle.serviceBedVolumes());
        double rowsOfFeed = FEED_ROWS * bedVolumesPerShift * hardnessMgPerL / cycle.serviceBedVolumes();
        Printed.assertAgrees(row.getString(8), row.getString(10), cycle.meanLeakageMgPerL() + rowsOfFeed);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/resin/cross-column-shifts.csv", useHeadersInDisplayName = true)
    void agreesWithAProgramThatShiftsOneByOne(ArgumentsAccessor row) {
        Settled cycle = assertInstanceOf(Settled.class, CyclicColumn.of(
                new Resin(row.getDouble(1), row.getDouble(2), row.getInteger(0), Selectivity.GEL_8_PERCENT),
                water(row.getDouble(3), row.getDouble(4), row.getDouble(5)),
                new Brining(Salt.SODIUM_CHLORIDE, row.getDouble(6), row.getDouble(7), row.get(8, Direction.class),
                        row.getDouble(9), row.getDouble(10)), row.getDouble(11)));
        Printed.assertAgrees(row.getString(12), row.getString(16), cycle.capacityEquivalentsPerLitre());
        Printed.assertAgrees(row.getString(13), row.getString(16), cycle.serviceBedVolumes());
        Printed.assertAgrees(row.getString(14), row.getString(17), cycle.meanLeakageMgPerL());
        Printed.assertAgrees(row.getString(15), row.getString(17), cycle.startLeakageMgPerL());
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/resin/cross-cyclic-column.csv", useHeadersInDisplayName = true)
    void agreesWithAnIndependentStageModelInSaltyWater(String quantity, double hardnessMgPerL, double sodiumMeqPerL,
            double poundsPerCubicFoot, String expected, String tolerance) {
        ColumnResult column = CyclicColumn.of(Resin.STANDARD.withStages(20), water(hardnessMgPerL, sodiumMeqPerL),
                brining(poundsPerCubicFoot, Direction.CO_CURRENT), END_POINT);
        if (quantity.equals("none")) {
            assertEquals(new NotSettled(NoResultReason.END_POINT_NOT_HELD), column);
            return;
        }
        Printed.assertAgrees(expected, tolerance, assertInstanceOf(Settled.class, column).startLeakageMgPerL());
    }

    @Test
    void readsEveryRow() {
        assertEquals(4, Rows.in("/resin/published-column.csv"));
        assertEquals(4, Rows.in("/resin/practice-column.csv"));
        assertEquals(6, Rows.in("/resin/cross-column-cycle.csv"));
        assertEquals(16, Rows.in("/resin/cross-column-shifts.csv"));
        assertEquals(4, Rows.in("/resin/cross-cyclic-column.csv"));
    }

    @ParameterizedTest
    @EnumSource
    void longStepsAgreeWithSingleShifts(Direction direction) {
        for (FeedWater water : new FeedWater[] {water(100, 0.5), water(300, 20), water(500, 0.05)}) {
            ColumnResult coarse = CyclicColumn.of(Resin.STANDARD, water, brining(8, direction), END_POINT);
            ColumnResult fine = CyclicColumn.of(Resin.STANDARD, water, brining(8, direction), END_POINT, SHIFT_BY_SHIFT);
            Settled quick = assertInstanceOf(Settled.class, coarse);
            Settled exact = assertInstanceOf(Settled.class, fine);
            assertEquals(1, quick.capacityEquivalentsPerLitre() / exact.capacityEquivalentsPerLitre(), 1e-4);
            assertEquals(1, quick.startLeakageMgPerL() / exact.startLeakageMgPerL(), 1e-3);
            assertEquals(1, quick.meanLeakageMgPerL() / exact.meanLeakageMgPerL(), 1e-2);
        }
    }

    @Test
    void leakageRisesWithDissolvedSolids() {
        for (double pounds : new double[] {8, 10, 15}) {
            double last = 0;
            for (double sodium : new double[] {0.2, 1, 3, 6, 10, 15, 20}) {
                double leakage = settled(water(300, sodium), brining(pounds, Direction.CO_CURRENT)).startLeakageMgPerL();
                assertTrue(leakage > last, sodium + " meq/L at " + pounds + " lb/ft3");
                last = leakage;
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void leakageFallsAndCapacityRisesWithTheDose(Direction direction) {
        Settled last = settled(water(300, 1), brining(4.5, direction));
        for (double pounds = 5; pounds <= 20; pounds += 0.5) {
            Settled more = settled(water(300, 1), brining(pounds, direction));
            assertTrue(more.capacityEquivalentsPerLitre() > last.capacityEquivalentsPerLitre(), "dose " + pounds);
            assertTrue(more.saltUsedShare() < last.saltUsedShare(), "dose " + pounds);
            assertTrue(more.startLeakageMgPerL() < last.startLeakageMgPerL() * (1 + 1e-3), "dose " + pounds);
            last = more;
        }
    }

    @Test
    void counterCurrentLeaksLess() {
        for (double pounds : new double[] {5, 6, 7, 8, 9}) {
            Map<Direction, Settled> by = new EnumMap<>(Direction.class);
            for (Direction direction : Direction.values()) {
                by.put(direction, settled(water(300, 1), brining(pounds, direction)));
            }
            assertTrue(by.get(Direction.COUNTER_CURRENT).startLeakageMgPerL()
                    < 0.2 * by.get(Direction.CO_CURRENT).startLeakageMgPerL(), "dose " + pounds);
            assertTrue(by.get(Direction.COUNTER_CURRENT).meanLeakageMgPerL()
                    < 0.5 * by.get(Direction.CO_CURRENT).meanLeakageMgPerL(), "dose " + pounds);
        }
    }

    @Test
    void moreStagesRaiseTheCapacityALittle() {
        for (double pounds : new double[] {6, 8, 10, 15}) {
            Brining brining = brining(pounds, Direction.CO_CURRENT);
            double usual = capacity(Resin.STANDARD, brining);
            double twice = capacity(Resin.STANDARD.withStages(2 * Resin.ASSUMED_STAGES), brining);
            assertTrue(twice > usual && twice < 1.1 * usual, twice / usual + " at " + pounds);
            assertTrue(capacity(Resin.STANDARD.withStages(20), brining) > twice);
        }
    }

    /** Any allowed bed, water and regeneration ends in a cycle that keeps to its bounds, or in a reason. */
    @Test
    void everyCornerEndsInACycleWithinItsBoundsOrAReason() {
        Map<NoResultReason, Integer> reasons = new EnumMap<>(NoResultReason.class);
        int settled = 0;
        Random random = new Random(41);
        for (int n = 0; n < 400; n++) {
            String seed = "seed 41, case " + n;
            Resin resin = new Resin(between(random, 0.2, 3), between(random, 0.3, 0.5), 1 + random.nextInt(30),
                    new Selectivity(between(random, 0.5, 10), between(random, 0.5, 10), between(random, 0.5, 10)));
            FeedWater water = anyWater(random);
            Brining brining = anyBrining(random);
            double endPoint = StrictMath.exp(random.nextDouble() * StrictMath.log(200));
            ColumnResult column = CyclicColumn.of(resin, water, brining, endPoint);
            if (column instanceof NotSettled none) {
                reasons.merge(none.reason(), 1, Integer::sum);
                continue;
            }
            settled++;
            Settled cycle = (Settled) column;
            assertTrue(cycle.chargeResidualShare() <= 1e-9, seed + ": " + cycle);
            assertTrue(cycle.saltUsedShare() > 0 && cycle.saltUsedShare() <= 1 + 1e-3, seed + ": " + cycle);
            assertTrue(cycle.capacityEquivalentsPerLitre() <= resin.totalEquivalentsPerLitre(), seed + ": " + cycle);
            assertTrue(cycle.startLeakageMgPerL() < endPoint, seed + ": " + cycle);
            assertTrue(cycle.meanLeakageMgPerL() <= endPoint * (1 + 1e-6), seed + ": " + cycle);
            assertEquals(1, cycle.endLeakageMgPerL() / endPoint, 1e-6, seed + ": " + cycle);
            assertEquals(cycle.capacityEquivalentsPerLitre(), cycle.serviceBedVolumes() * (water.hardnessMgPerL()
                    - cycle.meanLeakageMgPerL()) / FeedWater.MG_PER_EQUIVALENT, 1e-9, seed);
        }
        assertTrue(settled > 100, settled + " settled, " + reasons);
        assertTrue(reasons.containsKey(NoResultReason.END_POINT_NOT_HELD), reasons.toString());
        assertTrue(reasons.containsKey(NoResultReason.NOTHING_TO_SOFTEN), reasons.toString());
    }

    @Test
    void potassiumRegeneratesToo() {
        Brining potassium = Brining.of(Salt.POTASSIUM_CHLORIDE, Salt.POTASSIUM_CHLORIDE.fromSodiumChloride(
                SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(10)), Direction.CO_CURRENT);
        Settled cycle = settled(water(300, 1), potassium);
        Settled sodium = settled(water(300, 1), brining(10, Direction.CO_CURRENT));
        assertEquals(1, cycle.capacityEquivalentsPerLitre() / sodium.capacityEquivalentsPerLitre(), 0.15);
        assertTrue(cycle.chargeResidualShare() <= 1e-9);
    }

    /**
     * An ion held as firmly as sodium regenerates as sodium does. Not to the last digit: which ion runs short decides
     * where a step of service takes the water after it alone.
     */
    @Test
    void potassiumThatIsHeldLikeSodiumIsSodium() {
        Resin resin = new Resin(2, 0.38, 15, new Selectivity(2.6, 1.65, 1));
        double dose = SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(8);
        ColumnResult sodium = CyclicColumn.of(resin, water(300, 1),
                new Brining(Salt.SODIUM_CHLORIDE, dose, 1.8, Direction.CO_CURRENT, 1, 3), END_POINT);
        ColumnResult potassium = CyclicColumn.of(resin, water(300, 1), new Brining(Salt.POTASSIUM_CHLORIDE,
                Salt.POTASSIUM_CHLORIDE.fromSodiumChloride(dose), 1.8, Direction.CO_CURRENT, 1, 3), END_POINT);
        assertEquals(((Settled) sodium).capacityEquivalentsPerLitre(), ((Settled) potassium)
                .capacityEquivalentsPerLitre(), 1e-4);
    }

    @Test
    void hasNothingToDoWithWaterHardlyHarderThanTheEndPoint() {
        ColumnResult none = CyclicColumn.of(Resin.STANDARD, water(34, 1), brining(8, Direction.CO_CURRENT), END_POINT);
        assertEquals(new NotSettled(NoResultReason.NOTHING_TO_SOFTEN), none);
        assertEquals(none, CyclicColumn.of(Resin.STANDARD, new FeedWater(0, 0, 0, 0), brining(8, Direction.CO_CURRENT),
                END_POINT));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.99, 200.1, Double.NaN})
    void refusesEndPointsOutOfRange(double endPointMgPerL) {
        assertThrows(IllegalArgumentException.class, () -> CyclicColumn.of(Resin.STANDARD, water(300, 1),
                brining(8, Direction.CO_CURRENT), endPointMgPerL));
    }

    private static FeedWater anyWater(Random random) {
        double hardness = StrictMath.exp(between(random, StrictMath.log(20), StrictMath.log(10_000)))
                / FeedWater.MG_PER_EQUIVALENT;
        double calcium = hardness * random.nextInt(5) / 4;
        double sodium = random.nextInt(4) == 0 ? 0 : StrictMath.exp(between(random, -10, -1));
        return new FeedWater(calcium, hardness - calcium, sodium, random.nextInt(2) * 1e-4);
    }

    private static Brining anyBrining(Random random) {
        Salt salt = Salt.values()[random.nextInt(2)];
        double dose = between(random, CapacityTable.minSaltDoseGramsPerLitre(salt),
                CapacityTable.maxSaltDoseGramsPerLitre(salt));
        return new Brining(salt, dose, between(random, 0.3, 5.5), Direction.values()[random.nextInt(2)],
                between(random, 0.5, 5), between(random, 0, 5));
    }

    private static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private static double capacity(Resin resin, Brining brining) {
        return assertInstanceOf(Settled.class, CyclicColumn.of(resin, water(300, 1), brining, END_POINT))
                .capacityEquivalentsPerLitre();
    }

    private static Settled settled(FeedWater water, Brining brining) {
        return assertInstanceOf(Settled.class, CyclicColumn.of(Resin.STANDARD, water, brining, END_POINT));
    }

    private static FeedWater water(double hardnessMgPerL, double sodiumMeqPerL) {
        return water(hardnessMgPerL, 2 / 3.0, sodiumMeqPerL);
    }

    private static FeedWater water(double hardnessMgPerL, double calciumShare, double sodiumMeqPerL) {
        double hardness = hardnessMgPerL / FeedWater.MG_PER_EQUIVALENT;
        return new FeedWater(hardness * calciumShare, hardness * (1 - calciumShare), sodiumMeqPerL / 1000, 0);
    }

    private static Brining brining(double poundsPerCubicFoot, Direction direction) {
        return Brining.of(Salt.SODIUM_CHLORIDE, SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(poundsPerCubicFoot), direction);
    }

    private static double kilograinsPerCubicFoot(double gramsPerLitre) {
        return CapacityUnit.KILOGRAIN.fromBase(gramsPerLitre * Exact.CUBIC_FOOT_LITRES);
    }
}
