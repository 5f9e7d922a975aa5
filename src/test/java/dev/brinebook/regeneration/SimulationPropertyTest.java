// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.household.Days;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What holds for every policy on any days, over seeded random trials; a failure names its seed. */
class SimulationPropertyTest {

    private static final LocalDate FIRST = LocalDate.of(2024, 2, 27);
    private static final int SEEDS = 400;

    /** Charge and water are conserved, and every policy sees the same water. */
    @Test
    void conservesChargeAndWater() {
        for (long seed = 1; seed <= SEEDS; seed++) {
            SimulationInput trial = trial(new Random(seed), new Random(seed).nextDouble());
            double capacity = trial.regeneration().capacityGrams();
            for (Policy policy : policies(new Random(seed), trial)) {
                SimulationResult outcome = Simulation.simulate(trial, policy);
                Totals totals = outcome.totals();
                String label = "seed " + seed + " " + policy;
                assertEquals(0, outcome.chargeImbalanceGrams(), 1e-9 * (capacity + totals.removedGrams()), label);
                assertEquals(trial.days().sumLitres(), totals.throughBedLitres() + totals.bypassedLitres(),
                        1e-9 * trial.days().sumLitres(), label);
                double gramsPerLitre = trial.hardnessMilligramsPerLitre() / 1000;
                assertEquals((totals.throughBedLitres() - totals.hardLitres()) * gramsPerLitre, totals.removedGrams(),
                        1e-8 * (capacity + totals.removedGrams()), label);
                assertEquals(totals.regenerations() * capacity - totals.unusedGrams(), totals.regeneratedGrams(),
                        1e-8 * capacity * (1 + totals.regenerations()), label);
                assertTrue(outcome.end().leftGrams() >= 0 && outcome.end().leftGrams() <= capacity, label);
                assertEquals(totals.hardDays() > 0, outcome.firstHardDay().isPresent(), label);
                assertEquals(totals.overrides(), outcome.events().stream()
                        .filter(event -> event.reason() == Reason.OVERRIDE).count(), label);
                assertEquals(outcome.events(), Simulation.simulate(trial, policy).events(), label);
            }
        }
    }

    @Test
    void anImmediateMeterRegeneratesOncePerCapacityUsed() {
        for (long seed = 1; seed <= SEEDS; seed++) {
            SimulationInput trial = trial(new Random(seed), 1);
            double meter = trial.regeneration().meterVolumeLitres(trial.hardnessMilligramsPerLitre());
            Totals totals = Simulation.simulate(trial, new MeteredImmediate(meter, 0)).totals();
            assertEquals(Math.floor(totals.throughBedLitres() / meter + 1e-7), totals.regenerations(), "seed " + seed);
            assertEquals(0, totals.hardLitres(), "seed " + seed);
            assertEquals(0, totals.unusedGrams(), "seed " + seed);
        }
    }

    @Test
    void aReserveOfTheLargestDayIsNeverHard() {
        for (long seed = 1; seed <= SEEDS; seed++) {
            Random random = new Random(seed);
            SimulationInput trial = trial(random, 1);
            double meter = trial.regeneration().meterVolumeLitres(trial.hardnessMilligramsPerLitre());
            if (meter >= trial.days().maxLitres()) {
                double reserve = trial.days().maxLitres() * (1 + random.nextDouble());
                SimulationResult outcome = Simulation.simulate(trial, new MeteredDelayed(meter, reserve, random.nextInt(15)));
                assertEquals(0, outcome.totals().hardLitres(), "seed " + seed);
            }
        }
    }

    @Test
    void moreUseNeverLengthensTheInterval() {
        for (long seed = 1; seed <= SEEDS; seed++) {
            Random random = new Random(seed);
            double meter = 1000 + 9000 * random.nextDouble();
            MeteredDelayed policy = new MeteredDelayed(meter, meter * 0.5 * random.nextDouble(), 0);
            double use = 20 + 400 * random.nextDouble();
            double more = use * (1 + random.nextDouble());
            assertTrue(interval(policy, more) <= interval(policy, use), "seed " + seed);
        }
    }

    @Test
    void aClockIgnoresUse() {
        for (long seed = 1; seed <= SEEDS; seed++) {
            Random random = new Random(seed);
            SimulationInput trial = trial(random, 1);
            int every = 1 + random.nextInt(30);
            assertEquals(trial.days().size() / every,
                    Simulation.simulate(trial, new ClockEveryDays(every)).totals().regenerations(), "seed " + seed);
        }
    }

    /** The smallest values every range allows must not hang the day's loop. */
    @Test
    void endsOnTheSmallestValues() {
        Regeneration regeneration = new Regeneration(Double.MIN_VALUE, 0, 0, Regeneration.MIN_MINUTES);
        for (double use : new double[] {Double.MIN_VALUE, 1e-300, 1, Days.MAX_USE_LITRES}) {
            for (double hardness : new double[] {0, Double.MIN_VALUE, 1, 1e4}) {
                SimulationResult outcome = Simulation.simulate(new SimulationInput(Days.constant(FIRST, 30, use), hardness, regeneration,
                        0),
                        new MeteredImmediate(Policy.MIN_METER_LITRES, 1));
                assertTrue(outcome.totals().regenerations() >= 30, use + " L");
                assertTrue(outcome.totals().regenerations() <= 30 * 75, use + " L");
            }
        }
    }

    private static double interval(Policy policy, double useLitres) {
        SimulationInput trial = new SimulationInput(Days.constant(FIRST, 1000, useLitres), 300, new Regeneration(1000, 2000, 150, 60));
        return Simulation.simulate(trial, policy).meanIntervalDays().value();
    }

    private static SimulationInput trial(Random random, double leftAtStartShare) {
        double[] uses = new double[1 + random.nextInt(Days.MAX_DAYS)];
        double mean = 50 + 1500 * random.nextDouble();
        for (int i = 0; i < uses.length; i++) {
            uses[i] = random.nextInt(8) == 0 ? 0 : 2 * mean * random.nextDouble();
        }
        return new SimulationInput(Days.series(FIRST, uses), 20 + 800 * random.nextDouble(),
                new Regeneration(100 + 3000 * random.nextDouble(), 1500, 150, 20 + 200 * random.nextDouble()),
                leftAtStartShare);
    }

    private static List<Policy> policies(Random random, SimulationInput trial) {
        double meter = Math.max(1, trial.regeneration().meterVolumeLitres(trial.hardnessMilligramsPerLitre())
                * (0.5 + random.nextDouble()));
        int override = random.nextInt(3) * 7;
        return List.of(new ClockEveryDays(1 + random.nextInt(20), override),
                new ClockOnWeekdays(EnumSet.of(DayOfWeek.of(1 + random.nextInt(7)), DayOfWeek.SUNDAY), override),
                new MeteredDelayed(meter, meter * random.nextDouble(), override),
                new MeteredImmediate(meter, override));
    }
}
