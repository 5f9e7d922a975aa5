// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.household.DayVariation;
import dev.brinebook.household.SampledYears;
import dev.brinebook.household.UseChange;
import dev.brinebook.household.UseModel;
import dev.brinebook.household.WeekdayMeans;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The levels of use over which a home is expected: their quadrature, and the properties of means over them. */
class LevelsTest {

    private static final int LEVELS = 7;
    private static final UseModel HOME = new UseModel(WeekdayMeans.ofWeek(300, 1.09), DayVariation.ofCv(0.42));
    private static final Regeneration BED = new Regeneration(630, 1_800, 150, 60);
    private static final double HARDNESS = 300;

    /** Seven nodes have the moments of a standard normal variable up to the thirteenth: 1, 1, 3, 15, 105, 945, 10,395. */
    @ParameterizedTest
    @CsvSource({"0, 1", "2, 1", "4, 3", "6, 15", "8, 105", "10, 945", "12, 10395", "1, 0", "3, 0", "13, 0"})
    void theLevelsHaveTheMomentsOfANormalVariable(int power, double moment) {
        double sum = 0;
        for (int level = 0; level < LEVELS; level++) {
            sum += LongRun.WEIGHTS[level] * StrictMath.pow(LongRun.NODES[level], power);
        }
        assertEquals(moment, sum, 1e-9 * Math.max(1, moment));
    }

    /** The mean of the levels is what is known of the home; a factor of exp(s z) is exp(s²/2) above it on the mean. */
    @Test
    void theMeanUseIsUnchanged() {
        double[] factors = LongRun.levels(0.18);
        double mean = 0;
        for (int level = 0; level < LEVELS; level++) {
            mean += LongRun.WEIGHTS[level] * factors[level];
        }
        assertEquals(1, mean, 1e-12);
        assertEquals(StrictMath.exp(-0.18 * 0.18 / 2), factors[LEVELS / 2], 1e-9);
    }

    /** A home that stays as it is has its own figure; one that wanders has more hard days of a meter, and far more of a clock. */
    @ParameterizedTest
    @CsvSource({"0.05", "0.1", "0.18", "0.3"})
    void hardDaysRiseWithTheSpread(double spread) {
        LongRun steady = LongRun.of(HOME);
        LongRun wanders = LongRun.of(HOME.with(new UseChange(spread, 0, 0)));
        Policy meter = new MeteredDelayed(2_100, 600, 14);
        Policy clock = new ClockEveryDays(5);
        double meterTimes = wanders.hardDaysPerYear(meter, HARDNESS, BED) / steady.hardDaysPerYear(meter, HARDNESS, BED);
        double clockTimes = wanders.hardDaysPerYear(clock, HARDNESS, BED) / steady.hardDaysPerYear(clock, HARDNESS, BED);
        assertTrue(meterTimes > 1, spread + ": " + meterTimes);
        assertTrue(clockTimes > meterTimes, spread + ": " + clockTimes + " and " + meterTimes);
        assertEquals(steady.hardDaysPerYear(meter, HARDNESS, BED), wanders.ifItStays().hardDaysPerYear(meter, HARDNESS, BED), 1e-3);
        assertEquals(steady.meanLitres(), wanders.meanLitres(), 1e-9);
    }

    /** A multiple of the use is the same as levels multiplied by that factor. */
    @Test
    void timesAndLevelsGoTogether() {
        LongRun home = LongRun.of(HOME.with(new UseChange(0.18, 0.1, 0.12)));
        LongRun larger = LongRun.of(HOME.withMeans(HOME.means().times(1.3)).with(new UseChange(0.18, 0.1, 0.12)));
        Policy meter = new MeteredDelayed(2_100, 700, 14);
        assertEquals(larger.year(meter, HARDNESS, BED).hardDays(), home.times(1.3).year(meter, HARDNESS, BED).hardDays(), 1e-3);
        assertEquals(larger.meanLitres(), home.times(1.3).meanLitres(), 1e-9);
    }

    /** Days that scatter little are seen at as many levels as others: 0.981, 0.357 and 0.534 by another program from the same page. */
    @ParameterizedTest
    @CsvSource({"0.15, 8, 5, 0.981", "0.2, 7.2, 4, 0.357", "0.249, 7.2, 4, 0.534"})
    void clocksOfSteadyDaysFeelTheLevelToo(double cv, double bedDays, int clockDays, double hardDays) {
        LongRun home = LongRun.of(new UseModel(WeekdayMeans.ofWeek(300, 1.09), DayVariation.ofCv(cv)).with(new UseChange(0.18, 0, 0.12)));
        assertEquals(hardDays, home.hardDaysPerYear(new ClockEveryDays(clockDays), HARDNESS, new Regeneration(
                bedDays * 300 * HARDNESS / 1000, 1_800, 150, 60)), 0.03);
    }

    /** Simulated years have the same levels, scatter and sums of days: their mean is the expected one within four errors. */
    @ParameterizedTest
    @CsvSource({"0.18, 0.1, 0.12, false", "0.377, 0.237, 0.12, false", "0, 0, 0.12, true", "0, 0.2, 0, true"})
    void simulatedYearsAgreeWithTheLongRun(double level, double scatter, double correlation, boolean byClock) {
        UseModel model = HOME.with(new UseChange(level, scatter, correlation));
        Policy policy = byClock ? new ClockEveryDays(5) : new MeteredDelayed(2_100, 600, 14);
        SimulatedYears years = SimulatedYears.of(new SampledYears(model, LocalDate.of(2026, 1, 1), 2_000, 7), HARDNESS, BED, policy);
        YearlyTotals expected = LongRun.of(model).year(policy, HARDNESS, BED);
        Spread hardDays = years.spread(Totals::hardDays);
        assertEquals(expected.hardDays(), hardDays.mean(), 4 * hardDays.standardError() + 0.03 * expected.hardDays());
        Spread regenerations = years.spread(Totals::regenerations);
        assertEquals(expected.regenerations(), regenerations.mean(), 4 * regenerations.standardError() + 0.2);
    }
}
