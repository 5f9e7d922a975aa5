// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Rows;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.SampledYears;
import dev.brinebook.household.UseModel;
import dev.brinebook.household.WeekdayMeans;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class SimulatedYearsTest {

    private static final String ROWS = "/regeneration/cross-hard-days.csv";
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);
    private static final double HARDNESS = 300;
    private static final int YEARS = 2_000;

    /** A mean of simulated years lies within three standard errors of the theory in 997 of 1,000 cases. */
    @ParameterizedTest
    @CsvFileSource(resources = ROWS, useHeadersInDisplayName = true)
    void runsHardAsOftenAsRenewalTheorySays(double meterLitres, double reserveLitres, double meanLitres, double cv,
            double hardDays, double regenerations) {
        SimulatedYears years = years(drawn(meanLitres, cv, YEARS, 11), meterLitres,
                new MeteredDelayed(meterLitres, reserveLitres, Policy.NO_OVERRIDE));
        assertWithin3(hardDays, years.spread(Totals::hardDays));
        assertWithin3(regenerations, years.spread(Totals::regenerations));
    }

    @ParameterizedTest
    @CsvFileSource(resources = ROWS, useHeadersInDisplayName = true)
    void theLongRunIsWhatRenewalTheorySays(double meterLitres, double reserveLitres, double meanLitres, double cv,
            double hardDays, double regenerations) {
        YearlyTotals year = LongRun.of(new UseModel(WeekdayMeans.everyDay(meanLitres), DayVariation.ofCv(cv)))
                .year(new MeteredDelayed(meterLitres, reserveLitres, Policy.NO_OVERRIDE), HARDNESS, regeneration(meterLitres));
        assertEquals(hardDays, year.hardDays(), 0.002 + 2e-4 * hardDays);
        assertEquals(regenerations, year.regenerations(), 1e-4 * regenerations);
    }

    /** A bed that was never exhausted stands for another that is not; one that is exhausted has years of its own. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            before, hardness
            100,    300
            300,    100
            100,    600
            600,    300
            900,    601
            """)
    void whatWasAskedBeforeDoesNotMatter(double before, double hardness) {
        UseModel model = new UseModel(WeekdayMeans.ofWeek(300, 1.09), DayVariation.ofCv(0.42));
        Regeneration bed = new Regeneration(0.3 * 1_100, 1_800, 150, 60);
        for (Policy policy : List.of(new TwinAlternating(900, 3), new MeteredImmediate(900, 3))) {
            LongRun home = LongRun.of(model);
            home.year(policy, before, bed);
            assertEquals(LongRun.of(model).year(policy, hardness, bed), home.year(policy, hardness, bed), policy.toString());
        }
    }

    @Test
    void readsEveryRow() {
        assertEquals(5, Rows.in(ROWS));
    }

    /** The smallest reserve meets the standard on simulated years. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            meterLitres, meanLitres, cv, wantedHardDays
            7000, 1000, 0.45, 2
            7000, 1000, 0.45, 0.5
            4000, 1000, 0.60, 5
            12000, 800, 0.38, 1
            """)
    void theSmallestReserveKeepsItsPromiseOnOtherYears(double meterLitres, double meanLitres, double cv, double wanted) {
        MeteredDelayed meter = new MeteredDelayed(meterLitres, 0, 14);
        double reserve = SmallestReserve.litres(LongRun.of(new UseModel(WeekdayMeans.everyDay(meanLitres),
                DayVariation.ofCv(cv))), HARDNESS, regeneration(meterLitres), meter, standard(wanted), 0.5, 300).value();
        Spread achieved = years(drawn(meanLitres, cv, YEARS, 2), meterLitres, new MeteredDelayed(meterLitres, reserve, 14))
                .spread(Totals::hardDays);
        double uncertain = Math.sqrt(2) * achieved.standardError();
        assertEquals(wanted, achieved.mean(), 3 * uncertain, "reserve " + reserve);
    }

    /** Regenerating every night, a bed that a day stays below with probability p runs hard on 1 - p of the days. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            cv, probability
            0.45, 0.90
            0.45, 0.99
            0.30, 0.95
            0.60, 0.90
            """)
    void aQuantileReserveIsExceededAsOftenAsItSays(double cv, double probability) {
        double reserve = new Reserve.PercentileDay(probability).litres(0, WeekdayMeans.everyDay(1000), cv);
        Spread hard = years(drawn(1000, cv, YEARS, 5), reserve, new MeteredDelayed(reserve, reserve, 14))
                .spread(Totals::hardDays);
        assertWithin3(365 * (1 - probability), hard);
    }

    @Test
    void noReserveIsNeededOrNoneIsEnough() {
        MeteredDelayed meter = new MeteredDelayed(7000, 0, 14);
        LongRun longRun = LongRun.of(new UseModel(WeekdayMeans.everyDay(1000), DayVariation.ofCv(0.45)));
        assertEquals(0, SmallestReserve.litres(longRun, HARDNESS, regeneration(7000), meter, standard(365), 1, 0).value());
        assertEquals(NoResultReason.HARD_EVERY_NIGHT, SmallestReserve.litres(longRun, HARDNESS, regeneration(1000),
                new MeteredDelayed(1000, 0, 14), standard(1), 1, 0).reason());
        assertThrows(IllegalArgumentException.class, () -> standard(-1));
    }

    /** A coarser step rounds up, and one step less would not do; where it is first looked changes nothing. */
    @ParameterizedTest
    @CsvSource({"1, 0", "1, 1500", "37.85, 0", "37.85, 6000", "200, 900"})
    void theReserveIsTheFewestStepsThatMeetTheStandard(double step, double likely) {
        LongRun longRun = LongRun.of(new UseModel(WeekdayMeans.everyDay(1000), DayVariation.ofCv(0.45)));
        Regeneration each = regeneration(7000);
        double reserve = SmallestReserve.litres(longRun, HARDNESS, each, new MeteredDelayed(7000, 0, 14), ServiceStandard.USUAL,
                step, likely).value();
        assertEquals(Math.rint(reserve / step), reserve / step, 1e-9);
        assertTrue(ServiceStandard.USUAL.isMet(longRun, new MeteredDelayed(7000, reserve, 14), HARDNESS, each));
        assertFalse(ServiceStandard.USUAL.isMet(longRun, new MeteredDelayed(7000, reserve - step, 14), HARDNESS, each));
    }

    private static ServiceStandard standard(double hardDays) {
        return new ServiceStandard(hardDays, 365, 1, 1);
    }

    /** The bed goes on from year to year, so nothing is regenerated at each start: many years are one long run. */
    @Test
    void goesOnFromYearToYear() {
        double litres = 0;
        SimulatedYears years = years(drawn(1000, 0.45, 50, 3), 9_500, new MeteredImmediate(9_500, 0));
        double drawn = 0;
        for (int year = 0; year < years.count(); year++) {
            litres += years.year(year).regenerations() * 9_500.0;
            drawn += years.year(year).throughBedLitres();
        }
        assertTrue(drawn - litres >= 0 && drawn - litres < 9_500, drawn + " used, " + litres + " regenerated");
    }

    @Test
    void allPoliciesSeeTheSameDaysAndTheSameSeedGivesTheSameYears() {
        List<Policy> policies = List.of(new ClockEveryDays(4, 0), new MeteredDelayed(7000, 1600, 14),
                new MeteredByHistory(7000, MeteredByHistory.Of.LARGEST, 1600, 14), new MeteredImmediate(7000, 14),
                new TwinAlternating(7000, 14));
        SampledYears drawn = drawn(1000, 0.45, 20, 9);
        double litres = years(drawn, 7000, policies.get(0)).spread(Totals::throughBedLitres).mean();
        for (Policy policy : policies) {
            SimulatedYears years = years(drawn, 7000, policy);
            assertEquals(litres, years.spread(total -> total.throughBedLitres() + total.bypassedLitres()).mean(),
                    1e-6 * litres, policy.toString());
            assertEquals(years.spread(Totals::hardLitres), years(drawn(1000, 0.45, 20, 9), 7000, policy)
                    .spread(Totals::hardLitres));
        }
    }

    @Test
    void reportsTheSpreadOfYears() {
        Spread spread = Spread.of(4, 1, 3, 2, 5);
        assertEquals(new Spread(3, Math.sqrt(0.5), 1.2, 3, 4.8), spread, "numpy.percentile of 1 to 5 at 5, 50 and 95");
        assertEquals(new Spread(7, 0, 7, 7, 7), Spread.of(7));
        assertThrows(IllegalArgumentException.class, Spread::of);
        SimulatedYears years = years(drawn(1000, 0.45, 100, 9), 7000, new MeteredDelayed(7000, 1600, 14));
        long hard = java.util.stream.IntStream.range(0, 100).filter(year -> years.year(year).hardDays() > 0).count();
        assertEquals(hard / 100.0, years.yearsWithHardDaysShare());
    }

    private static void assertWithin3(double expected, Spread spread) {
        assertEquals(expected, spread.mean(), 3 * spread.standardError() + 1e-9 * expected);
    }

    private static SimulatedYears years(SampledYears drawn, double meterLitres, Policy policy) {
        return SimulatedYears.of(drawn, HARDNESS, regeneration(meterLitres), policy);
    }

    /** A bed that runs out with its meter. */
    private static Regeneration regeneration(double meterLitres) {
        return new Regeneration(meterLitres * HARDNESS / 1000, 5000, 250, 90);
    }

    private static SampledYears drawn(double meanLitres, double cv, int years, long seed) {
        return new SampledYears(new UseModel(WeekdayMeans.everyDay(meanLitres), DayVariation.ofCv(cv)), FIRST, years, seed);
    }
}
