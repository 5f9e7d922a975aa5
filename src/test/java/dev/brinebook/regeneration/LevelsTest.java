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
import org.hipparchus.special.Gamma;
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
            sum += Levels.OF_METERS.weight(level) * StrictMath.pow(Levels.OF_METERS.node(level), power);
        }
        assertEquals(moment, sum, 1e-9 * Math.max(1, moment));
    }

    /**
     * A clock in a home whose days are all alike in mean and do not depend on each other: the use of n days is a gamma variable of
     * shape n / CV², so that the hard days of a year are known in closed form at each level, here summed over 2,001 of them.
     */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            scatter, levelSpread, everyDays, bedMeanDays, tolerance
            0.25,    0.377,       10,        10,          0.01
            0.25,    0.377,       10,        14,          0.01
            0.25,    0.377,       10,        18,          0.01
            0.42,    0.377,       10,        10,          0.01
            0.42,    0.377,       10,        18,          0.01
            0.42,    0.377,       4,         5,           0.01
            0.42,    0.18,        7,         9,           0.01
            0.25,    0.18,        14,        18,          0.01
            0.3,     0.6,         7,         12,          0.01
            0.6,     0.377,       21,        30,          0.01
            """)
    void clocksAreAsInClosedForm(double scatter, double levelSpread, int everyDays, double bedMeanDays, double tolerance) {
        LongRun home = LongRun.of(new UseModel(WeekdayMeans.everyDay(300), DayVariation.ofCv(scatter)).with(
                new UseChange(levelSpread, 0, 0)));
        double bedLitres = bedMeanDays * 300;
        double expected = 0;
        double ofWeights = 0;
        double spread = levelSpread * 0.20 / 0.18; // as sums of days see it
        double shape = 1 / (scatter * scatter);
        for (int i = -1000; i <= 1000; i++) {
            double z = i / 200.0;
            double weight = StrictMath.exp(-z * z / 2);
            double bed = bedMeanDays / StrictMath.exp(spread * z - spread * spread / 2);
            double hard = 0;
            for (int day = 1; day <= everyDays; day++) {
                hard += Gamma.regularizedGammaQ(day * shape, bed * shape);
            }
            expected += weight * hard * 365 / everyDays;
            ofWeights += weight;
        }
        expected /= ofWeights;
        assertEquals(expected, home.hardDaysPerYear(new ClockEveryDays(everyDays), HARDNESS, new Regeneration(
                bedLitres * HARDNESS / 1000, 1_800, 150, 60)), tolerance * expected, "source: a sum of gamma variables, by definition");
    }

    /** The mean of the levels is what is known of the home; a factor of exp(s z) is exp(s²/2) above it on the mean. */
    @Test
    void theMeanUseIsUnchanged() {
        double[] factors = Levels.OF_METERS.factors(0.18);
        double mean = 0;
        for (int level = 0; level < LEVELS; level++) {
            mean += Levels.OF_METERS.weight(level) * factors[level];
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

    /** Days that scatter little are seen at as many levels as others: 0.804, 0.343 and 0.522 in 40,000 years
     * drawn by another program. */
    @ParameterizedTest
    @CsvSource({"0.15, 8, 5, 0.804", "0.2, 7.2, 4, 0.343", "0.249, 7.2, 4, 0.522"})
    void clocksOfSteadyDaysFeelTheLevelToo(double cv, double bedDays, int clockDays, double hardDays) {
        LongRun home = LongRun.of(new UseModel(WeekdayMeans.ofWeek(300, 1.09), DayVariation.ofCv(cv)).with(new UseChange(0.18, 0, 0.12)));
        assertEquals(hardDays, home.hardDaysPerYear(new ClockEveryDays(clockDays), HARDNESS, new Regeneration(
                bedDays * 300 * HARDNESS / 1000, 1_800, 150, 60)), 0.03);
    }

    /**
     * Meters in homes of 300 L a day, however little their days scatter beside their level: mean, nineteen years of twenty and years
     * without as in 300,000 years drawn by another program, with levels and scatters that are continuous.
     */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            cv,   level, scatter, bed L, reserve L, regenerations, hard days, most in 19 of 20, none %
            0.06, 0.18,  0,       2100,  310,       56.330,        3.337,     21,               63.8
            0.053, 0.18, 0,       600,   290,       246.757,       19.016,    77,               45.3
            0.1,  0.377, 0,       2400,  300,       48.408,        7.167,     36,               50.6
            0.15, 0.377, 0,       2400,  400,       50.518,        3.113,     19,               69.9
            0.2,  0.18,  0,       2100,  400,       58.850,        1.237,     6,                61.7
            0.3,  0.6,   0,       3000,  700,       45.242,        1.837,     9,                83.8
            0.26, 0.25,  0.237,   2400,  500,       52.885,        0.864,     5,                74.1
            0.38, 0.377, 0.237,   2400,  560,       53.862,        2.167,     12,               63.0
            0.38, 0.377, 0.237,   2400,  700,       57.783,        1.011,     6,                78.0
            0.42, 0.18,  0.237,   2400,  600,       55.172,        0.875,     4,                63.1
            0.42, 0.377, 0.237,   2400,  700,       57.606,        1.258,     7,                73.2
            0.7,  0.377, 0.237,   3000,  900,       46.851,        1.615,     8,                60.7
            """)
    void metersAreAsDrawn(double cv, double level, double scatter, double bedLitres, double reserveLitres, double regenerations,
            double hardDays, int most, double nonePercent) {
        LongRun home = LongRun.of(new UseModel(WeekdayMeans.everyDay(300), DayVariation.ofCv(cv)).with(new UseChange(level, scatter, 0)));
        Policy meter = new MeteredDelayed(bedLitres, reserveLitres, 14);
        Regeneration bed = new Regeneration(bedLitres * HARDNESS / 1000, 1_800, 150, 60);
        HardDays years = home.hardDays(meter, HARDNESS, bed);
        String source = "source: a simulation by somebody who had not read this code";
        assertEquals(regenerations, home.year(meter, HARDNESS, bed).regenerations(), 2e-3 * regenerations, source);
        assertEquals(hardDays, years.perYear(), 0.02 * hardDays, source);
        assertEquals(most, years.percentile95(), 1 + 0.1 * most, source);
        assertEquals(nonePercent, 100 * years.yearsWithoutShare(), 1.5, source);
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
