// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.household.DayVariation;
import dev.brinebook.household.UseChange;
import dev.brinebook.household.UseModel;
import dev.brinebook.household.WeekdayMeans;
import dev.brinebook.regeneration.UsualHardDays.Verdict;
import java.util.Arrays;
import org.hipparchus.special.Gamma;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UsualHardDaysTest {

    private static final int LEVELS = 7;

    /** Without levels these are Poisson counts. Source: any table of the Poisson distribution, here from memory. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            mean, most, from, to
            0,    100,  0,    0
            0.05, 100,  0,    0
            0.06, 100,  0,    1
            1,    365,  0,    3
            2,    365,  0,    5
            4,    365,  1,    8
            10,   365,  5,    15
            10,   12,   5,    12
            5000, 365,  365,  365
            """)
    void areThePointsOfPoissonCounts(double mean, int most, int from, int to) {
        double[] means = new double[LEVELS];
        Arrays.fill(means, mean);
        assertEquals(new UsualHardDays(from, to), UsualHardDays.ofCounts(Levels.OF_METERS, means, most));
    }

    /** Chances of a mixture, by the gamma function of a library. */
    @Test
    void aWanderingLevelWidensTheRange() {
        double[] means = {1, 3, 0.3, 8, 0.1, 20, 0.01};
        UsualHardDays usual = UsualHardDays.ofCounts(Levels.OF_METERS, means, 365);
        assertTrue(atMost(means, usual.to()) >= 0.95 && atMost(means, usual.to() - 1) < 0.95, usual.toString());
        assertTrue(usual.from() == 0 && atMost(means, 0) >= 0.05, usual.toString());
    }

    private static double atMost(double[] means, int count) {
        double sum = 0;
        for (int level = 0; level < LEVELS; level++) {
            sum += Levels.OF_METERS.weight(level) * Gamma.regularizedGammaQ(count + 1.0, means[level]);
        }
        return sum;
    }

    /** Few days and a home that stays as it is: the range of the long run's own mean. */
    @Test
    void isOfTheDaysAskedFor() {
        UseModel model = new UseModel(WeekdayMeans.everyDay(300), DayVariation.ofCv(0.4));
        Policy clock = new ClockEveryDays(4);
        Regeneration bed = new Regeneration(330, 1, 1, 60);
        double[] means = new double[LEVELS];
        Arrays.fill(means, LongRun.of(model).hardDaysPerYear(clock, 300, bed) * 73 / 365);
        assertEquals(UsualHardDays.ofCounts(Levels.OF_METERS, means, 73), UsualHardDays.of(model, clock, 300, bed, 73));
        UsualHardDays wider = UsualHardDays.of(model.with(new UseChange(0.3, 0, 0)), clock, 300, bed, 73);
        assertTrue(wider.to() > UsualHardDays.of(model, clock, 300, bed, 73).to(), wider.toString());
    }

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            from, to, hardDays, verdict
            0,    4,  0,        AS_PREDICTED
            0,    4,  4.4,      AS_PREDICTED
            0,    4,  4.5,      MORE_THAN_PREDICTED
            0,    0,  0.4,      AS_PREDICTED
            2,    8,  1.5,      AS_PREDICTED
            2,    8,  1.4,      FEWER_THAN_PREDICTED
            """)
    void onlyAWholeCountOutsideIsAVerdict(int from, int to, double hardDays, Verdict verdict) {
        assertEquals(verdict, new UsualHardDays(from, to).verdict(hardDays));
    }
}
