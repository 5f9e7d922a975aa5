// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.household.Days;
import java.time.LocalDate;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Where policies must agree: hand arithmetic, and the limits in which their difference vanishes. */
class TwinAlternatingTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);
    private static final double HARDNESS = 300;

    /** 365 days of 250 L and beds of 1,000 L: a change of beds every fourth day, 91 in a year, nothing left unused. */
    @Test
    void changesBedsWheneverOneIsUsedUp() {
        Totals totals = run(new TwinAlternating(1000, 0), 1000, 90, Days.constant(FIRST, 365, 250));
        assertEquals(91, totals.regenerations());
        assertEquals(0, totals.unusedGrams(), 1e-9);
        assertEquals(0, totals.hardLitres());
        assertEquals(0, totals.bypassedLitres());
    }

    /** Use that divides the capacity: the immediate meter, the twin and the delayed meter without reserve all do as often. */
    @Test
    void agreesWithOtherMetersWhereUseDividesTheCapacity() {
        Days days = Days.constant(FIRST, 360, 250);
        int twin = run(new TwinAlternating(1000, 0), 1000, 20, days).regenerations();
        assertEquals(90, twin);
        assertEquals(twin, run(new MeteredDelayed(1000, 0, 0), 1000, 20, days).regenerations());
        assertEquals((double) run(new MeteredImmediate(1000, 0), 1000, 20, days).regenerations(), twin, 1.5,
                "what passes by while it runs is not counted");
    }

    /** Without a reserve a delayed meter waits for the night, so the twin regenerates no less often and is never hard. */
    @Test
    void takesNoMoreSaltThanADelayedMeterWithReserveAndIsNeverHard() {
        for (int seed = 1; seed <= 100; seed++) {
            Days days = anyDays(new Random(seed));
            Totals twin = run(new TwinAlternating(days.maxLitres() * 2, 0), days.maxLitres() * 2, 90, days);
            Totals delayed = run(new MeteredDelayed(days.maxLitres() * 2, days.maxLitres(), 0), days.maxLitres() * 2, 90, days);
            assertTrue(twin.regenerations() <= delayed.regenerations(), "seed " + seed);
            assertEquals(0, twin.hardLitres(), "seed " + seed);
        }
    }

    /** With capacity without end no meter ever regenerates but by its override. */
    @Test
    void withCapacityWithoutEndOnlyTheOverrideIsLeft() {
        Days days = Days.constant(FIRST, 365, 1000);
        for (Policy policy : new Policy[] {new TwinAlternating(9e6, 14), new MeteredImmediate(9e6, 14),
            new MeteredDelayed(9e6, 0, 14), new MeteredByHistory(9e6, MeteredByHistory.Of.MEAN, 0, 14)}) {
            Totals totals = run(policy, 9e6, 90, days);
            assertEquals(26, totals.regenerations(), policy + ": zero load and override 14, by hand 365 / 14");
            assertEquals(26, totals.overrides());
        }
    }

    /**
     * Two bedfuls in one day: 2,000 L a day, beds of 500 L, twelve hours to regenerate. By the hours of DAIAD the first is
     * used up at 10:00 and the other at 14:14; the first is ready at 22:00, and until then 817.3 L pass the used-up bed
     * (independent program, Python 3.11).
     */
    @Test
    void isHardWhereABedIsUsedUpBeforeTheOtherIsReady() {
        Totals totals = run(new TwinAlternating(500, 0), 500, 720, Days.constant(FIRST, 1, 2000));
        assertEquals(817.3029467662, totals.hardLitres(), 1e-6);
        assertEquals(1, totals.hardDays());
        assertEquals(2, totals.regenerations());
        assertEquals(2000, totals.throughBedLitres(), 1e-9);
    }

    @Test
    void conservesChargeAndWater() {
        for (int seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            Days days = anyDays(random);
            double meter = 100 + 4000 * random.nextDouble();
            SimulationInput trial = new SimulationInput(days, HARDNESS, new Regeneration(HARDNESS, 5000, 250, 20
                    + 1400 * random.nextDouble()),
                    random.nextDouble());
            SimulationResult outcome = Simulation.simulate(trial, new TwinAlternating(meter, random.nextInt(20)));
            assertEquals(0, outcome.chargeImbalanceGrams(), 1e-6, "seed " + seed);
            assertEquals(days.sumLitres(), outcome.totals().throughBedLitres(), 1e-6, "seed " + seed);
        }
    }

    /** By hand: four Mondays of 100 to 400 L teach a reserve of 400 or of 250 L for the next. */
    @Test
    void aReserveByHistoryKeepsBackWhatTheSameWeekdayUsed() {
        double[] uses = new double[35];
        for (int week = 0; week < 5; week++) {
            uses[7 * week] = 100 * (week % 4 + 1);
        }
        LocalDate monday = LocalDate.of(2026, 1, 5);
        // Up to the eve of the fifth Monday 1,000 L were used: 401 and 251 L left keep just out of the reserves.
        for (var rule : MeteredByHistory.Of.values()) {
            double reserve = rule == MeteredByHistory.Of.LARGEST ? 400 : 250;
            Days days = Days.series(monday, uses);
            SimulationInput trial = new SimulationInput(days, HARDNESS, new Regeneration(1e6, 5000, 250, 90));
            assertEquals(monday.plusDays(28), Simulation.simulate(trial, new MeteredByHistory(1000 + reserve - 1, rule, 0, 0))
                    .events().get(0).date());
            assertTrue(Simulation.simulate(trial, new MeteredByHistory(1200 + reserve, rule, 0, 0)).events().isEmpty());
        }
    }

    private static Totals run(Policy policy, double bedLitres, double minutes, Days days) {
        return Simulation.simulate(new SimulationInput(days, HARDNESS, new Regeneration(bedLitres * HARDNESS / 1000, 5000, 250,
                minutes)), policy).totals();
    }

    private static Days anyDays(Random random) {
        double[] uses = new double[100 + random.nextInt(400)];
        for (int i = 0; i < uses.length; i++) {
            uses[i] = random.nextInt(5) == 0 ? 0 : 2000 * random.nextDouble();
        }
        return Days.series(FIRST, uses);
    }
}
