// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.savings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.household.Occupancy;
import dev.brinebook.household.UseChange;
import dev.brinebook.measurement.Reading;
import dev.brinebook.savings.SavingsFactors.Factor;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The formulas against worked numbers and published ones. */
class SavingsFormulasTest {

    private static final double POUND = 0.45359237;

    /** By hand: p = 0.32/0.341, ρ = 0.659, [p(1−p)·4.865 + p·0.2025]/p²; without absences CV². */
    @ParameterizedTest
    @CsvSource({"0.45, true, 0.535, 0.7315", "0.45, false, 0.2025, 0.45", "0, false, 0, 0"})
    void longRunVarianceOfDays(double cv, boolean absences, double variance, double root) {
        UseScatter scatter = UseScatter.of(cv, absences ? Occupancy.Chain.USUAL : Occupancy.ALWAYS, UseChange.NONE);
        assertEquals(variance, scatter.longRunVariance(), 5e-4);
        assertEquals(root, Math.sqrt(scatter.longRunVariance()), 5e-5);
    }

    /** Overshoot of equal days is uniform over a day: mean 1/2, standard deviation 1/√12. Source: by definition. */
    @Test
    void overshootOfEqualDays() {
        UseScatter even = UseScatter.of(0, Occupancy.ALWAYS, UseChange.NONE);
        assertEquals(0.5, even.overshoot(), 1e-12);
        assertEquals(1 / Math.sqrt(12), even.overshootScatter(), 1e-12);
    }

    /** Level ± 10 lb at both ends: 10 √(2/3) lb. Two bags of 40 lb at a time: 80/√6 lb. Source: [GUM] 4.3.7 and 4.3.9. */
    @Test
    void saltByBagsAndLevels() {
        Reading levels = SavingsPeriod.balance(240 * POUND, 100 * POUND, 90 * POUND, 10 * POUND);
        assertEquals(250, levels.value() / POUND, 1e-9);
        assertEquals(8.16, levels.standardUncertainty() / POUND, 5e-3);
        assertEquals(32.66, SavingsPeriod.bagsAlone(240 * POUND, 80 * POUND).standardUncertainty() / POUND, 5e-3);
    }

    /** By hand: 1 − 8·30/(10·45) = 0.467; u² = 2·0.03² + (1/6)(1/900 + 1/2025) between two clocks. */
    @Test
    void savingBetweenTwoClocks() {
        SavingsEstimate seen = SavingsEstimate.of(clock(180, 45, 10), clock(180, 30, 8), VerifiedSavingsTest.USUAL);
        assertEquals(0.46667, seen.share(), 5e-6);
        assertEquals(Math.sqrt(2 * 0.0009 + (1 / 900.0 + 1 / 2025.0) / 6), seen.logUncertainty(), 1e-12);
        assertEquals(SavingsError.DOSE, seen.largestError());
        assertEquals(0.5, seen.probabilityOfAtLeast(seen.share()), 1e-12);
        assertEquals(0.95, seen.probabilityOfAtLeast(seen.low()), 1e-9);
    }

    /** A meter reads more water after: the saving is that at the use before. A meter at once has no overshoot, so salt goes with water. */
    @Test
    void useOfTheReportingPeriodIsTakenOut() {
        SavingsPeriod before = meter(100, 1000, 40, 5);
        assertEquals(0, SavingsEstimate.of(before, meter(100, 1250, 50, 5), VerifiedSavingsTest.USUAL).share(), 1e-12);
        assertEquals(0.2, SavingsEstimate.of(before, meter(100, 1250, 40, 5), VerifiedSavingsTest.USUAL).share(), 1e-12);
    }

    /** By hand: L(2, 1) = 1/ln 2; ln of the count 40/30, of the dose 0.5, of the use 1.25 and so on add up to ln of the ratio. */
    @Test
    void causesAddUp() {
        SavingsPeriod before = clock(100, 40, 5);
        SavingsPeriod after = new SavingsPeriod(100, StartedBy.METER_IMMEDIATE, OptionalDouble.of(1250), OptionalInt.of(40),
                Optional.of(Reading.normal(2.5, 0.075)), Optional.empty(), OptionalDouble.empty());
        SavingsPeriod read = new SavingsPeriod(100, StartedBy.CLOCK, OptionalDouble.of(1000), before.regenerations(), before.dose(),
                Optional.empty(), OptionalDouble.empty());
        Map<Factor, Double> causes = SavingsFactors.salt(read, after);
        assertEquals(-1, causes.get(Factor.DOSE), 1e-12);
        assertEquals(Math.log(1.25) / Math.log(2), causes.get(Factor.USE), 1e-12);
        assertEquals(-Math.log(1.25) / Math.log(2), causes.get(Factor.COUNT), 1e-12);
        assertEquals(-1, causes.values().stream().mapToDouble(Double::doubleValue).sum(), 1e-12);
        Map<Factor, Double> cost = SavingsFactors.cost(read, after, 0.4, 0.5);
        assertEquals(0.5 - 0.8, cost.values().stream().mapToDouble(Double::doubleValue).sum(), 1e-12);
        assertTrue(cost.get(Factor.PRICE) > 0);
    }

    /**
     * Days of equal length before and after that show any saving with 90 % and a power of 80 %: a house of 180 gal a day with absences,
     * a clock of 4 days before, a run of 1,200 gal with a reserve of 180 after. Source: hand calculation for a saving that is normal
     * itself, not its logarithm, and whose runs do not scatter; here the water is read, so that the days count before alone.
     */
    @ParameterizedTest
    @CsvSource({"0.2, 53", "0.3, 24", "0.15, 94", "0.1, 213"})
    void daysToShowASaving(double share, int days) {
        UseScatter scatter = UseScatter.of(0.45, Occupancy.Chain.USUAL, UseChange.NONE);
        SavingsPeriod before = new SavingsPeriod(days, StartedBy.CLOCK, OptionalDouble.of(168.9), OptionalInt.of(Math.round(days / 4f)),
                Optional.of(Reading.normal(8, 1e-6)), Optional.empty(), OptionalDouble.empty());
        SavingsPeriod after = new SavingsPeriod(days, StartedBy.METER_DELAYED, OptionalDouble.of(168.9),
                OptionalInt.of(Math.max(1, (int) Math.round(0.1656 * days))), Optional.of(Reading.normal(8, 1e-6)), Optional.empty(),
                OptionalDouble.empty());
        double wanted = share / (1 - share) / (1.2816 + 0.8416);
        assertEquals(wanted, SavingsEstimate.of(before, after, scatter).logUncertainty(), 0.12 * wanted);
    }

    /** Thirteen trials of a vaccine: τ² 0.3088, mean −0.7141, standard error 0.1787. Source: [DERSIMONIAN-LAIRD], data from memory. */
    @Test
    void poolsAsPublished() {
        double[][] trials = {{-0.8893, 0.3256}, {-1.5854, 0.1946}, {-1.3481, 0.4154}, {-1.4416, 0.0200}, {-0.2175, 0.0512},
            {-0.7861, 0.0069}, {-1.6209, 0.2230}, {0.0120, 0.0040}, {-0.4694, 0.0564}, {-1.3713, 0.0730}, {-0.3394, 0.0124},
            {0.4459, 0.5325}, {-0.0173, 0.0714}};
        List<SavingsEstimate> homes = new ArrayList<>();
        for (double[] trial : trials) {
            homes.add(new SavingsEstimate(1, Math.exp(trial[0]), 1, 1, Map.of(SavingsError.COUNT, trial[1]), true));
        }
        FleetSavings fleet = FleetSavings.of(homes);
        assertEquals(0.3088, fleet.spread() * fleet.spread(), 5e-4);
        assertEquals(-0.7141, fleet.meanLog(), 3e-4);
        assertEquals(0.1787, fleet.standardError(), 0.003);
    }

    private static SavingsPeriod clock(int days, int count, double dose) {
        return new SavingsPeriod(days, StartedBy.CLOCK, OptionalDouble.empty(), OptionalInt.of(count),
                Optional.of(Reading.normal(dose, 0.03 * dose)), Optional.empty(), OptionalDouble.empty());
    }

    private static SavingsPeriod meter(int days, double litres, int count, double dose) {
        return new SavingsPeriod(days, StartedBy.METER_IMMEDIATE, OptionalDouble.of(litres), OptionalInt.of(count),
                Optional.of(Reading.normal(dose, 0.03 * dose)), Optional.empty(), OptionalDouble.empty());
    }
}
