// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.regeneration.SaltPlan.SaltPurchase;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SaltPlanTest {

    private static final LocalDate FIRST = LocalDate.of(2025, 1, 1);

    /** 10 - 4 = 6 is below 8: three bags of 18 fit into 54. Then 60 - 14 x 4 = 4: three fit into 56. */
    @Test
    void buysWholeBagsWhenLow() {
        SaltPlan plan = SaltPlan.of(FIRST, weeks(20), 4000, new SaltStore(60, 10, 18)).orElseThrow();
        assertEquals(List.of(new SaltPurchase(FIRST.plusWeeks(1), 3, 60), new SaltPurchase(FIRST.plusWeeks(15), 3, 58)),
                plan.purchases());
        assertEquals(6, plan.bags());
        assertEquals(58 - 5 * 4, plan.leftKilograms());
    }

    @Test
    void anEmptyTankIsFilledOnTheFirstDay() {
        SaltPlan plan = SaltPlan.of(FIRST, List.of(), 4000, new SaltStore(60, 0, 20)).orElseThrow();
        assertEquals(List.of(new SaltPurchase(FIRST, 3, 60)), plan.purchases());
    }

    @Test
    void aTankThatDoesNotTakeABagIsReported() {
        SaltStore store = new SaltStore(20, 5, 18);
        assertEquals(22, store.leastCapacityKilograms(4000));
        assertFalse(store.takesWholeBags(4000));
        assertEquals(Optional.empty(), SaltPlan.of(FIRST, weeks(20), 4000, store));
    }

    @Test
    void noSaltUsedIsNoneBought() {
        SaltPlan plan = SaltPlan.of(FIRST, weeks(20), 0, new SaltStore(60, 0, 18)).orElseThrow();
        assertEquals(0, plan.bags());
    }

    /** Salt is conserved, the tank never overflows and no regeneration goes short, down to the smallest tank allowed. */
    @Test
    void neverRunsOutAndNeverOverflows() {
        for (long seed = 1; seed <= 500; seed++) {
            Random random = new Random(seed);
            double bag = 5 + random.nextInt(25);
            double salt = (500 + random.nextInt(12_000)) / 1000.0;
            double capacity = random.nextInt(4) == 0 ? bag + salt * 1000 / 1000 : bag + salt + 200 * random.nextDouble();
            SaltStore store = new SaltStore(capacity, capacity * random.nextDouble(), bag);
            SaltPlan plan = SaltPlan.of(FIRST, weeks(100), salt * 1000, store).orElseThrow();
            assertEquals(store.atStartKilograms() + plan.bags() * bag - 100 * salt, plan.leftKilograms(), 1e-7,
                    "seed " + seed);
            for (SaltPurchase purchase : plan.purchases()) {
                assertTrue(purchase.filledToKilograms() <= capacity + 1e-7, "seed " + seed);
                assertTrue(purchase.filledToKilograms() >= salt - 1e-7, "seed " + seed);
            }
            assertTrue(lowest(plan, store, salt) >= -1e-7, "seed " + seed);
        }
    }

    @Test
    void refusesValuesOutOfRange() {
        assertThrows(IllegalArgumentException.class, () -> new SaltStore(60, 61, 18));
        assertThrows(IllegalArgumentException.class, () -> new SaltStore(0, 0, 18));
        assertThrows(IllegalArgumentException.class, () -> new SaltStore(60, 0, 0));
        assertThrows(IllegalArgumentException.class,
                () -> SaltPlan.of(FIRST, List.of(), -1, new SaltStore(60, 0, 18)));
    }

    private static double lowest(SaltPlan plan, SaltStore store, double salt) {
        double left = store.atStartKilograms();
        double lowest = left;
        for (int week = 0; week <= 100; week++) {
            LocalDate date = FIRST.plusWeeks(week);
            left -= week == 0 ? 0 : salt;
            lowest = Math.min(lowest, left);
            left += store.bagKilograms() * plan.purchases().stream().filter(purchase -> purchase.date().equals(date))
                    .mapToInt(SaltPurchase::bags).sum();
        }
        return lowest;
    }

    private static List<RegenerationEvent> weeks(int count) {
        List<RegenerationEvent> events = new ArrayList<>();
        for (int week = 1; week <= count; week++) {
            events.add(new RegenerationEvent(FIRST.plusWeeks(week), Reason.CLOCK, 0));
        }
        return events;
    }
}
