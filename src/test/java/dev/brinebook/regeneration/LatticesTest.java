// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.guard.WorkingMemory;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.UseModel;
import dev.brinebook.household.WeekdayMeans;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;

/** Lattices that another household left behind give what new ones give. */
class LatticesTest {

    @RepeatedTest(20)
    void whatWasAskedBeforeMovesNoResult(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        long seed = random.nextLong();
        double alone = hardDays(new Random(seed), 300);
        double after = WorkingMemory.during(() -> {
            for (int i = 0; i < 10; i++) {
                hardDays(random, 50 + random.nextInt(1500));
            }
            return hardDays(new Random(seed), 300);
        });
        assertEquals(alone, after, 1e-9 * Math.max(1, alone));
    }

    private static double hardDays(Random random, double litres) {
        LongRun home = LongRun.of(new UseModel(WeekdayMeans.everyDay(litres), DayVariation.ofCv(0.42)));
        Policy policy = random.nextBoolean() ? new MeteredDelayed(1_000 + 4_000 * random.nextDouble(), 500, 7 * random.nextInt(3))
                : new ClockEveryDays(1 + random.nextInt(10));
        return home.hardDaysPerYear(policy, 300, new Regeneration(500 + 1_500 * random.nextDouble(), 4_000, 200, 80));
    }
}
