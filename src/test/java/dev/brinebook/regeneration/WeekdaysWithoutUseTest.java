// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.household.DayVariation;
import dev.brinebook.household.UseModel;
import dev.brinebook.household.WeekdayMeans;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Homes that are used on some weekdays alone, such as a cabin at weekends: a day without use is never hard. */
class WeekdaysWithoutUseTest {

    private static final double HARDNESS = 100;

    /** Source: by definition, of a bed that is exhausted for a share of the count there are hard days for that share of the days of use. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            scatter, countLitres, bedShare, hardDays, tolerance
            0.45,    13200,       0.001,    104.2,    0.2
            0.45,    13200,       0.25,     78.3,     0.5
            0.45,    13200,       0.75,     26.3,     0.5
            0.2,     13200,       0.5,      52.3,     0.5
            0.45,    900,         0.5,      55,       3
            """)
    void onlyDaysOfUseAreHard(double scatter, double countLitres, double bedShare, double hardDays, double tolerance) {
        LongRun home = LongRun.of(new UseModel(new WeekdayMeans(70, 0, 0, 0, 0, 0, 50), DayVariation.ofCv(scatter)));
        Regeneration bed = new Regeneration(bedShare * countLitres * HARDNESS / 1000, 1_000, 100, 60);
        MeteredDelayed meter = new MeteredDelayed(countLitres, 0, Policy.NO_OVERRIDE);
        assertEquals(hardDays, home.hardDaysPerYear(meter, HARDNESS, bed), tolerance);
        assertEquals(hardDays, home.year(meter, HARDNESS, bed).hardDays(), tolerance);
    }

    /** From Friday to Sunday three fillings a day; the override of three nights ends the wait that is left of each Sunday. */
    @Test
    void anOverrideActsWhereTheDaysAfterUseHaveNone() {
        LongRun home = LongRun.of(new UseModel(new WeekdayMeans(0, 0, 0, 0, 600, 600, 600), DayVariation.ofCv(0.25)));
        Regeneration bed = new Regeneration(200 * HARDNESS / 1000, 1_000, 100, 60);
        YearlyTotals year = home.year(new TwinAlternating(200, 3), HARDNESS, bed);
        assertEquals(365 / 7.0, year.overrides(), 1, "source: one a week, by hand; of 40 drawn years");
    }
}
