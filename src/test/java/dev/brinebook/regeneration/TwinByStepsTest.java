// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.household.Days;
import dev.brinebook.household.HourlyProfile;
import java.time.LocalDate;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Twin beds in steps of six seconds, another way to the same numbers: a bed used up waits for the other, over midnight too. */
class TwinByStepsTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);
    private static final int STEPS = 14_400;

    private int changes;
    private double hardLitres;

    private void run(Days days, double bedLitres, double regenerationShareOfDay) {
        changes = 0;
        hardLitres = 0;
        double counted = 0;
        double running = 0;
        for (int day = 0; day < days.size(); day++) {
            for (int step = 0; step < STEPS; step++) {
                counted += days.useLitres(day) * (HourlyProfile.shareUntil((step + 1.0) / STEPS)
                        - HourlyProfile.shareUntil((double) step / STEPS));
                running = Math.max(0, running - 1.0 / STEPS);
                if (counted >= bedLitres && running == 0) {
                    hardLitres += counted - bedLitres;
                    counted = 0;
                    running = regenerationShareOfDay;
                    changes++;
                }
            }
        }
        hardLitres += Math.max(0, counted - bedLitres);
    }

    @Test
    void bedsThatAreTooSmallRunHardUntilTheOtherIsReady() {
        int hard = 0;
        for (int seed = 1; seed <= 40; seed++) {
            Random random = new Random(seed);
            Days days = Days.series(FIRST, random.doubles(8, 100, 4_000).toArray());
            double bedLitres = 40 + 360 * random.nextDouble();
            double minutes = 60 + 170 * random.nextDouble();
            run(days, bedLitres, minutes / 1_440);
            Totals totals = Simulation.simulate(new SimulationInput(days, 300, new Regeneration(0.3 * bedLitres, 1, 1, minutes)),
                    new TwinAlternating(bedLitres, 0)).totals();
            // A step is late at each change of beds, by half of what it draws on the mean, which may make another change.
            assertEquals(changes, totals.regenerations(), 1, "seed " + seed);
            assertEquals(hardLitres, totals.hardLitres(), 2.0 * (changes + 1), "seed " + seed);
            hard += totals.hardLitres() > 0.05 * days.sumLitres() ? 1 : 0;
        }
        assertTrue(hard >= 20 && hard < 40, "some must run hard and some not: " + hard);
    }
}
