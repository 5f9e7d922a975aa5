// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.quantity.Exact;
import dev.brinebook.regeneration.CycleStep.Kind;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.Salt;
import dev.brinebook.water.WaterProperties;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class InjectorTest {

    private static final double GALLON = Exact.US_GALLON_LITRES;

    @ParameterizedTest
    @CsvFileSource(resources = "/regeneration/worked-injector.csv", useHeadersInDisplayName = true)
    void dilutesByVolume(Salt salt, double brineParts, double waterParts, String expectedPercent, String tolerance) {
        Printed.assertAgrees(expectedPercent, tolerance, 100 * Injector.dilutedSaltShare(salt,
                Injector.suctionShare(brineParts, brineParts + waterParts), 20, 15));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/regeneration/worked-injector-by-weight.csv", useHeadersInDisplayName = true)
    void hasTheDensityOfItsStrength(Salt salt, double brineParts, double parts, String expectedPercent, String tolerance) {
        Printed.assertAgrees(expectedPercent, tolerance,
                100 * Injector.dilutedSaltShareByWeight(salt, Injector.suctionShare(brineParts, parts), 20));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/regeneration/worked-suction.csv", useHeadersInDisplayName = true)
    void setsTheDrawByItsSuction(String quantity, String expected, String tolerance) {
        Cycle cycle = cubicFoot(OptionalDouble.of(0.2 * GALLON), OptionalDouble.of(0.6 * GALLON));
        CycleStep step = cycle.step(Kind.BRINE_AND_SLOW_RINSE);
        Printed.assertAgrees(expected, tolerance, switch (quantity) {
            case "drawMinutes" -> cycle.brine().drawMinutes();
            case "dilutedGallons" -> cycle.brine().dilutedLitres() / GALLON;
            case "motiveGallons" -> cycle.brine().motiveLitres() / GALLON;
            case "dilutedPercent" -> 100 * cycle.brine().dilutedSaltShare();
            case "slowRinseMinutes" -> cycle.brine().slowRinseMinutes();
            case "stepMinutes" -> step.minutes();
            case "lineGallons" -> step.lineWaterLitres() / GALLON;
            case "drainGallons" -> step.drainLitres() / GALLON;
            default -> cycle.brine().bedVolumesPerHour();
        });
    }

    @Test
    void readsEveryRow() {
        assertEquals(5, Rows.in("/regeneration/worked-injector.csv"));
        assertEquals(5, Rows.in("/regeneration/worked-injector-by-weight.csv"));
        assertEquals(9, Rows.in("/regeneration/worked-suction.csv"));
    }

    /** Known alone, the suction is what the flow of 10 % brine needs: the same cycle either way. */
    @Test
    void aSuctionAloneSetsTheFlow() {
        Cycle byFlow = cubicFoot(OptionalDouble.empty(), OptionalDouble.of(0.6 * GALLON));
        double suction = byFlow.brine().saturatedLitres() / byFlow.brine().drawMinutes();
        Cycle bySuction = cubicFoot(OptionalDouble.of(suction), OptionalDouble.empty());
        assertEquals(0.10, bySuction.brine().dilutedSaltShare());
        assertEquals(byFlow.totalMinutes(), bySuction.totalMinutes(), 1e-9);
        assertEquals(byFlow.waterLitres(), bySuction.waterLitres(), 1e-9);
        Cycle both = cubicFoot(OptionalDouble.of(suction), OptionalDouble.of(0.6 * GALLON));
        assertEquals(0.10, both.brine().dilutedSaltShare(), 1e-12, "the flows of 10 % brine make 10 % brine");
        assertEquals(byFlow.brine().motiveLitres(), both.brine().motiveLitres(), 1e-9);
        assertEquals(byFlow.waterLitres(), both.waterLitres(), 1e-9);
    }

    @RepeatedTest(100)
    void balancesTheSalt(RepetitionInfo repetition) {
        int seed = repetition.getCurrentRepetition();
        Random random = new Random(seed);
        Salt salt = random.nextBoolean() ? Salt.SODIUM_CHLORIDE : Salt.POTASSIUM_CHLORIDE;
        double share = 0.02 + 0.96 * random.nextDouble();
        double tank = 37.8 * random.nextDouble();
        double strength = Injector.dilutedSaltShare(salt, share, tank, 12);
        assertTrue(strength > 0 && strength < Brine.saturatedSaltShare(salt, tank), "seed " + seed);
        assertTrue(Injector.dilutedSaltShare(salt, share + 0.01, tank, 12) > strength, "seed " + seed);
        assertEquals(Brine.saturatedSaltShare(salt, tank), Injector.dilutedSaltShare(salt, 1, tank, 12), 1e-12);
    }

    /** Masses of salt and of all, whatever the salt, strength and temperatures. */
    @RepeatedTest(100)
    void balancesTheWeights(RepetitionInfo repetition) {
        int seed = repetition.getCurrentRepetition();
        Random random = new Random(seed);
        Salt salt = random.nextBoolean() ? Salt.SODIUM_CHLORIDE : Salt.POTASSIUM_CHLORIDE;
        double share = 0.001 + 0.998 * random.nextDouble();
        double tank = 37.8 * random.nextDouble();
        double water = 1 + 36 * random.nextDouble();
        BrineMixing.Mixture mixture = BrineMixing.BY_WEIGHT.mix(salt, share, tank, water);
        double saturated = Brine.saturatedSaltShare(salt, tank);
        double kilograms = share * Brine.densityKilogramsPerCubicMetre(salt, saturated);
        double all = kilograms + mixture.waterShare() * WaterProperties.densityKilogramsPerCubicMetre(water);
        assertEquals(kilograms * saturated, all * mixture.saltShare(), 1e-6, "salt, seed " + seed);
        assertEquals(Brine.weakDensityKilogramsPerCubicMetre(salt, mixture.saltShare()), all, 1e-6, "kg in a cubic metre, seed " + seed);
        assertTrue(mixture.waterShare() > 0, "seed " + seed);
    }

    @Test
    void refusesASuctionThatIsNoPartOfTheFlow() {
        assertThrows(IllegalArgumentException.class, () -> Injector.suctionShare(1, 1));
        assertThrows(IllegalArgumentException.class, () -> Injector.suctionShare(0, 1));
        assertThrows(IllegalArgumentException.class, () -> Injector.dilutedSaltShare(Salt.SODIUM_CHLORIDE, 1.1, 20, 15));
        assertThrows(IllegalArgumentException.class, () -> cubicFoot(OptionalDouble.of(2), OptionalDouble.of(1)));
    }

    private static Cycle cubicFoot(OptionalDouble suction, OptionalDouble brine) {
        CycleFlows flows = new CycleFlows(OptionalDouble.empty(), suction, brine, OptionalDouble.empty(),
                OptionalDouble.empty());
        ResinBed bed = new ResinBed(Exact.CUBIC_FOOT_LITRES, 9 * Exact.INCH_METRES);
        return new CycleDesign(bed, Salt.SODIUM_CHLORIDE, 10_000 * Exact.POUND_KILOGRAMS, 15, 20, flows,
                false).cycle();
    }
}
