// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.household.Meter.Kind;
import dev.brinebook.household.RowNote.Action;
import dev.brinebook.household.RowNote.Code;
import dev.brinebook.text.Message;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Readings to days; each arithmetic is beside its case. Clock changes: IANA, Berlin 29 March and 25 October 2026. */
class MeterHistoryTest {

    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");

    private static MeterHistory register(String... readings) {
        return register(OptionalDouble.empty(), readings);
    }

    private static MeterHistory register(OptionalDouble rolloverAt, String... readings) {
        return MeterHistory.of(parse(readings), new Meter(Kind.REGISTER, BERLIN, 1, rolloverAt, Optional.empty()));
    }

    private static MeterHistory volumes(Optional<Duration> interval, String... readings) {
        return MeterHistory.of(parse(readings), new Meter(Kind.VOLUME, BERLIN, 1, OptionalDouble.empty(), interval));
    }

    /** "2026-01-01 5" or "2026-01-01T10:00 5", "+01:00" after the time where there is an offset. */
    private static List<MeterReading> parse(String... readings) {
        List<MeterReading> rows = new ArrayList<>();
        for (String reading : readings) {
            String[] parts = reading.split(" ");
            String at = parts[0].length() == 10 ? parts[0] + "T00:00" : parts[0].substring(0, 16);
            Optional<ZoneOffset> offset = parts[0].length() > 16 ? Optional.of(ZoneOffset.of(parts[0].substring(16)))
                    : Optional.empty();
            rows.add(new MeterReading(rows.size() + 1, LocalDateTime.parse(at), offset, Double.parseDouble(parts[1])));
        }
        return rows;
    }

    private static List<Double> litres(MeterHistory history) {
        MeteredDays days = history.days().orElseThrow();
        List<Double> litres = new ArrayList<>();
        for (int i = 0; i < days.size(); i++) {
            litres.add(days.isKnown(i) ? Math.rint(1e6 * days.litres(i)) / 1e6 : null);
        }
        return litres;
    }

    private static List<String> notes(MeterHistory history) {
        return history.notes().stream().map(note -> note.row() + " " + note.code()).toList();
    }

    @Test
    void aRegisterIsDifferenced() {
        MeterHistory history = register("2026-01-01 100", "2026-01-02 300", "2026-01-03 600.5", "2026-01-04 600.5");
        assertEquals(List.of(200.0, 300.5, 0.0), litres(history));
        assertEquals(LocalDate.of(2026, 1, 1), history.days().orElseThrow().firstDate());
        assertEquals(List.of(), notes(history));
        assertEquals(3, history.spanDays());
    }

    /** Read at 06:00: a quarter of each interval lies in the later day, and days at the ends are not whole. */
    @Test
    void anIntervalOverMidnightIsSplitByTime() {
        MeterHistory history = register("2026-01-01T06:00 0", "2026-01-02T06:00 400", "2026-01-03T06:00 1200");
        assertEquals(List.of(400 * 0.25 + 800 * 0.75), litres(history));
    }

    @Test
    void aRegisterStartsAgain() {
        MeterHistory guessed = register("2026-01-01 99800", "2026-01-02 99950", "2026-01-03 130");
        assertEquals(List.of(150.0, 180.0), litres(guessed), "100,000 + 130 - 99,950");
        assertEquals(List.of("3 ROLLOVER"), notes(guessed));
        assertEquals(List.of(150.0, 180.0), litres(register(OptionalDouble.of(100_000), "2026-01-01 99800",
                "2026-01-02 99950", "2026-01-03 130")));
    }

    @Test
    void aRegisterThatFallsFromTheMiddleIsAnotherMeter() {
        MeterHistory history = register("2026-01-01 52000", "2026-01-02 52300", "2026-01-03 7", "2026-01-04 107");
        assertEquals(3, history.days().orElseThrow().size());
        assertEquals(java.util.Arrays.asList(300.0, null, 100.0), litres(history));
        assertEquals(List.of("3 METER_CHANGED"), notes(history));
        assertTrue(history.gaps().get(0).litres().isEmpty(), "what passed on that day is not known");
    }

    @Test
    void oneReadingOutOfLineIsLeftOut() {
        MeterHistory dip = register("2026-01-01 1000", "2026-01-02 120", "2026-01-03 1400");
        assertEquals(List.of("2 REGISTER_DIPS"), notes(dip));
        assertTrue(dip.days().isEmpty(), "48 hours are no day");
        MeterHistory leap = register("2026-01-01T00:00 1000", "2026-01-01T12:00 71200", "2026-01-02T00:00 1400");
        assertEquals(List.of("2 REGISTER_LEAPS"), notes(leap).subList(0, 1));
        assertEquals(List.of(400.0), litres(leap));
        MeterHistory later = register("2026-01-01T00:00 5000", "2026-01-01T08:00 5100", "2026-01-01T16:00 9200",
                "2026-01-02T00:00 5300", "2026-01-02T08:00 5500");
        assertEquals(List.of(300.0), litres(later));
        assertTrue(notes(later).contains("3 REGISTER_LEAPS"));
    }

    /** Twice out of line, and each time back: what passed is 1400 - 1000 and 1800 - 1400. */
    @Test
    void everyReadingOutOfLineIsLeftOut() {
        MeterHistory history = register("2026-01-01T00:00 1000", "2026-01-01T12:00 71200", "2026-01-02T00:00 1400",
                "2026-01-02T12:00 71300", "2026-01-03T00:00 1800");
        assertEquals(List.of(400.0, 400.0), litres(history));
        assertEquals(List.of("2 REGISTER_LEAPS", "4 REGISTER_LEAPS"), notes(history).stream()
                .filter(note -> note.contains("REGISTER")).toList());
    }

    /** Common practice: only a register that was nearly full has started again; 7 + 100,000 - 84,000 would pass for a day. */
    @Test
    void aRegisterThatWasNotNearlyFullHasNotStartedAgain() {
        assertEquals(List.of("2 METER_CHANGED"), notes(register("2026-01-01 84000", "2026-01-02 7")));
        assertEquals(List.of("2 METER_CHANGED"), notes(register("2026-01-01 1000", "2026-01-02 7")), "no more than four digits");
    }

    @Test
    void countsInTheUnitOfTheMeter() {
        Meter cubicMetres = new Meter(Kind.VOLUME, BERLIN, 1_000, OptionalDouble.empty(), Optional.empty());
        assertEquals(List.of(200.0, 350.0), litres(MeterHistory.of(parse("2026-01-01 0.2", "2026-01-02 0.35"), cubicMetres)));
    }

    @Test
    void moreThanAHouseholdCanDrawIsNotKnown() {
        MeterHistory history = register("2026-01-01 1000", "2026-01-02 1200", "2026-01-03 901200", "2026-01-04 901500");
        assertEquals(java.util.Arrays.asList(200.0, null, 300.0), litres(history));
        assertEquals(List.of("3 TOO_MUCH_DRAWN"), notes(history));
        assertEquals(List.of("2 TOO_MUCH_DRAWN"), notes(register("2026-01-01 1000", "2026-01-02 901200")), "the last one too");
        MeterHistory volume = volumes(Optional.empty(), "2026-01-01 200", "2026-01-02 46000", "2026-01-03 100");
        assertEquals(java.util.Arrays.asList(200.0, null, 100.0), litres(volume));
        assertEquals(List.of("2 VOLUME_TOO_LARGE"), notes(volume));
        MeterHistory day = volumes(Optional.empty(), "2026-01-01T00:00 29000", "2026-01-01T12:00 29000",
                "2026-01-02T00:00 1", "2026-01-02T12:00 1");
        assertEquals(List.of(2.0), litres(day));
        assertEquals(List.of("2 DAY_TOO_LARGE"), notes(day));
    }

    @Test
    void aValueThatTheRegisterCannotShowIsNone() {
        MeterHistory history = register(OptionalDouble.of(1000), "2026-01-01 100", "2026-01-02 1000", "2026-01-02 200");
        assertEquals(List.of("2 CONFLICT", "3 CONFLICT"), notes(history));
        MeterHistory above = register(OptionalDouble.of(1000), "2026-01-01 100", "2026-01-01T10:00 1000", "2026-01-02 200");
        assertEquals(List.of("2 ABOVE_ROLLOVER", "3 BRIDGED"), notes(above).stream().sorted().toList());
        assertEquals(List.of(100.0), litres(above));
    }

    @Test
    void rowsAreSortedMergedAndSetAgainstEachOther() {
        MeterHistory history = register("2026-01-01 0", "2026-01-03 50", "2026-01-02 20", "2026-01-03 50", "2026-01-04 90",
                "2026-01-04 91", "2026-01-05 100", "2026-01-06 130");
        assertEquals(List.of("3 OUT_OF_ORDER", "4 DUPLICATE", "5 CONFLICT", "6 CONFLICT"), notes(history));
        assertEquals(java.util.Arrays.asList(20.0, 30.0, null, null, 30.0), litres(history));
        assertEquals(50, history.gaps().get(0).litres().orElseThrow(), "100 - 50 on the 3rd and 4th together");
        assertEquals(LocalDate.of(2026, 1, 4), history.gaps().get(0).lastDate());
    }

    @Test
    void rowsFromTheNewestOnAreTurnedRound() {
        MeterHistory history = register("2026-01-03 300", "2026-01-02 100", "2026-01-01 0");
        assertEquals(List.of(100.0, 200.0), litres(history));
        assertEquals(List.of("1 NEWEST_FIRST"), notes(history));
    }

    /** The day has 23 hours, and 02:30 was never shown. */
    @Test
    void inSpringADayHas23Hours() {
        MeterHistory history = register("2026-03-28T12:00 0", "2026-03-29T02:30 5", "2026-03-29T12:00 230", "2026-03-30T12:00 470");
        assertEquals(List.of("2 NONEXISTENT_TIME"), notes(history));
        assertEquals(List.of(230.0 * 11 / 23 + 240 * 0.5), litres(history), "the first has 23 hours, 11 of them on the 29th");
        assertEquals(List.of(7.0, 8.0, 9.0), litres(volumes(Optional.empty(), "2026-03-28 7", "2026-03-29 8", "2026-03-30 9")));
    }

    @Test
    void inAutumnAnHourComesTwice() {
        MeterHistory hours = register("2026-10-25T00:00 0", "2026-10-25T01:00 10", "2026-10-25T02:00 20", "2026-10-25T02:00 30",
                "2026-10-25T03:00 40", "2026-10-26T00:00 250");
        assertEquals(List.of("3 AMBIGUOUS_TIME_EARLIER", "4 AMBIGUOUS_TIME_LATER", "6 BRIDGED"), notes(hours));
        assertEquals(List.of(250.0), litres(hours));
        MeterHistory offsets = register("2026-10-25T00:00+02:00 0", "2026-10-25T02:30+02:00 30", "2026-10-25T02:30+01:00 40",
                "2026-10-26T00:00+01:00 250");
        assertEquals(List.of(250.0), litres(offsets));
        assertFalse(notes(offsets).toString().contains("AMBIGUOUS"));
    }

    @Test
    void volumesEndWithTheirIntervalOrTheNextOne() {
        assertEquals(List.of(24.0 / 2 * 3), litres(volumes(Optional.of(Duration.ofMinutes(120)), every(120, 12, 3))));
        MeterHistory hole = volumes(Optional.empty(), "2026-01-01T00:00 1", "2026-01-01T08:00 1", "2026-01-02T00:00 4",
                "2026-01-02T08:00 5", "2026-01-02T16:00 6");
        assertEquals(List.of(15.0), litres(hole), "the first day has 16 of its hours");
        assertEquals(Duration.ofHours(8), hole.usualStep());
        MeterHistory one = volumes(Optional.empty(), "2026-01-01 77");
        assertEquals(List.of(77.0), litres(one));
    }

    private static String[] every(int minutes, int count, int value) {
        String[] rows = new String[count];
        for (int i = 0; i < count; i++) {
            rows[i] = LocalDateTime.of(2026, 1, 1, 0, 0).plusMinutes((long) minutes * i) + " " + value;
        }
        return rows;
    }

    /** Hours with a hole of 30: both days it touches are missing, and the register gives the total of both. */
    @Test
    void aGapIsCountedAndNeverFilled() {
        List<String> rows = new ArrayList<>();
        for (int hour = 0; hour <= 96; hour++) {
            if (hour < 34 || hour > 62) {
                rows.add(LocalDateTime.of(2026, 1, 1, 0, 0).plusHours(hour) + " " + 10 * hour);
            }
        }
        MeterHistory history = register(rows.toArray(String[]::new));
        assertEquals(java.util.Arrays.asList(240.0, null, null, 240.0), litres(history));
        assertEquals(480, history.gaps().get(0).litres().orElseThrow(), 1e-9);
        assertEquals(List.of(), notes(history));
    }

    @Test
    void aSpanOfMoreThanThreeYearsIsReported() {
        MeterHistory history = register("2020-01-01 0", "2020-01-02 1", "2026-01-01 5", "2026-01-02 6");
        assertTrue(history.days().isEmpty());
        assertEquals(2193, history.spanDays());
        assertEquals(0, register("2020-01-01 0").spanDays());
    }

    /** Ten nights: the least hour of each is 2 litres but on the third, which is dry; then seven in a row run on. */
    @Test
    void waterThatRunsAllNightIsALeak() {
        List<String> rows = new ArrayList<>();
        for (int hour = 0; hour < 240; hour++) {
            boolean dry = hour / 24 == 2;
            rows.add(LocalDateTime.of(2026, 1, 1, 0, 0).plusHours(hour) + " " + (hour % 24 == 3 ? dry ? 0 : 2 : 9));
        }
        NightFlow nights = volumes(Optional.empty(), rows.toArray(String[]::new)).nightFlow();
        NightFlow.Unceasing leak = nights.unceasing().orElseThrow();
        assertEquals(10, nights.nights());
        assertEquals(new NightFlow.Unceasing(LocalDate.of(2026, 1, 4), LocalDate.of(2026, 1, 10), 7, true, 2), leak);
        assertEquals(48, leak.litresPerDay());
        assertTrue(volumes(Optional.empty(), rows.subList(0, 200).toArray(String[]::new)).nightFlow().unceasing().isEmpty());
        assertEquals(0, register("2026-01-01 0", "2026-01-02 9").nightFlow().nights(), "daily readings say nothing of nights");
    }

    @Test
    void guardsItsArguments() {
        assertThrows(IllegalArgumentException.class, () -> register("1800-01-01 0"));
        assertThrows(IllegalArgumentException.class, () -> register("2026-01-01 -1"));
        assertThrows(IllegalArgumentException.class, () -> register(OptionalDouble.of(0), "2026-01-01 1"));
        assertThrows(IllegalArgumentException.class, () -> volumes(Optional.of(Duration.ZERO), "2026-01-01 1"));
        for (Code code : Code.values()) {
            assertTrue(Message.of(code).toString().matches("[A-Z].{8,}[^.]\\."), code.name());
            assertTrue(Message.of(code).inMetricUnits(true).toString().matches("[A-Z].{8,}[^.]\\."), code.name());
            assertEquals(code.action() == Action.USE_LOST, code == Code.METER_CHANGED || code == Code.TOO_MUCH_DRAWN);
        }
    }

    /** NIST SP 811: 45,000 L / 3.785411784 = 11,888 gal. */
    @Test
    void saysTheMostOfADayInTheUnitsOfTheReader() {
        double gallons = Demand.MAX_MEASURED_DAY_LITRES / 3.785411784;
        assertTrue(Message.of(Code.DAY_TOO_LARGE).toString().contains(String.format(Locale.ROOT, "%,.0f\u00a0gal", gallons)));
        assertTrue(Message.of(Code.DAY_TOO_LARGE).inMetricUnits(true).toString().contains(String.format(Locale.ROOT, "%,.0f\u00a0L",
                Demand.MAX_MEASURED_DAY_LITRES)));
    }
}
