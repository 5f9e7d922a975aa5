// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.quantity.Exact;
import dev.brinebook.regeneration.CycleStep.Kind;
import dev.brinebook.resin.Backwash;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.Salt;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class CycleDesignTest {

    private static final double POUND_GRAMS = 1000 * Exact.POUND_KILOGRAMS;
    private static final double GALLON = Exact.US_GALLON_LITRES;
    private static final ResinBed CUBIC_FOOT = new ResinBed(Exact.CUBIC_FOOT_LITRES, 9 * Exact.INCH_METRES);

    @ParameterizedTest
    @CsvFileSource(resources = "/regeneration/worked-cycle.csv", useHeadersInDisplayName = true)
    void agreesWithHandArithmetic(Salt salt, String quantity, String expected, String tolerance) {
        Cycle cycle = cubicFoot(salt, 10, 15, CycleFlows.UNKNOWN, false);
        CycleStep brineAndSlowRinse = cycle.step(Kind.BRINE_AND_SLOW_RINSE);
        Printed.assertAgrees(expected, tolerance, switch (quantity) {
            case "refillMinutes" -> cycle.step(Kind.REFILL).minutes();
            case "refillGallons" -> cycle.step(Kind.REFILL).lineWaterLitres() / GALLON;
            case "saturatedGallons" -> cycle.brine().saturatedLitres() / GALLON;
            case "dilutedGallons" -> cycle.brine().dilutedLitres() / GALLON;
            case "slowRinseGallons" -> (brineAndSlowRinse.drainLitres() - cycle.brine().dilutedLitres()) / GALLON;
            case "slowRinseBedVolumes" -> cycle.slowRinseBedVolumes();
            case "fastRinseBedVolumes" -> cycle.step(Kind.FAST_RINSE).drainLitres() / Exact.CUBIC_FOOT_LITRES;
            case "waterBedVolumes" -> cycle.waterLitres() / Exact.CUBIC_FOOT_LITRES;
            case "brineGallonsPerMinute" -> brineAndSlowRinse.flowLitresPerMinute() / GALLON;
            case "brineAndSlowRinseMinutes" -> brineAndSlowRinse.minutes();
            case "drainGallonsPerMinute" -> cycle.step(Kind.BACKWASH).flowLitresPerMinute() / GALLON;
            case "fastRinseGallons" -> cycle.step(Kind.FAST_RINSE).drainLitres() / GALLON;
            case "fastRinseMinutes" -> cycle.step(Kind.FAST_RINSE).minutes();
            default -> cycle.step(Kind.BACKWASH).drainLitres() / GALLON;
        });
    }

    @Test
    void readsEveryRow() {
        assertEquals(17, Rows.in("/regeneration/worked-cycle.csv"));
    }

    /** Common practice: a cubic foot takes 25 to 65 US gallons, and each step its usual minutes. */
    @ParameterizedTest
    @CsvSource({"8, 10", "8, 15", "10, 10", "10, 15"})
    void anOrdinaryCycleIsAsUsual(double saltDosePounds, double temperatureCelsius) {
        Cycle cycle = cubicFoot(saltDosePounds, temperatureCelsius, CycleFlows.UNKNOWN, false);
        double gallons = cycle.waterLitres() / GALLON;
        assertTrue(gallons > 25 && gallons < 65, gallons + " gal");
        cycle.steps().forEach(step -> assertTrue(step.isWithinGuide(), step.toString()));
        assertEquals(List.of(Kind.BACKWASH, Kind.BRINE_AND_SLOW_RINSE, Kind.FAST_RINSE, Kind.REFILL),
                cycle.steps().stream().map(CycleStep::kind).toList());
    }

    @RepeatedTest(100)
    void waterAndSaltBalance(RepetitionInfo repetition) {
        int seed = repetition.getCurrentRepetition();
        Random random = new Random(seed);
        ResinBed bed = new ResinBed(10 + 90 * random.nextDouble(), 0.2 + 0.3 * random.nextDouble());
        double brineCelsius = 37.8 * random.nextDouble();
        Salt salt = random.nextBoolean() ? Salt.SODIUM_CHLORIDE : Salt.POTASSIUM_CHLORIDE;
        double dose = bed.resinLitres() * (48 + 272 * random.nextDouble());
        Cycle cycle = new CycleDesign(bed, salt, dose, 40 * random.nextDouble(), brineCelsius, CycleFlows.UNKNOWN,
                random.nextBoolean()).cycle();
        double refilled = cycle.step(Kind.REFILL).lineWaterLitres();
        assertEquals(dose, CycleDesign.saltGramsOfRefill(salt, refilled, brineCelsius), 1e-9 * dose, "seed " + seed);
        // The brine used is the water of the refill and its salt: as much mass, though not as much volume.
        double share = Brine.saturatedSaltShare(salt, brineCelsius);
        assertEquals(dose / share,
                1000 * cycle.brine().saturatedLitres() * Brine.densityKilogramsPerCubicMetre(salt, share) / 1000,
                1e-9 * dose, "seed " + seed);
        // In the long run the drain gets the water of the line and the room that the salt takes up, 0.3 to 0.5 L/kg.
        double room = (cycle.drainLitres() - cycle.waterLitres()) / (dose / 1000);
        assertTrue(room > 0.2 && room < 0.5, "seed " + seed + ": " + room);
        double expansion = cycle.backwashExpansionShare().value();
        assertTrue(expansion >= Backwash.TARGET_EXPANSION_SHARE - 1e-9, "seed " + seed);
        double step = BackwashFlow.ASSUMED_STEP_LITRES_PER_MINUTE;
        double drainFlow = cycle.step(Kind.BACKWASH).flowLitresPerMinute();
        assertTrue(drainFlow >= cycle.backwashTargetLitresPerMinute(), "seed " + seed);
        assertTrue(drainFlow < cycle.backwashTargetLitresPerMinute() + step, "seed " + seed);
    }

    @Test
    void takesTheFlowsOfTheValveWhereTheyAreKnown() {
        CycleFlows flows = new CycleFlows(OptionalDouble.of(5), OptionalDouble.of(1), OptionalDouble.of(8),
                OptionalDouble.of(0.5));
        Cycle cycle = cubicFoot(8, 10, flows, true);
        assertEquals(5, cycle.step(Kind.SECOND_BACKWASH).flowLitresPerMinute());
        assertEquals(1, cycle.step(Kind.BRINE_AND_SLOW_RINSE).flowLitresPerMinute());
        assertEquals(60 / Exact.CUBIC_FOOT_LITRES, cycle.brine().bedVolumesPerHour(), 1e-12);
        assertEquals(3 * Exact.CUBIC_FOOT_LITRES / 8, cycle.step(Kind.FAST_RINSE).minutes(), 1e-12);
        assertEquals(0.5, cycle.step(Kind.REFILL).flowLitresPerMinute());
        assertTrue(cycle.backwashExpansionShare().value() < 0.5);
        assertFalse(cycle.step(Kind.BRINE_AND_SLOW_RINSE).isWithinGuide(), "a slow injector takes over an hour");
        CycleFlows torrent = new CycleFlows(OptionalDouble.of(80), OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty());
        assertEquals(NoResultReason.RESIN_CARRIED_OUT, cubicFoot(8, 10, torrent, false).backwashExpansionShare().reason());
    }

    @Test
    void wholeMinutesNeverFallShort() {
        Cycle cycle = cubicFoot(10, 15, CycleFlows.UNKNOWN, false);
        assertEquals(List.of(8, 60, 8, 7), cycle.steps().stream().map(CycleStep::wholeMinutes).toList());
        assertEquals(6.7, cycle.step(Kind.REFILL).nearestTenthMinutes(), "10 lb at 0.5 gpm: common practice");
        assertEquals(0.1, new CycleStep(Kind.REFILL, 0.02, 500, 10, 0).nearestTenthMinutes());
        Cycle whole = cycle.inWholeMinutes();
        assertEquals(8 + 60 + 8 + 7, whole.totalMinutes());
        double more = cycle.steps().stream().mapToDouble(step -> (step.wholeMinutes() - step.minutes())
                * step.flowLitresPerMinute()).sum();
        assertEquals(cycle.waterLitres() + more, whole.waterLitres(), 1e-9);
        assertTrue(Kind.REFILL.guide().isEmpty());
        assertEquals("CP-CYCLE", Kind.BACKWASH.guide().orElseThrow().sourceKey());
        cycle.steps().forEach(step -> assertFalse(step.kind().purpose().toString().isBlank()));
    }

    /** 27,000 gr from one cubic foot at 10 lb (common practice). */
    @Test
    void sumsWaterAndTime() {
        Cycle cycle = cubicFoot(10, 15, CycleFlows.UNKNOWN, false);
        assertEquals(8 + 60 + 7.5 + 6.7, cycle.totalMinutes(), 0.2);
        double capacityGrams = 27 * Exact.GRAIN_MILLIGRAMS;
        assertEquals(cycle.waterLitres() / (capacityGrams / 1000), cycle.waterLitresPerKilogram(capacityGrams), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> cycle.waterLitresPerKilogram(0));
    }

    @Test
    void choosesTheDrainFlowAtOrAbove() {
        double step = GALLON / 2;
        assertEquals(4 * step, BackwashFlow.stepAtOrAbove(4 * step));
        assertEquals(5 * step, BackwashFlow.stepAtOrAbove(4.01 * step));
        assertThrows(IllegalArgumentException.class, () -> BackwashFlow.stepAtOrAbove(0));
    }

    /** 36 of 60 minutes draw the brine; 0.38 bed volumes at 2.5 an hour are 9.1 minutes. */
    @Test
    void aStepSetTooShortLeavesBrineInTheVoids() {
        Cycle cycle = cubicFoot(10, 15, CycleFlows.UNKNOWN, false);
        double draw = cycle.brine().drawMinutes();
        assertTrue(cycle.rinsesTheVoids(0.38));
        Cycle shorter = cycle.retimed(Map.of(Kind.BRINE_AND_SLOW_RINSE, draw + 9));
        assertEquals(9 * 2.5 / 60, shorter.slowRinseBedVolumes(), 1e-9);
        assertFalse(shorter.rinsesTheVoids(0.38));
        assertTrue(cycle.retimed(Map.of(Kind.BRINE_AND_SLOW_RINSE, draw + 9.2)).rinsesTheVoids(0.38));
        assertEquals(0, cycle.retimed(Map.of(Kind.BRINE_AND_SLOW_RINSE, 10.0)).slowRinseBedVolumes());
        assertEquals(0, cycle.retimed(Map.of(Kind.BRINE_AND_SLOW_RINSE, 0.0)).slowRinseBedVolumes());
    }

    /** By hand at the step's own flow: water follows time, and all of it goes to the drain but that of the refill. */
    @Test
    void aStepOfOtherMinutesTakesTheWaterOfItsTime() {
        Cycle cycle = cubicFoot(10, 15, CycleFlows.UNKNOWN, false);
        Cycle longer = cycle.retimed(Map.of(Kind.FAST_RINSE, cycle.step(Kind.FAST_RINSE).minutes() + 4,
                Kind.REFILL, cycle.step(Kind.REFILL).minutes() + 1, Kind.SECOND_BACKWASH, 6.0));
        CycleStep rinse = cycle.step(Kind.FAST_RINSE);
        assertEquals(rinse.lineWaterLitres() + 4 * rinse.flowLitresPerMinute(), longer.step(Kind.FAST_RINSE).lineWaterLitres(),
                1e-9);
        assertEquals(rinse.drainLitres() + 4 * rinse.flowLitresPerMinute(), longer.step(Kind.FAST_RINSE).drainLitres(), 1e-9);
        assertEquals(0, longer.step(Kind.REFILL).drainLitres());
        assertEquals(cycle.step(Kind.BACKWASH), longer.step(Kind.BACKWASH), "not named, so it stays");
        assertEquals(6 * cycle.step(Kind.BACKWASH).flowLitresPerMinute(), longer.step(Kind.SECOND_BACKWASH).drainLitres(), 1e-9,
                "a second backwash is like the first");
        assertEquals(new Regeneration(900, 4_000, longer.waterLitres(), longer.totalMinutes()), longer.regeneration(900, 4_000));
    }

    /** UFC 3-240-13FN: slow 7.5 to 22.5, fast 35 to 100 gal/ft3; common practice 25 to 65 gal for a cubic foot. */
    @Test
    void agreesWithThePublishedWater() {
        assertTrue(RinseGuide.SLOW.includes(1) && RinseGuide.SLOW.includes(3));
        assertFalse(RinseGuide.SLOW.includes(0.99) || RinseGuide.SLOW.includes(3.01));
        assertTrue(RinseGuide.FAST.includes(4.7) && RinseGuide.FAST.includes(13.3));
        assertFalse(RinseGuide.FAST.includes(3) || RinseGuide.FAST.includes(13.4));
        assertTrue(WaterGuide.isUsual(3.35) && WaterGuide.isUsual(8.68));
        assertFalse(WaterGuide.isUsual(3.3) || WaterGuide.isUsual(8.7));
        assertEquals(10.69, WaterGuide.PLANT_BED_VOLUMES, 0.005, "80 / 7.480519");
        assertEquals(10.69, WaterGuide.bedVolumes(80), 0.005, "the same");
    }

    @Test
    void refusesImpossibleDesigns() {
        assertThrows(IllegalArgumentException.class, () -> cubicFoot(0.5, 10, CycleFlows.UNKNOWN, false));
        assertThrows(IllegalArgumentException.class, () -> cubicFoot(32, 10, CycleFlows.UNKNOWN, false));
        assertThrows(IllegalArgumentException.class, () -> cubicFoot(10, 61, CycleFlows.UNKNOWN, false));
        assertThrows(IllegalArgumentException.class,
                () -> new CycleDesign(CUBIC_FOOT, Salt.SODIUM_CHLORIDE, 4000, 10, 38, CycleFlows.UNKNOWN, false));
        OptionalDouble none = OptionalDouble.empty();
        OptionalDouble zero = OptionalDouble.of(0);
        assertThrows(IllegalArgumentException.class, () -> new CycleFlows(zero, none, none, none, none));
        assertThrows(IllegalArgumentException.class, () -> new CycleFlows(none, zero, none, none, none));
        assertThrows(IllegalArgumentException.class, () -> new CycleFlows(none, none, zero, none, none));
        assertThrows(IllegalArgumentException.class, () -> new CycleFlows(none, none, none, zero, none));
        assertThrows(IllegalArgumentException.class, () -> new CycleFlows(none, none, none, none, zero));
        assertEquals(new CycleFlows(OptionalDouble.of(9), none, none, none), CycleFlows.UNKNOWN.withDrain(OptionalDouble.of(9)));
    }

    private static Cycle cubicFoot(double saltDosePounds, double temperatureCelsius, CycleFlows flows,
            boolean secondBackwash) {
        return cubicFoot(Salt.SODIUM_CHLORIDE, saltDosePounds, temperatureCelsius, flows, secondBackwash);
    }

    private static Cycle cubicFoot(Salt salt, double saltDosePounds, double temperatureCelsius, CycleFlows flows,
            boolean secondBackwash) {
        return new CycleDesign(CUBIC_FOOT, salt, saltDosePounds * POUND_GRAMS, temperatureCelsius, 20, flows,
                secondBackwash).cycle();
    }
}
