// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.household.Days;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class PolicyTest {

    private static final double GRAMS_PER_GRAIN = 0.06479891;
    private static final double GRAMS_PER_POUND = 453.59237;
    private static final double LITRES_PER_GALLON = 3.785411784;
    /** A litre loads a gram. */
    private static final double HARDNESS = 1000;
    /** 1 January 2025 was a Wednesday. */
    private static final LocalDate FIRST = LocalDate.of(2025, 1, 1);

    @ParameterizedTest
    @CsvFileSource(resources = "/regeneration/worked-policies.csv", useHeadersInDisplayName = true)
    void agreesWithHandArithmetic(String policy, int days, double useLitres, double capacityGrams, Double meterLitres,
                                  double setting, int override, int regenerations, Double intervalDays, int hardDays,
                                  double unusedGrams, String source, String why) {
        Policy tried = switch (policy) {
            case "clock" -> new ClockEveryDays((int) setting, override);
            case "delayed" -> new MeteredDelayed(meterLitres, setting, override);
            case "immediate" -> new MeteredImmediate(meterLitres, override);
            default -> throw new IllegalArgumentException(policy);
        };
        SimulationResult outcome = Simulation.simulate(new SimulationInput(Days.constant(FIRST, days, useLitres), HARDNESS,
                new Regeneration(capacityGrams, 2000, 150, 20)), tried);
        assertEquals(regenerations, outcome.totals().regenerations());
        assertEquals(regenerations, outcome.events().size());
        assertEquals(hardDays, outcome.totals().hardDays());
        assertEquals(unusedGrams, outcome.totals().unusedGrams(), 1e-6);
        assertEquals(2000.0 * regenerations, outcome.totals().saltGrams());
        if (intervalDays == null) {
            assertEquals(NoResultReason.NEVER_REGENERATES, outcome.meanIntervalDays().reason());
        } else {
            assertEquals(intervalDays, outcome.meanIntervalDays().value(), 1e-12);
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/regeneration/worked-salt-per-year.csv", useHeadersInDisplayName = true)
    void usesTheSaltOfTheWorkedCases(String policy, double capacityGrains, double saltPounds, double waterGallons,
                                     double loadGrainsPerDay, double setting, String regenerations,
                                     String poundsPerYear, String gallonsPerYear, String source, String why) {
        double hardness = 20 * 1000 * GRAMS_PER_GRAIN / LITRES_PER_GALLON;
        double litresPerGrain = LITRES_PER_GALLON / 20;
        Regeneration regeneration = new Regeneration(capacityGrains * GRAMS_PER_GRAIN, saltPounds * GRAMS_PER_POUND,
                waterGallons * LITRES_PER_GALLON, 90);
        Policy tried = policy.equals("clock") ? new ClockEveryDays((int) setting)
                : new MeteredDelayed(regeneration.meterVolumeLitres(hardness), setting * litresPerGrain, 0);
        YearlyTotals year = Simulation.simulate(new SimulationInput(
                Days.constant(FIRST, 1096, loadGrainsPerDay * litresPerGrain), hardness, regeneration), tried).yearly();
        Printed.assertAgrees(regenerations, null, year.regenerations());
        Printed.assertAgrees(poundsPerYear, null, year.saltGrams() / GRAMS_PER_POUND);
        Printed.assertAgrees(gallonsPerYear, null, year.waterLitres() / LITRES_PER_GALLON);
        assertEquals(0, year.hardDays());
    }

    @Test
    void theTablesAreWhole() {
        assertEquals(17, Rows.in("/regeneration/worked-policies.csv"));
        assertEquals(6, Rows.in("/regeneration/worked-salt-per-year.csv"));
    }

    /** A clock tuned with hindsight beats a meter that holds a full reserve: 3 + 3 + 4 is just the capacity. */
    @Test
    void aClockCanUseLessSaltThanAMeter() {
        double[] uses = new double[360];
        for (int i = 0; i < uses.length; i++) {
            uses[i] = i % 3 == 2 ? 4 : 3;
        }
        SimulationInput trial = new SimulationInput(Days.series(FIRST, uses), HARDNESS, new Regeneration(10, 1000, 100, 60));
        SimulationResult clock = Simulation.simulate(trial, new ClockEveryDays(3));
        SimulationResult meter = Simulation.simulate(trial, new MeteredDelayed(10, 4, 0));
        assertEquals(3, clock.meanIntervalDays().value());
        assertEquals(2, meter.meanIntervalDays().value());
        assertEquals(0, clock.totals().hardDays() + meter.totals().hardDays());
        assertEquals(120_000, clock.totals().saltGrams());
        assertEquals(180_000, meter.totals().saltGrams());
    }

    @Test
    void aWeekdayClockRunsOnTheDateNamed() {
        Set<DayOfWeek> chosen = EnumSet.of(DayOfWeek.THURSDAY, DayOfWeek.MONDAY);
        ClockOnWeekdays clock = new ClockOnWeekdays(chosen);
        chosen.clear();
        SimulationResult outcome = Simulation.simulate(
                new SimulationInput(Days.constant(FIRST, 14, 100), HARDNESS, new Regeneration(1000, 2000, 150, 60)), clock);
        assertEquals(List.of(
                new RegenerationEvent(LocalDate.of(2025, 1, 2), Reason.CLOCK, 900),
                new RegenerationEvent(LocalDate.of(2025, 1, 6), Reason.CLOCK, 600),
                new RegenerationEvent(LocalDate.of(2025, 1, 9), Reason.CLOCK, 700),
                new RegenerationEvent(LocalDate.of(2025, 1, 13), Reason.CLOCK, 600)), outcome.events());
        assertEquals(Optional.of(LocalDate.of(2025, 1, 16)), outcome.nextRegeneration(100));
        assertThrows(IndexOutOfBoundsException.class, () -> outcome.events().get(4));
    }

    /**
     * 1000 L, then what 144 minutes of those hours draw passes hard, again and again. Worked through by an independent
     * program (Python 3.11) on the hourly multipliers of DAIAD.
     */
    @Test
    void anImmediateMeterRunsSeveralTimesADay() {
        SimulationResult outcome = Simulation.simulate(new SimulationInput(Days.constant(FIRST, 4, 1440), HARDNESS,
                new Regeneration(1000, 2000, 150, 144)), new MeteredImmediate(1000, 0));
        assertEquals(List.of(0, 1, 2, 3), outcome.events().stream()
                .map(event -> FIRST.until(event.date()).getDays()).toList());
        assertEquals(770.2569251960, outcome.totals().bypassedLitres(), 1e-9);
        assertEquals(4 * 1440 - 770.2569251960, outcome.totals().throughBedLitres(), 1e-9);
        assertEquals(10.2569251960, outcome.end().leftGrams(), 1e-9);
        assertEquals(0, outcome.totals().hardDays());
    }

    @Test
    void aRegenerationStartedLateRunsOnIntoTheNextDay() {
        SimulationResult outcome = Simulation.simulate(new SimulationInput(Days.constant(FIRST, 2, 1000), HARDNESS,
                new Regeneration(1000, 2000, 150, 144)), new MeteredImmediate(1000, 0));
        assertEquals(List.of(new RegenerationEvent(FIRST, Reason.METER, 0)), outcome.events());
        assertEquals(1000 * (0.58 + 0.30 + 0.4 * 0.17) / 23.97, outcome.totals().bypassedLitres(), 1e-9,
                "DAIAD: the first 2.4 of the day's hours");
        assertEquals(NoResultReason.ONE_REGENERATION, outcome.meanIntervalDays().reason());
        assertEquals(Optional.of(FIRST.plusDays(2)), outcome.nextRegeneration(1000));
    }

    /** It starts with the last litre of the first day and is over when water runs again on the third. */
    @Test
    void aRegenerationRunsOutOnADayWithoutUse() {
        SimulationResult outcome = Simulation.simulate(new SimulationInput(Days.series(FIRST, 1000, 0, 500), HARDNESS,
                new Regeneration(1000, 2000, 150, 144)), new MeteredImmediate(1000, 0));
        assertEquals(0, outcome.totals().bypassedLitres());
        assertEquals(1500, outcome.totals().throughBedLitres());
    }

    @Test
    void aHalfSpentSoftenerRunsShortEarly() {
        SimulationInput trial = new SimulationInput(Days.constant(FIRST, 5, 100), HARDNESS, new Regeneration(1000, 2000, 150, 60), 0.25);
        SimulationResult outcome = Simulation.simulate(trial, new MeteredDelayed(1000, 0, 0));
        assertEquals(Optional.of(FIRST.plusDays(2)), outcome.firstHardDate());
        assertEquals(50, outcome.totals().hardLitres(), 1e-9);
        assertEquals(Optional.of(FIRST.plusDays(3)), outcome.lastRegeneration());
        assertEquals(new FinalState(800, 200, 2), outcome.end());
        assertEquals(0, outcome.chargeImbalanceGrams(), 1e-9);
        SimulationInput spent = new SimulationInput(Days.constant(FIRST, 5, 100), HARDNESS, new Regeneration(1000, 2000, 150, 60), 0);
        SimulationResult atOnce = Simulation.simulate(spent, new MeteredImmediate(1000, 0));
        assertEquals(FIRST, atOnce.events().get(0).date());
        assertEquals(0, atOnce.totals().hardDays());
    }

    @Test
    void looksAheadFromWhereTheDaysEnd() {
        SimulationInput trial = new SimulationInput(Days.constant(FIRST, 5, 100), HARDNESS, new Regeneration(1000, 2000, 150, 60));
        SimulationResult delayed = Simulation.simulate(trial, new MeteredDelayed(1000, 0, 14));
        assertEquals(Optional.of(FIRST.plusDays(10)), delayed.nextRegeneration(100));
        assertEquals(Optional.of(FIRST.plusDays(14)), delayed.nextRegeneration(0));
        assertEquals(Optional.of(FIRST.plusDays(9)),
                Simulation.simulate(trial, new MeteredImmediate(1000, 0)).nextRegeneration(100));
        assertEquals(Optional.empty(), Simulation.simulate(trial, new MeteredImmediate(1000, 0)).nextRegeneration(0));
        assertEquals(Optional.of(FIRST.plusDays(7)),
                Simulation.simulate(trial, new ClockEveryDays(7)).nextRegeneration(100));
        assertEquals(Optional.empty(), delayed.lastRegeneration());
        assertEquals(Optional.empty(), delayed.firstHardDate());
    }

    @Test
    void refusesValuesOutOfRange() {
        assertThrows(IllegalArgumentException.class, () -> new ClockEveryDays(0));
        assertThrows(IllegalArgumentException.class, () -> new ClockEveryDays(3, -1));
        assertThrows(IllegalArgumentException.class, () -> new ClockOnWeekdays(Set.of()));
        assertThrows(IllegalArgumentException.class, () -> new MeteredDelayed(0.5, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new MeteredDelayed(100, -1, 0));
        assertThrows(IllegalArgumentException.class, () -> new MeteredImmediate(Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> new MeteredImmediate(100, 366));
        assertThrows(IllegalArgumentException.class, () -> new Regeneration(0, 1, 1, 60));
        assertThrows(IllegalArgumentException.class, () -> new Regeneration(1, 1, 1, 19));
        Days days = Days.constant(FIRST, 5, 100);
        Regeneration regeneration = new Regeneration(1000, 2000, 150, 60);
        assertThrows(IllegalArgumentException.class, () -> new SimulationInput(days, -1, regeneration));
        assertThrows(IllegalArgumentException.class, () -> new SimulationInput(days, 100, regeneration, 1.1));
        assertThrows(IllegalArgumentException.class, () -> regeneration.meterVolumeLitres(0));
        assertTrue(new ClockOnWeekdays(Set.of(DayOfWeek.MONDAY)).weekdays().contains(DayOfWeek.MONDAY));
    }
}
