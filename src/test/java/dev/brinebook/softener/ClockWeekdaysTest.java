// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.household.WeekdayMeans;
import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A fresh bed meets the days of highest use. Source of the rows: common practice, by hand. */
class ClockWeekdaysTest {

    private static final WeekdayMeans CABIN = new WeekdayMeans(0, 0, 0, 0, 110, 190, 150);
    private static final WeekdayMeans FAMILY = new WeekdayMeans(500, 500, 500, 500, 500, 900, 900);
    private static final WeekdayMeans EVEN = new WeekdayMeans(500, 510, 500, 490, 500, 505, 500);

    @ParameterizedTest(name = "{0}, every {1} days: {2}")
    @CsvSource({
        "cabin, 7, FRIDAY",
        "cabin, 14, FRIDAY",
        "family, 7, SATURDAY",
        "family, 4, TUESDAY SATURDAY",
        "family, 1, MONDAY TUESDAY WEDNESDAY THURSDAY FRIDAY SATURDAY SUNDAY"})
    void meetsThePeak(String home, int days, String expected) {
        List<DayOfWeek> set = ClockWeekdays.forEvery(days, home.equals("cabin") ? CABIN : FAMILY);
        assertEquals(EnumSet.copyOf(List.of(expected.split(" ")).stream().map(DayOfWeek::valueOf).toList()),
                EnumSet.copyOf(set), set.stream().map(Enum::name).collect(Collectors.joining(" ")).toLowerCase(Locale.ROOT));
    }

    /** Within a week and between weeks. */
    @Test
    void leavesNoLongerGapThanAsked() {
        for (int days = 1; days <= 7; days++) {
            for (WeekdayMeans means : List.of(CABIN, FAMILY, EVEN)) {
                List<DayOfWeek> set = ClockWeekdays.forEvery(days, means);
                for (DayOfWeek day : set) {
                    int longest = days;
                    assertTrue(IntStream.rangeClosed(1, longest).anyMatch(after -> set.contains(day.plus(after))),
                            days + ": " + set);
                }
            }
        }
    }

    @Test
    void knowsAnEvenWeek() {
        assertTrue(ClockWeekdays.isEven(EVEN));
        assertTrue(!ClockWeekdays.isEven(FAMILY) && !ClockWeekdays.isEven(CABIN));
    }
}
