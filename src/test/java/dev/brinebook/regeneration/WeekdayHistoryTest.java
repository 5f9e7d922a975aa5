// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.household.Days;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** By hand on days that are counted up: day i uses i litres, and the first is a Monday. */
class WeekdayHistoryTest {

    private static final LocalDate MONDAY = LocalDate.of(2025, 1, 6);

    private static WeekdayHistory after(int days) {
        return WeekdayHistory.of(Days.series(MONDAY, IntStream.range(0, days).mapToDouble(i -> i).toArray()));
    }

    /** The last four Wednesdays of five weeks are the days 9, 16, 23 and 30. */
    @Test
    void looksBackFourTimesOnTheSameWeekday() {
        for (DayOfWeek day : DayOfWeek.values()) {
            int last = 28 + day.ordinal();
            assertEquals(last, after(35).largestLitres(day));
            assertEquals((4 * last - 7 * (1 + 2 + 3)) / 4.0, after(35).meanLitres(day));
        }
    }

    @Test
    void knowsAWeekdayOnceItWasSeenFourTimes() {
        assertFalse(after(21).knows(DayOfWeek.MONDAY));
        assertTrue(after(22).knows(DayOfWeek.MONDAY));
        assertFalse(after(22).knows(DayOfWeek.TUESDAY));
        assertTrue(after(1_000).knows(DayOfWeek.SUNDAY));
    }

    /** A controller that saw each day as it came knows as much as one that is given the last four weeks. */
    @Test
    void needsNothingOlderThanFourWeeks() {
        for (int seed = 1; seed <= 50; seed++) {
            double[] litres = new Random(seed).doubles(28 + seed, 0, 900).toArray();
            Days days = Days.series(MONDAY, litres);
            WeekdayHistory seen = new WeekdayHistory();
            for (int i = 0; i < litres.length; i++) {
                seen.add(days.dateOf(i).getDayOfWeek(), litres[i]);
            }
            for (DayOfWeek day : DayOfWeek.values()) {
                assertEquals(seen.largestLitres(day), WeekdayHistory.of(days).largestLitres(day), "seed " + seed);
                assertEquals(seen.meanLitres(day), WeekdayHistory.of(days).meanLitres(day), 1e-9, "seed " + seed);
            }
        }
    }
}
