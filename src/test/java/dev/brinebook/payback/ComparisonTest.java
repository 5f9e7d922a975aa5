// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.guard.NoResultReason;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Demand;
import dev.brinebook.household.WeekdayMeans;
import dev.brinebook.payback.UncertainWorth.UncertainInput;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.randomness.Uncertain;
import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.regeneration.MeteredByHistory;
import dev.brinebook.regeneration.MeteredDelayed;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.ServiceStandard;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.Salt;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DoseSearch;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.Softener;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.text.Message;
import dev.brinebook.water.CompensationFactors;
import dev.brinebook.water.WaterAnalysis;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ComparisonTest {

    private static final double CAPACITY_GRAMS = 24_000 * Exact.GRAIN_MILLIGRAMS / 1000;
    private static final Prices PRICES = new Prices(0.40, 1.25, 1.75, 100, 0.04, 0.0557);
    private static final DesignConditions DUTY = duty(0.4);

    private final AlternativePlan clock = way("clock", new ClockEveryDays(4), Outlay.NONE);
    private final AlternativePlan meter = way("meter", new MeteredDelayed(meterLitres(), 1200, 14), new Outlay(300, 0, 10));
    private final Comparison comparison = new Comparison(List.of(clock, meter), 0, DUTY, new Bills(PRICES, 10));

    /** By hand: 365/4 regenerations of 8 lb and the water of the cycle, at the prices; nothing to buy. */
    @Test
    void aClockCostsWhatItsRegenerationsCost() {
        YearlyUse use = comparison.use(clock, Factors.AS_GIVEN);
        assertEquals(91.25, use.regenerationsPerYear(), 1e-9);
        assertEquals(91.25 * 8 * Exact.POUND_KILOGRAMS, use.saltKilograms(), 1e-9);
        assertEquals(91.25 * comparison.setup(clock).orElseThrow().regeneration(12).waterLitres(), use.waterLitres(), 1e-9);
        YearlyCost bills = comparison.bills().of(use);
        assertEquals(0.40 * use.saltKilograms(), bills.salt(), 1e-9);
        assertEquals(use.waterLitres() / 1000 * (1.25 + 1.75), bills.water() + bills.sewer(), 1e-9);
    }

    /** What is fixed stays: a water twice as hard, or half the capacity, changes nothing of a meter's regenerations. */
    @Test
    void whatTheCallerFixesStays() {
        double told = comparison.use(meter, Factors.AS_GIVEN).regenerationsPerYear();
        assertEquals(told, comparison.use(meter, new Factors(Map.of(Input.HARDNESS, 2.0))).regenerationsPerYear(), 1e-4 * told);
        assertEquals(told, comparison.use(meter, new Factors(Map.of(Input.CAPACITY, 0.5))).regenerationsPerYear(), 1e-4 * told);
        assertTrue(comparison.use(meter, new Factors(Map.of(Input.DAILY_USE, 2.0))).regenerationsPerYear() > 1.8 * told);
    }

    /** What is chosen is chosen anew: a meter in harder water regenerates more often. */
    @Test
    void chosenSettingsAreChosenAgainForEachFactor() {
        Comparison chosen = new Comparison(List.of(clock, chosen("chosen", new Outlay(300, 0, 10))), 0, DUTY, new Bills(PRICES, 10));
        AlternativePlan way = chosen.ways().get(1);
        double told = chosen.use(way, Factors.AS_GIVEN).saltKilograms();
        double harder = chosen.use(way, new Factors(Map.of(Input.HARDNESS, 1.5))).saltKilograms();
        assertTrue(harder > 1.3 * told && harder < 1.9 * told, told + " kg and " + harder + " kg");
    }

    /** Putting the break-even back gives a net present value within what it states. */
    @ParameterizedTest
    @EnumSource(value = Input.class, names = {"DAILY_USE", "SALT_PRICE", "FIRST_COST"})
    void aBreakEvenPutBackIsWorthNothing(Input input) {
        BreakEven.Place place = BreakEven.factor(comparison, meter, input);
        assertTrue(place.at().exists(), input.name());
        assertEquals(0, comparison.expectedNetPresentValue(meter, new Factors(Map.of(input, place.at().value()))),
                place.within() + 1e-6);
        assertTrue(place.within() < 0.2, "what is fixed has no steps: " + place.within());
    }

    /** Where settings are chosen anew the worth goes in steps: that of the step is stated. */
    @ParameterizedTest
    @EnumSource(value = Input.class, names = {"HARDNESS", "DAILY_USE", "SALT_PRICE"})
    void aBreakEvenWithChosenSettingsStatesItsStep(Input input) {
        Comparison chosen = new Comparison(List.of(clock, chosen("chosen", new Outlay(300, 0, 10))), 0, DUTY, new Bills(PRICES, 10));
        BreakEven.Place place = BreakEven.factor(chosen, chosen.ways().get(1), input);
        assertTrue(place.at().exists(), input.name());
        assertEquals(0, chosen.expectedNetPresentValue(chosen.ways().get(1), new Factors(Map.of(input, place.at().value()))),
                place.within() + 1e-6);
        assertTrue(place.within() < 60, "a step of a controller: " + place.within());
    }

    @Test
    void theBreakEvenOfAClockPutBackIsWorthNothing() {
        double days = BreakEven.clockDays(comparison, meter).at().value();
        double set = comparison.use(clock, Factors.AS_GIVEN).regenerationsPerYear();
        YearlyUse one = comparison.use(clock, Factors.AS_GIVEN);
        double share = 365 / days / set;
        YearlyUse use = new YearlyUse(share * one.regenerationsPerYear(), share * one.saltKilograms(),
                share * one.waterLitres(), 0);
        double clockCost = LifeCycleCost.of(new Alternative("clock", Outlay.NONE, comparison.bills().of(use)), 10, PRICES);
        assertEquals(clockCost, LifeCycleCost.of(comparison.expected(meter, Factors.AS_GIVEN), 10, PRICES), 0.02);
    }

    @Test
    void neverBreaksEvenWhereNothingChanges() {
        Comparison same = new Comparison(List.of(clock, way("clock again", new ClockEveryDays(4), new Outlay(50, 0, 10))), 0,
                DUTY, new Bills(PRICES, 10));
        assertEquals(NoResultReason.NEVER_BREAKS_EVEN, BreakEven.factor(same, same.ways().get(1), Input.HARDNESS).at().reason());
        assertFalse(Message.of(NoResultReason.NEVER_BREAKS_EVEN).toString().isBlank());
    }

    /** NIST Handbook 135: what a way saves is the difference of the life-cycle costs. */
    @Test
    void savesTheDifferenceOfTheLifeCycleCosts() {
        assertEquals(comparison.lifeCycleCost(clock) - comparison.lifeCycleCost(meter),
                comparison.against(meter).netPresentValue(), 1e-9);
        assertEquals(300, comparison.against(meter).investment());
    }

    /** A price enters linearly: with it alone uncertain and normal, the worth is normal with the mean and variance of theory. */
    @Test
    void aLinearCaseHasTheMeanAndVarianceOfTheory() {
        AlternativePlan other = way("other clock", new ClockEveryDays(6), new Outlay(100, 0, 10));
        Comparison clocks = new Comparison(List.of(clock, other), 0, DUTY, new Bills(PRICES, 10));
        UncertainWorth worth = UncertainWorth.of(new UncertainCases(clocks, List.of(new UncertainInput(Input.SALT_PRICE,
                new Uncertain.Normal(1, 0.2))), 3), other, 4_000, 0);
        double atMean = countedWorth(clocks, other, 1);
        double slope = countedWorth(clocks, other, 2) - atMean;
        assertEquals(atMean, worth.mean().value(), 3 * worth.mean().standardError());
        double squares = 0;
        for (double one : worth.netPresentValue().sorted()) {
            squares += (one - atMean) * (one - atMean);
        }
        double variance = 0.04 * slope * slope;
        assertEquals(variance, squares / 4_000, 3 * variance * Math.sqrt(2 / 4_000.0));
        assertEquals(1, worth.drivers().get(0).rankCorrelation(), 0.01);
    }

    private static double countedWorth(Comparison clocks, AlternativePlan other, double saltFactor) {
        Factors factors = new Factors(Map.of(Input.SALT_PRICE, saltFactor));
        return LifeCycleCost.of(clocks.expected(clocks.baseline(), factors), 10, PRICES)
                - LifeCycleCost.of(clocks.expected(other, factors), 10, PRICES);
    }

    @Test
    void isTheSameOnAnyNumberOfThreads() throws Exception {
        double[] alone = onThreads(1);
        assertArrayEquals(alone, onThreads(2));
        assertArrayEquals(alone, onThreads(8));
    }

    private double[] onThreads(int threads) throws Exception {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> uncertain(1_500).netPresentValue().sorted()).get();
        } finally {
            pool.shutdown();
        }
    }

    @Test
    void ordersDriversBySwingAndReportsTheChanceOfPaying() {
        UncertainWorth worth = uncertain(2_000);
        for (int i = 1; i < worth.drivers().size(); i++) {
            assertTrue(worth.drivers().get(i - 1).swing() >= worth.drivers().get(i).swing());
        }
        assertEquals(worth.paybackYears().shareUpTo(4), worth.paysWithinShare(4));
        assertTrue(worth.paysWithinShare(1) <= worth.paysWithinShare(5));
        assertTrue(worth.netPresentValue().at(0.05) < worth.netPresentValue().at(0.95));
        assertEquals(2_000, worth.draws());
    }

    @Test
    void reportsTheFactorsThatItCalculatesWith() {
        UncertainWorth worth = UncertainWorth.of(new UncertainCases(comparison, List.of(new UncertainInput(Input.SALT_PRICE,
                new Uncertain.Normal(1, 1.5))), 7), meter, 1_000, 0);
        assertEquals(0, worth.drivers().get(0).lowFactor(), "a normal factor below zero is treated as zero");
        assertEquals(1 + 1.5 * 1.2815515655446004, worth.drivers().get(0).highFactor(), 1e-9);
    }

    private UncertainWorth uncertain(int draws) {
        return UncertainWorth.of(new UncertainCases(comparison, List.of(
                new UncertainInput(Input.SALT_PRICE, new Uncertain.Normal(1, 0.2)),
                new UncertainInput(Input.HARDNESS, new Uncertain.Lognormal(1, 0.1)), new UncertainInput(Input.DAILY_USE,
                        new Uncertain.Triangular(0.7, 1, 1.4)), new UncertainInput(Input.FIRST_COST, new Uncertain.Range(0.9, 1.3))),
                7), meter, draws, 0);
    }

    @Test
    void softeningNothingCostsNothingAndReservesGoWithTheUse() {
        AlternativePlan none = new AlternativePlan("nothing", duty -> List.of(), Outlay.NONE, 0);
        assertEquals(new YearlyUse(0, 0, 0, 0), none.use(DUTY, AlternativePlan.Circumstances.AS_GIVEN,
                comparison.running(Factors.AS_GIVEN)));
        assertEquals(new MeteredDelayed(7000, 2400, 14), new MeteredDelayed(7000, 1200, 14).scaledTo(2));
        assertEquals(new MeteredByHistory(7000, MeteredByHistory.Of.MEAN, 600, 14),
                new MeteredByHistory(7000, MeteredByHistory.Of.MEAN, 1200, 14).scaledTo(0.5));
        assertEquals(new ClockEveryDays(4), new ClockEveryDays(4).scaledTo(3));
    }

    /** By hand: 10 kg a year in bags of 25 kg, two a trip, over 10 years: 100 kg used, two trips of 50 kg, 10 kg a year. */
    @Test
    void billsSaltInWholeBagsAndWaterOnTopOfTheHouseholds() {
        WaterTariff blocks = new WaterTariff(List.of(new WaterTariff.Block(40, 1.5), new WaterTariff.Block(
                Double.POSITIVE_INFINITY, 3)));
        Bills bills = new Bills(PRICES, blocks, WaterTariff.flat(2), 39, new Bills.Bags(25, 2), 10);
        YearlyCost cost = bills.of(new YearlyUse(20, 10, 3_000, 1));
        assertEquals(10 * 0.40, cost.salt(), 1e-9);
        assertEquals(1 * 1.5 + 2 * 3, cost.water(), 1e-9);
        assertEquals(3 * 2, cost.sewer(), 1e-9);
        assertEquals(100, cost.service(), 1e-9);
        assertEquals(15 * 0.40, bills.of(new YearlyUse(20, 11, 3_000, 1)).salt(), 1e-9, "110 kg take three trips of 50 kg");
    }

    @Test
    void refusesWhatMakesNoSense() {
        assertThrows(IllegalArgumentException.class, () -> new Comparison(List.of(clock), 0, DUTY, new Bills(PRICES, 10)));
        assertThrows(IllegalArgumentException.class, () -> new Comparison(List.of(clock, meter), 2, DUTY,
                new Bills(PRICES, 10)));
        assertThrows(IllegalArgumentException.class, () -> new Factors(Map.of(Input.HARDNESS, -1.0)));
        assertThrows(IllegalArgumentException.class, () -> new AlternativePlan.Circumstances(0, 1, 1));
    }

    private static double meterLitres() {
        return 1000 * CAPACITY_GRAMS / DUTY.hardness().totalMgPerL();
    }

    private static final Softener SOFTENER = new Softener(new ResinBed(Exact.CUBIC_FOOT_LITRES, 9 * Exact.INCH_METRES),
            48 * Exact.INCH_METRES, Salt.SODIUM_CHLORIDE, CapacityTable.WORKING, CycleFlows.UNKNOWN);

    private static AlternativePlan way(String name, Policy policy, Outlay outlay) {
        SoftenerSettings setup = new SoftenerSettings(SOFTENER, SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(8), Map.of(), policy, 2);
        return new AlternativePlan(name, duty -> List.of(AlternativePlan.Possible.of(setup, duty)), outlay, 0);
    }

    /** A meter whose dose and reserve are chosen. */
    private static AlternativePlan chosen(String name, Outlay outlay) {
        return new AlternativePlan(name, duty -> DoseSearch.cheapest(SOFTENER, duty, new RunningCost(0.4, 3)).candidates(duty).stream()
                .map(option -> AlternativePlan.Possible.of(new SoftenerSettings(SOFTENER, option.dosed().saltDoseGramsPerLitre(), Map.of(),
                        option.settings().policy(), 2), duty)).toList(), outlay, 0);
    }

    private static DesignConditions duty(double cv) {
        WaterAnalysis water = WaterAnalysis.ofHardness(HardnessUnit.GPG.toBase(15)).bacteriaTested(true).build();
        Demand demand = new Demand(WeekdayMeans.everyDay(900), DayVariation.ofCv(cv), Optional.empty(), 20, 8);
        return new DesignConditions(water, water.compensated(CompensationFactors.STANDARD), demand,
                demand.days(LocalDate.of(2026, 1, 1), 365, 1), ServiceStandard.USUAL, 3, 0);
    }
}
