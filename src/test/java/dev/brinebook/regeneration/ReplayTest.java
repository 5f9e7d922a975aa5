// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.household.MeteredDays;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Replays of days that all use alike, whose regenerations and hard days can be counted by hand. */
class ReplayTest {

    private static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);
    private static final Regeneration BED = new Regeneration(300, 2_000, 100, 60);
    private static final Set<DayOfWeek> MONDAY_AND_THURSDAY = EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.THURSDAY);

    /** One letter for each day from a Monday on: u uses 100 L, 0 nothing, - is missing. The water has 1,000 mg/L: the bed is 300 L. */
    private static MeteredDays days(String letters) {
        return MeteredDays.of(MONDAY, letters.chars().mapToObj(letter -> switch (letter) {
            case 'u' -> OptionalDouble.of(100);
            case '0' -> OptionalDouble.of(0);
            default -> OptionalDouble.empty();
        }).toList());
    }

    static Stream<Arguments> counted() {
        String threeWeeks = "u".repeat(21);
        return Stream.of(
                Arguments.of("a clock of three days empties the bed and no more", new ClockEveryDays(3), threeWeeks, 7, 0),
                Arguments.of("a clock of four days is a day late in each of its 12 / 4 cycles", new ClockEveryDays(4), "u".repeat(12),
                        3, 3),
                Arguments.of("what the days before a clock's first night drew counts: of four starts those with 3 and 2 days are late"
                        + " within the first two", new ClockEveryDays(4), "uu", 2 / 4.0, 2 / 4.0),
                Arguments.of("an override shorter than the clock ends its cycles", new ClockEveryDays(9, 3), threeWeeks, 7, 0),
                Arguments.of("Monday's cycle has 3 days, Thursday's 4: one hard day a week", new ClockOnWeekdays(MONDAY_AND_THURSDAY),
                        threeWeeks, 6, 3),
                Arguments.of("its date falls into a gap: it has regenerated when that is over, and before the day that follows",
                        new ClockOnWeekdays(EnumSet.of(DayOfWeek.MONDAY)), "uuu--------uuu", 2, 0),
                Arguments.of("a meter that calls after two days", new MeteredDelayed(300, 100, 0), "u".repeat(20), 10, 0),
                Arguments.of("a meter that counts a day too much is hard on each fourth, and on 9 of 12 starts once more before its"
                        + " first", new MeteredDelayed(400, 0, 0), "u".repeat(24), 6, 6.75),
                Arguments.of("a reserve of all that it counts regenerates every night", new MeteredDelayed(300, 300, 0), threeWeeks,
                        21, 0),
                Arguments.of("nothing used, an override of 14 nights", new MeteredDelayed(300, 100, 14), "0".repeat(28), 2, 0),
                Arguments.of("nothing used, no override", new MeteredDelayed(300, 100, 0), "0".repeat(28), 0, 0),
                Arguments.of("an override that comes before the count of 100 days", new MeteredDelayed(10_000, 0, 3), threeWeeks, 7,
                        0),
                Arguments.of("a meter that starts at once is never hard", new TwinAlternating(300, 0), "u".repeat(30), 10, 0));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("counted")
    void isWhatCanBeCountedByHand(String why, Policy policy, String letters, double regenerations, double hardDays) {
        MeteredDays days = days(letters);
        YearlyTotals totals = Replay.yearly(days, 1_000, BED, policy).in(days.known().length);
        assertEquals(regenerations, totals.regenerations(), 1e-9, "regenerations");
        assertEquals(hardDays, totals.hardDays(), 1e-9, "hard days");
        assertEquals(2_000 * regenerations, totals.saltGrams(), 1e-6);
        assertEquals(100 * regenerations, totals.waterLitres(), 1e-6);
    }

    /** Missing days are left out, as if the days after them followed. */
    @Test
    void goesOnAfterAGapFromWhereItWas() {
        for (Policy policy : new Policy[] {new ClockEveryDays(4), new MeteredDelayed(400, 50, 5), new MeteredImmediate(350, 0)}) {
            assertEquals(Replay.yearly(days("uu0uuuu0uuuuu"), 1_000, BED, policy),
                    Replay.yearly(days("uu0u--uuu0---uu-uuu"), 1_000, BED, policy), policy.toString());
        }
    }

    /** Softer water never has more hard days; water without hardness has none. */
    @Test
    void waterWithoutHardnessIsNeverHard() {
        Policy late = new ClockEveryDays(9);
        assertEquals(0, Replay.yearly(days("u".repeat(40)), 0, BED, late).hardDays());
        assertEquals(365 * 6 / 9.0, Replay.yearly(days("u".repeat(36)), 1_000, BED, late).hardDays(), 1e-9, "6 of 9 days");
    }
}
