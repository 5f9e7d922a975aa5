package dev.brinebook.softener;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.quantity.SaltEfficiencyUnit;
import dev.brinebook.softener.DoseChoice.Limit;
import dev.brinebook.softener.LeastCostDose.Bound;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LeastCostDoseTest {

    private static final RunningCost COST = new RunningCost(0.45, 2.9);

    /** Two ways to the best dose: a smooth mean that is minimised, and a year of days at every half pound. */
    @Test
    void liesWhereTheTriedDosesAreCheapest() {
        Random random = new Random(3);
        for (int n = 0; n < 60; n++) {
            String seed = "seed 3, case " + n;
            double cubicFeet = 0.75 + 2 * random.nextDouble();
            Softener softener = Softeners.cubicFeet(cubicFeet, 12, 60);
            Duty duty = Softeners.duty(10 + 20 * random.nextDouble(), 0, 120 + 150 * random.nextDouble(), 0.4);
            RunningCost cost = new RunningCost(0.1 + random.nextDouble(), 6 * random.nextDouble());
            DoseChoice tried = DoseChoice.cheapest(softener, duty, cost);
            if (LeastCostDose.of(softener, duty, cost).isEmpty()) {
                continue;
            }
            LeastCostDose least = LeastCostDose.of(softener, duty, cost).orElseThrow();
            double cheapest = tried.options().stream().filter(option -> option.lasts(duty))
                    .mapToDouble(DoseChoice.Option::costPerYear).min().orElse(Double.NaN);
            assertTrue(least.intervalDays() >= duty.minimumIntervalDays() - 1e-3, seed);
            // One year of days scatters about the mean of all.
            assertEquals(1, least.costPerYear() / cheapest, 0.08, seed + ": " + least);
        }
    }

    @Test
    void cheapWaterAsksForLessSaltAndDearWaterForMore() {
        Softener softener = Softeners.cubicFeet(1.5, 10, 54);
        Duty duty = Softeners.duty(20, 0, 240, 0.4);
        LeastCostDose cheap = LeastCostDose.of(softener, duty, new RunningCost(0.45, 0)).orElseThrow();
        LeastCostDose dear = LeastCostDose.of(softener, duty, new RunningCost(0.45, 20)).orElseThrow();
        assertTrue(cheap.saltDoseGramsPerLitre() < dear.saltDoseGramsPerLitre());
        assertEquals(Bound.COST, dear.boundBy());
    }

    @Test
    void saysWhichLimitKeepsItFromCostingLess() {
        Softener softener = Softeners.cubicFeet(1.5, 10, 54);
        Duty seldom = Softeners.duty(20, 0, 60, 0.4);
        assertEquals(Bound.LOWEST_RECOMMENDED, LeastCostDose.of(softener, seldom, COST).orElseThrow().boundBy());
        Duty often = Softeners.duty(24, 0, 360, 0.4);
        assertEquals(Bound.INTERVAL, LeastCostDose.of(softener, often, new RunningCost(2, 0)).orElseThrow().boundBy());
        Duty frugal = limited(Softeners.duty(20, 0, 240, 0.4), 3200);
        LeastCostDose byEfficiency = LeastCostDose.of(softener, frugal, new RunningCost(0.01, 50)).orElseThrow();
        assertEquals(Bound.EFFICIENCY, byEfficiency.boundBy());
        assertEquals(3200, SaltEfficiencyUnit.GRAIN_PER_POUND.fromBase(softener.capacity().saltEfficiencyGramsPerGram(
                softener.salt(), byEfficiency.saltDoseGramsPerLitre())), 0.1, "as little as is asked for");
        assertEquals(Bound.HIGHEST_RECOMMENDED, LeastCostDose.of(softener, Softeners.duty(20, 0, 240, 0.4),
                new RunningCost(0, 50)).orElseThrow().boundBy());
        for (Bound bound : Bound.values()) {
            assertFalse(bound.words().isBlank());
        }
    }

    @Test
    void hasNoAnswerWhereTheLimitsLeaveNone() {
        Softener softener = Softeners.cubicFeet(1, 9, 48);
        assertTrue(LeastCostDose.of(softener, Softeners.duty(40, 0, 500, 0.4), COST).isEmpty());
        assertTrue(LeastCostDose.of(softener, limited(Softeners.duty(10, 0, 100, 0.4), 5_000), COST).isEmpty());
        assertTrue(LeastCostDose.of(salty(500), Softeners.duty(17.5, 0, 100, 0.4), COST).isEmpty());
    }

    /** Water of 300 mg/L with 20 meq/L of sodium holds 1 gpg from 6 to 8 lb/ft³ on: independent stage model. */
    @Test
    void keepsToTheDosesThatHoldTheEndPoint() {
        Softener softener = salty(20);
        Duty duty = Softeners.duty(17.5, 0, 100, 0.4);
        LeastCostDose least = LeastCostDose.of(softener, duty, COST).orElseThrow();
        assertEquals(Bound.LEAKAGE, least.boundBy());
        assertTrue(softener.holdsEndPoint(least.saltDoseGramsPerLitre()));
        DoseChoice choice = DoseChoice.cheapest(softener, duty, COST);
        assertTrue(choice.best().holdsEndPoint());
        assertTrue(choice.best().dosed().saltDoseGramsPerLitre() >= least.saltDoseGramsPerLitre());
        assertEquals(List.of(), choice.unmet(duty));
    }

    @Test
    void tellsWhichLimitsTheChosenDoseDoesNotKeepTo() {
        DoseChoice none = DoseChoice.cheapest(Softeners.cubicFeet(1, 9, 48),
                limited(Softeners.duty(40, 0, 500, 0.4), 5_000), COST);
        assertEquals(List.of(Limit.INTERVAL, Limit.SALT_EFFICIENCY),
                none.unmet(limited(Softeners.duty(40, 0, 500, 0.4), 5_000)));
        Duty duty = Softeners.duty(17.5, 0, 100, 0.4);
        assertEquals(List.of(Limit.LEAKAGE), DoseChoice.cheapest(salty(120), duty, COST).unmet(duty));
    }

    private static Softener salty(double sodiumMeqPerL) {
        return Softeners.salty(sodiumMeqPerL);
    }

    private static Duty limited(Duty duty, double grainsPerPound) {
        return Softeners.limited(duty, 3, grainsPerPound);
    }
}
