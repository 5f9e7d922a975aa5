// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.Regeneration;
import java.util.Random;
import org.junit.jupiter.api.Test;

class TunedClockTest {

    private static final RunningCost COST = new RunningCost(0.45, 2.9);

    /**
     * Constant days of 3,000 gr and 1 ft³, by hand: 6 lb/ft³ last six days (20 kgr) and 8 lb eight (24 kgr), a pound a day;
     * between them 6.5 lb last seven (21.1 kgr), 0.93 pounds a day.
     */
    @Test
    void setsTheLongestIntervalThatTheCapacityLasts() {
        DesignConditions duty = Softeners.plain(Softeners.duty(20, 0, 150, 0));
        TunedClock tuned = TunedClock.of(Softeners.cubicFeet(1, 9, 48), duty, new RunningCost(0.45, 0));
        assertEquals(6.5 * Softeners.POUND_PER_CUBIC_FOOT, tuned.saltDoseGramsPerLitre(), 1e-9);
        assertEquals(7, tuned.clock().days(), "common practice table over 3,000 gr a day");
    }

    @Test
    void keepsToTheStandardAndOneDayMoreWouldNot() {
        Random random = new Random(12);
        for (int n = 0; n < 40; n++) {
            DesignConditions duty = Softeners.duty(8 + 15 * random.nextDouble(), 0, 100 + 150 * random.nextDouble(), 0.4);
            Softener softener = Softeners.cubicFeet(1.5 + random.nextDouble(), 12, 60);
            TunedClock tuned = TunedClock.of(softener, duty, COST);
            Regeneration each = DosedSoftener.designed(softener, tuned.saltDoseGramsPerLitre(), 12).regeneration();
            assertTrue(tuned.keepsStandard() && duty.isServed(tuned.clock(), each), "seed 12, case " + n);
            assertTrue(tuned.clock().days() == 14 || !duty.isServed(new ClockEveryDays(tuned.clock().days() + 1), each));
        }
    }

    @Test
    void ironAsksForFourDaysAndTooSmallABedForEveryNight() {
        TunedClock iron = TunedClock.of(Softeners.cubicFeet(3, 14, 65), Softeners.duty(10, 1, 100, 0.3), COST);
        assertEquals(4, iron.clock().days(), "14 days times 0.3 mg/L over 1 mg/L, whole days");
        TunedClock small = TunedClock.of(Softeners.cubicFeet(0.5, 8, 44), Softeners.duty(60, 0, 600, 0.3), COST);
        assertEquals(1, small.clock().days());
        assertEquals(15 * Softeners.POUND_PER_CUBIC_FOOT, small.saltDoseGramsPerLitre(), 1e-9);
    }
}
