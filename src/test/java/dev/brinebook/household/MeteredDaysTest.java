// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Days with gaps; the arithmetic is beside each. */
class MeteredDaysTest {

    private static final LocalDate THURSDAY = LocalDate.of(2026, 1, 1);

    static MeteredDays days(LocalDate first, double... litres) {
        return MeteredDays.of(first, Arrays.stream(litres)
                .mapToObj(day -> Double.isNaN(day) ? OptionalDouble.empty() : OptionalDouble.of(day)).toList());
    }

    @Test
    void aMissingDayIsNoDayWithoutUse() {
        MeteredDays days = days(THURSDAY, 100, Double.NaN, 300);
        assertEquals(200, days.meanLitres());
        assertEquals(250, days.plus(50).meanLitres());
        assertFalse(days.plus(50).isKnown(1));
        assertFalse(days.isKnown(1));
        assertEquals(List.of(THURSDAY.plusDays(1)), days.missing());
        assertArrayEquals(new int[] {0, 2}, days.known());
        assertThrows(IllegalArgumentException.class, () -> days.litres(1));
    }

    @Test
    void aMissingDayIsFilledByTheMeanOfItsWeekday() {
        MeteredDays days = days(THURSDAY, 100, 10, 10, 10, 10, 10, 10, Double.NaN, 20, 10, 10, 10, 10, 10, 300);
        Days filled = days.filled();
        assertEquals((100 + 300) / 2.0, filled.useLitres(7));
        assertEquals(20, filled.useLitres(8));
        assertEquals((10 + 20) / 2.0, days.weekdayMeans().litres(DayOfWeek.FRIDAY));
        assertEquals(15, filled.size());
    }

    @Test
    void aWeekdayNeverSeenTakesTheMeanOfAll() {
        assertEquals(250, days(THURSDAY, 100, 200, 300, 400).weekdayMeans().litres(DayOfWeek.TUESDAY));
        assertEquals(200, days(THURSDAY, 100, Double.NaN, 300).filled().useLitres(1));
    }

    @Test
    void goesOnFromADayThatIsKnown() {
        MeteredDays days = days(THURSDAY, 100, Double.NaN, 300, 400);
        assertEquals(350, days.since(2).meanLitres());
        assertEquals(THURSDAY.plusDays(2), days.since(2).firstDate());
        assertThrows(IllegalArgumentException.class, () -> days.since(1));
    }

    @Test
    void refusesASeriesOfNothing() {
        assertThrows(IllegalArgumentException.class, () -> days(THURSDAY, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> days(THURSDAY));
        assertThrows(IllegalArgumentException.class, () -> days(THURSDAY, -1));
    }
}
