// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Days;
import dev.brinebook.household.HourlyProfile;
import dev.brinebook.household.UseModel;
import dev.brinebook.household.WeekdayMeans;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One setting of a policy changed, the others as they were; and what is counted of its days. */
class PolicySettingsTest {

    private static final LocalDate FIRST = LocalDate.of(2025, 1, 1);
    private static final Set<DayOfWeek> MONDAYS = Set.of(DayOfWeek.MONDAY);

    @Test
    void changesTheOverrideAlone() {
        assertEquals(new ClockEveryDays(9, 5), new ClockEveryDays(9).withOverride(5));
        assertEquals(new ClockOnWeekdays(MONDAYS, 5), new ClockOnWeekdays(MONDAYS).withOverride(5));
        assertEquals(new MeteredDelayed(7_000, 1_200, 5), new MeteredDelayed(7_000, 1_200, 14).withOverride(5));
        assertEquals(new MeteredByHistory(7_000, MeteredByHistory.Of.MEAN, 900, 5),
                new MeteredByHistory(7_000, MeteredByHistory.Of.MEAN, 900, 14).withOverride(5));
        assertEquals(new MeteredImmediate(7_000, 5), new MeteredImmediate(7_000, 14).withOverride(5));
        assertEquals(new TwinAlternating(7_000, 5), new TwinAlternating(7_000, 14).withOverride(5));
    }

    @Test
    void changesTheMeterAloneWhereThereIsOne() {
        assertEquals(new ClockEveryDays(9, 5), new ClockEveryDays(9, 5).withMeter(3_000));
        assertEquals(new ClockOnWeekdays(MONDAYS, 5), new ClockOnWeekdays(MONDAYS, 5).withMeter(3_000));
        assertEquals(new MeteredDelayed(3_000, 1_200, 14), new MeteredDelayed(7_000, 1_200, 14).withMeter(3_000));
        assertEquals(new MeteredByHistory(3_000, MeteredByHistory.Of.MEAN, 900, 14),
                new MeteredByHistory(7_000, MeteredByHistory.Of.MEAN, 900, 14).withMeter(3_000));
        assertEquals(new MeteredImmediate(3_000, 14), new MeteredImmediate(7_000, 14).withMeter(3_000));
        assertEquals(new TwinAlternating(3_000, 14), new TwinAlternating(7_000, 14).withMeter(3_000));
        assertEquals(3_000, Policy.nearestMeterLitres(3_000));
        assertEquals(Policy.MIN_METER_LITRES, Policy.nearestMeterLitres(0.2));
        assertEquals(Policy.MAX_METER_LITRES, Policy.nearestMeterLitres(2e7));
    }

    @Test
    void keepsBackAsMuchMoreAsIsUsed() {
        assertEquals(new MeteredDelayed(7_000, 2_400, 14), new MeteredDelayed(7_000, 1_200, 14).scaledTo(2));
        assertEquals(new MeteredByHistory(7_000, MeteredByHistory.Of.MEAN, 450, 14),
                new MeteredByHistory(7_000, MeteredByHistory.Of.MEAN, 900, 14).scaledTo(0.5));
        assertEquals(new MeteredImmediate(7_000, 14), new MeteredImmediate(7_000, 14).scaledTo(2));
    }

    @Test
    void changesTheReserveAloneWhereAVolumeIsKept() {
        assertEquals(new MeteredDelayed(7_000, 300, 14), new MeteredDelayed(7_000, 1_200, 14).withReserve(300));
        for (Policy other : List.of(new ClockEveryDays(9, 5), new MeteredByHistory(7_000, MeteredByHistory.Of.MEAN, 900, 14),
                new MeteredImmediate(7_000, 14), new TwinAlternating(7_000, 14))) {
            assertEquals(other, other.withReserve(300));
            assertEquals(OptionalDouble.empty(), other.fixedReserveLitres(), other::toString);
        }
        assertEquals(OptionalDouble.of(1_200), new MeteredDelayed(7_000, 1_200, 14).fixedReserveLitres());
    }

    /** By the calendar: from a Thursday it is four nights to the next Monday, three from that to the next Thursday. */
    @ParameterizedTest
    @CsvSource({
        "MONDAY, MONDAY, 7", "MONDAY, THURSDAY, 4", "MONDAY THURSDAY, THURSDAY, 4", "MONDAY THURSDAY, MONDAY, 3",
        "MONDAY THURSDAY, SUNDAY, 1", "MONDAY TUESDAY, TUESDAY, 6"})
    void countsTheNightsToTheNextDateOfAClock(String weekdays, DayOfWeek from, int nights) {
        Policy clock = new ClockOnWeekdays(Arrays.stream(weekdays.split(" ")).map(DayOfWeek::valueOf).collect(Collectors.toSet()));
        assertEquals(nights, clock.clockNightsAfter(from));
        assertEquals(7.0 / clock.weekdays().size(), clock.meanClockNights());
        assertEquals(9, new ClockEveryDays(9).clockNightsAfter(from));
        assertEquals(9, new ClockEveryDays(9).meanClockNights());
    }

    /** The meter less what is kept back. */
    @Test
    void callsWhereTheReserveBegins() {
        assertEquals(7_000, new MeteredImmediate(7_000, 14).callLitres());
        assertEquals(7_000, new TwinAlternating(7_000, 14).callLitres());
        assertEquals(5_800, new MeteredDelayed(7_000, 1_200, 14).callLitres());
        assertEquals(6_100, new MeteredByHistory(7_000, MeteredByHistory.Of.MEAN, 900, 14).callLitres());
    }

    @Test
    void startsByClockOrByMeter() {
        for (Policy clock : List.of(new ClockEveryDays(9), new ClockOnWeekdays(MONDAYS))) {
            assertEquals(true, clock.byClock());
            assertEquals(Reason.CLOCK, clock.reason());
        }
        for (Policy meter : List.of(new MeteredDelayed(7_000, 1_200, 14), new MeteredImmediate(7_000, 14),
                new MeteredByHistory(7_000, MeteredByHistory.Of.MEAN, 900, 14), new TwinAlternating(7_000, 14))) {
            assertEquals(false, meter.byClock());
            assertEquals(Reason.METER, meter.reason());
        }
        SimulationResult weekly = Simulation.simulate(new SimulationInput(Days.constant(FIRST, 14, 100), 300,
                new Regeneration(900, 1, 1, 60)),
                new ClockEveryDays(7));
        assertEquals(List.of(Reason.CLOCK, Reason.CLOCK), weekly.events().stream().map(RegenerationEvent::reason).toList());
    }

    /** By hand: a clock of weeks waits 7 days of one weekday and 3.5 of two; a meter 7,000 L of 1,000, less what it keeps. */
    @Test
    void waitsAsLongAsTheRuleSays() {
        assertEquals(9, waits(new ClockEveryDays(9), 0.4), 1e-6);
        assertEquals(5, waits(new ClockEveryDays(9, 5), 0.4), 1e-6);
        assertEquals(7, waits(new ClockOnWeekdays(MONDAYS), 0.4), 1e-6);
        assertEquals(3.5, waits(new ClockOnWeekdays(Set.of(DayOfWeek.MONDAY, DayOfWeek.FRIDAY)), 0.4), 1e-6);
        assertEquals(6, waits(new MeteredDelayed(7_000, 1_000, 14), 0), 1e-6);
        assertEquals(5, waits(new MeteredByHistory(7_000, MeteredByHistory.Of.MEAN, 2_000, 14), 0), 1.2);
        assertEquals(7, waits(new TwinAlternating(7_000, 30), 0.4), 1e-6);
    }

    private static double waits(Policy policy, double cv) {
        return LongRun.of(new UseModel(WeekdayMeans.everyDay(1_000), DayVariation.ofCv(cv)))
                .year(policy, 300, new Regeneration(2_100, 1, 1, 60)).intervalDays().value();
    }

    /** Two years of days count half, each of the totals. */
    @Test
    void scalesEveryTotalToAYear() {
        assertEquals(new YearlyTotals(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11),
                YearlyTotals.of(new Totals(2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22), 730));
    }

    /** By hand: 100 g taken up, 40 driven off, 30 there before and 5 left: 35 g came from nowhere. */
    @Test
    void reportsTheErrorOfTheCharge() {
        SimulationInput trial = new SimulationInput(Days.constant(FIRST, 5, 100), 300, new Regeneration(60, 1, 1, 60), 0.5);
        SimulationResult wrong = new SimulationResult(trial, new ClockEveryDays(7), List.of(), new Totals(1, 0, 0, 0, 0, 0, 0, 0, 100, 40,
                0),
                OptionalInt.empty(), new FinalState(5, 0, 0));
        assertEquals(100 - (40 + 30 - 5), wrong.chargeImbalanceGrams(), 1e-12);
    }

    /** It starts at 23:00 and takes 144 minutes: an hour of the first evening and 84 minutes of the next morning pass hard. */
    @Test
    void aRegenerationRunsThroughMidnight() {
        double untilElevenLitres = 1_000 * HourlyProfile.shareUntil(23 / 24.0);
        SimulationResult outcome = Simulation.simulate(new SimulationInput(Days.series(FIRST, 1_000, 500), 1_000,
                new Regeneration(untilElevenLitres, 2_000, 150, 144)), new MeteredImmediate(untilElevenLitres, 0));
        assertEquals(1_000 - untilElevenLitres + 500 * HourlyProfile.shareUntil(1.4 / 24), outcome.totals().bypassedLitres(),
                1e-9);
    }

    @Test
    void remembersTheFirstHardDay() {
        SimulationResult outcome = Simulation.simulate(new SimulationInput(Days.constant(FIRST, 5, 100), 1_000,
                new Regeneration(150, 1, 1, 60)),
                new ClockEveryDays(30));
        assertEquals(FIRST.plusDays(1), outcome.firstHardDate().orElseThrow());
        assertEquals(4, outcome.totals().hardDays());
        assertThrows(IllegalArgumentException.class, () -> outcome.nextRegeneration(-1));
    }
}
