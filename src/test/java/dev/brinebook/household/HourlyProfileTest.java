// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class HourlyProfileTest {

    /** DAIAD: hours 2 to 4 carry 1.5 % of the day; its 24 multipliers sum to 23.97. */
    @Test
    void hasTheHoursOfTheMeteredHomes() {
        assertEquals(0.015, HourlyProfile.share(2, 180), 0.0005);
        assertEquals((0.58 + 0.30) / 23.97, HourlyProfile.shareUntil(2 / 24.0), 1e-12);
        assertEquals(1.67 / 23.97, HourlyProfile.shareUntil(21 / 24.0) - HourlyProfile.shareUntil(20 / 24.0), 1e-12);
    }

    @Test
    void timesAndSharesAreInversesAndRise() {
        assertEquals(0, HourlyProfile.shareUntil(0));
        assertEquals(1, HourlyProfile.shareUntil(1), 1e-12);
        assertEquals(1, HourlyProfile.dayShareAt(1), 1e-12);
        Random random = new Random(8);
        for (int i = 0; i < 1000; i++) {
            double time = random.nextDouble();
            double share = HourlyProfile.shareUntil(time);
            assertEquals(time, HourlyProfile.dayShareAt(share), 1e-12, "seed 8, case " + i);
            assertTrue(HourlyProfile.shareUntil(time + (1 - time) / 2) > share, "seed 8, case " + i);
            double minutes = Math.min(90, 1440 * (1 - time));
            int hour = (int) (24 * time);
            assertEquals(HourlyProfile.share(hour, minutes), HourlyProfile.shareUntil(Math.min(1, hour / 24.0 + minutes / 1440))
                    - HourlyProfile.shareUntil(hour / 24.0), 1e-12, "seed 8, case " + i);
        }
        assertThrows(IllegalArgumentException.class, () -> HourlyProfile.shareUntil(1.1));
        assertThrows(IllegalArgumentException.class, () -> HourlyProfile.dayShareAt(-0.1));
    }
}
