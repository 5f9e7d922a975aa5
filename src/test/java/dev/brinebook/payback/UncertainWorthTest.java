// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Demand;
import dev.brinebook.household.WeekdayMeans;
import dev.brinebook.payback.UncertainWorth.UncertainInput;
import dev.brinebook.randomness.Uncertain;
import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.regeneration.ServiceStandard;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.Salt;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.Softener;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.water.CompensationFactors;
import dev.brinebook.water.WaterAnalysis;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Clocks use the same whatever is sampled, so that each draw can be calculated by hand. */
class UncertainWorthTest {

    private static final Bills BILLS = new Bills(new Prices(0.40, 1.25, 1.75, 100, 0.04, 0.0557), 10);
    private static final DesignConditions DUTY = duty();
    private static final List<UncertainInput> KNOWN = List.of(new UncertainInput(Input.SALT_PRICE, new Uncertain.Known(1)));

    /** By hand: what it costs more, over what is saved in the first year; nothing where it costs no more; else never. */
    @ParameterizedTest(name = "every {0} days for {1} against every 4 for {2}")
    @CsvSource({"6, 100, 40, 60", "6, 40, 40, 0", "6, 30, 40, 0", "3, 100, 40, Infinity", "4, 100, 40, Infinity"})
    void paysBackTheExtraCost(int days, double cost, double baselineCost, double more) {
        AlternativePlan baseline = clock(4, baselineCost);
        AlternativePlan way = clock(days, cost);
        double saved = BILLS.of(use(baseline)).minus(BILLS.of(use(way))).total();
        double expected = Double.isInfinite(more) || more == 0 ? more : more / saved;
        UncertainWorth worth = UncertainWorth.of(new UncertainCases(new Comparison(List.of(baseline, way), 0, DUTY, BILLS), KNOWN, 1),
                way, 1_000, 0);
        assertEquals(expected, worth.paybackYears().at(0.5), 1e-9);
    }

    private static YearlyUse use(AlternativePlan way) {
        return way.use(DUTY, AlternativePlan.Circumstances.AS_GIVEN, new RunningCost(0.40, 3));
    }

    /** An input swings from the tenth to the ninetieth hundredth of what it may be, 1.2816 deviations of a normal one. */
    @Test
    void swingsOneInputWithTheOthersAtTheirMedians() {
        AlternativePlan way = clock(6, 100);
        Comparison comparison = new Comparison(List.of(clock(4, 0), way), 0, DUTY, BILLS);
        UncertainWorth worth = UncertainWorth.of(new UncertainCases(comparison, List.of(new UncertainInput(Input.SALT_PRICE,
                new Uncertain.Normal(1, 0.2)), new UncertainInput(Input.FIRST_COST, new Uncertain.Range(1, 3))), 1), way, 1_000, 0);
        UncertainWorth.Driver cost = driver(worth, Input.FIRST_COST);
        UncertainWorth.Driver salt = driver(worth, Input.SALT_PRICE);
        assertEquals(1 - 0.2 * 1.2816, salt.lowFactor(), 1e-5);
        assertEquals(comparison.expectedNetPresentValue(way, new Factors(Map.of(Input.SALT_PRICE, salt.lowFactor(),
                Input.FIRST_COST, 2.0))), salt.worthAtLow(), 1e-9);
        assertEquals(comparison.expectedNetPresentValue(way, new Factors(Map.of(Input.SALT_PRICE, salt.highFactor(),
                Input.FIRST_COST, 2.0))), salt.worthAtHigh(), 1e-9);
        assertEquals(2.8 * 100 - 1.2 * 100, cost.swing(), 1e-6, "what is paid today counts in full");
    }

    private static UncertainWorth.Driver driver(UncertainWorth worth, Input input) {
        return worth.drivers().stream().filter(driver -> driver.input() == input).findFirst().orElseThrow();
    }

    @Test
    void countsTheShareUpToAValue() {
        UncertainWorth.Quantiles years = new UncertainWorth.Quantiles(new double[] {7, 2, Double.POSITIVE_INFINITY, 4});
        assertEquals(0.5, years.shareUpTo(4));
        assertEquals(0.25, years.shareUpTo(3.9));
        assertEquals(0.75, years.shareUpTo(100));
    }

    @Test
    void factorsGoToTheirOwnPrices() {
        Factors factors = new Factors(Map.of(Input.SALT_PRICE, 2.0, Input.WATER_PRICE, 3.0, Input.SEWER_PRICE, 4.0,
                Input.SERVICE_PRICE, 5.0));
        assertEquals(new YearlyCost(2, 30, 400, 5_000), factors.on(new YearlyCost(1, 10, 100, 1_000)));
    }

    private static AlternativePlan clock(int days, double cost) {
        Softener softener = new Softener(new ResinBed(28, 0.23), 1.22, Salt.SODIUM_CHLORIDE, CapacityTable.WORKING,
                CycleFlows.UNKNOWN);
        SoftenerSettings setup = new SoftenerSettings(softener, 128, Map.of(), new ClockEveryDays(days), 2);
        return new AlternativePlan("every " + days, duty -> List.of(AlternativePlan.Possible.of(setup, duty)), new Outlay(cost, 0, 10), 0);
    }

    private static DesignConditions duty() {
        OptionalDouble none = OptionalDouble.empty();
        WaterAnalysis water = WaterAnalysis.ofHardness(250).bacteriaTested(true).build();
        Demand demand = new Demand(WeekdayMeans.everyDay(900), DayVariation.ofCv(0.4), Optional.empty(), 20, 8);
        return new DesignConditions(water, water.compensated(CompensationFactors.STANDARD), demand,
                demand.days(LocalDate.of(2026, 1, 1), 365, 1), ServiceStandard.USUAL, 3, 0);
    }
}
