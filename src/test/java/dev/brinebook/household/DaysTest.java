// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.DayOfWeek;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class DaysTest {

    /** 1 January 2025 was a Wednesday. */
    private static final LocalDate WEDNESDAY = LocalDate.of(2025, 1, 1);

    @Test
    void keepsItsOwnCopy() {
        double[] uses = {1, 2, 6};
        Days days = Days.series(WEDNESDAY, uses);
        uses[0] = 100;
        assertEquals(9, days.sumLitres());
        assertEquals(3, days.meanLitres());
        assertEquals(6, days.maxLitres());
        assertEquals(1, days.useLitres(0));
        assertEquals(WEDNESDAY, days.firstDate());
        assertEquals(LocalDate.of(2025, 1, 3), days.dateOf(2));
        assertEquals("3 days from 2025-01-01, 9.0 L", days.toString());
    }

    @Test
    void equalsByValue() {
        Days days = Days.series(WEDNESDAY, 5, 5);
        assertEquals(days, Days.constant(WEDNESDAY, 2, 5));
        assertEquals(days.hashCode(), Days.constant(WEDNESDAY, 2, 5).hashCode());
        assertNotEquals(days, Days.constant(WEDNESDAY, 3, 5));
        assertNotEquals(days, Days.constant(WEDNESDAY.plusDays(1), 2, 5));
        assertNotEquals(days, null);
        assertNotEquals(days.hashCode(), Days.series(WEDNESDAY, 5, 6).hashCode(), "or columns kept by days would be slow");
    }

    @Test
    void aWeekStartsWhereTheDateFalls() {
        WeekdayMeans means = new WeekdayMeans(1, 2, 3, 4, 5, 6, 7);
        Days days = Days.weekly(WEDNESDAY, 9, means);
        assertEquals(Days.series(WEDNESDAY, 3, 4, 5, 6, 7, 1, 2, 3, 4), days);
        assertEquals(1, means.litres(DayOfWeek.MONDAY));
        assertEquals(7, means.litres(DayOfWeek.SUNDAY));
        assertEquals(4, means.meanLitres());
        assertEquals(7, means.busiestLitres());
        assertEquals(new WeekdayMeans(2, 4, 6, 8, 10, 12, 14), means.times(2));
    }

    @Test
    void aWeekendKeepsTheWeeksMean() {
        WeekdayMeans means = WeekdayMeans.ofWeek(300, WeekdayMeans.DEFAULT_WEEKEND_RATIO);
        assertEquals(300, means.meanLitres(), 1e-10);
        assertEquals(1.09, means.litres(DayOfWeek.SATURDAY) / means.litres(DayOfWeek.FRIDAY), 1e-12);
    }

    @Test
    void refusesValuesOutOfRange() {
        assertThrows(IllegalArgumentException.class, () -> Days.series(WEDNESDAY));
        assertThrows(IllegalArgumentException.class, () -> Days.series(WEDNESDAY, new double[Days.MAX_DAYS + 1]));
        assertThrows(IllegalArgumentException.class, () -> Days.series(WEDNESDAY, 1, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Days.series(WEDNESDAY, -1));
        assertThrows(IllegalArgumentException.class, () -> Days.constant(WEDNESDAY, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> Days.constant(WEDNESDAY, -1, 1));
        assertThrows(IllegalArgumentException.class, () -> Days.constant(LocalDate.MAX, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> WeekdayMeans.everyDay(-1));
        assertThrows(IllegalArgumentException.class, () -> WeekdayMeans.weekdayFactor(0));
        assertThrows(IllegalArgumentException.class, () -> WeekdayMeans.ofWeek(20_001, 1));
    }
}
