// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterAnalysis.Supply;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UpkeepTaskTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);

    /**
     * Years to a loss of a quarter, compound: 28.6, 9.4 and 5.6 at 1, 3 and 5 % a year. Source: UFC 3-240-13FN for rates and limit, hand
     * arithmetic; what age has taken already comes off; none are left at three quarters.
     */
    @ParameterizedTest
    @CsvSource({"1, 0.01, 28.6", "1, 0.03, 9.4", "1, 0.05, 5.6", "0.9, 0.05, 3.55", "0.75, 0.03, 0", "0.6, 0.03, 0"})
    void replacesResinAtAQuarter(double left, double loss, double years) {
        assertEquals(years, UpkeepTask.resinDays(left, loss) / 365.0, 0.06);
    }

    /** 2.5 g/L between cleanings over 2 mg/L times 20 bed volumes a day are 62.5 days. Source: hand arithmetic. */
    @ParameterizedTest
    @CsvSource({"2, 20, 62", "0.5, 1, 365", "8, 40, 30"})
    void cleansByTheIronHeld(double iron, double bedVolumes, int days) {
        UpkeepTask task = task(UpkeepItem.RESIN_CLEANER, water(Supply.PUBLIC_SUPPLY, iron, false), bedVolumes).orElseThrow();
        assertEquals(OptionalInt.of(days), task.everyDays());
        assertEquals(FIRST.plusDays(days), task.dates().get(0));
        assertEquals(730 / days, task.dates().size());
    }

    @Test
    void needsNoCleanerWithoutIron() {
        assertTrue(task(UpkeepItem.RESIN_CLEANER, water(Supply.PUBLIC_SUPPLY, 0.1, false), 20).isEmpty());
    }

    /** Common practice, and CDC for wells: each year, at once if never done. */
    @Test
    void testsWellsAlone() {
        assertTrue(task(UpkeepItem.BACTERIA_TEST, water(Supply.PUBLIC_SUPPLY, 0, false), 20).isEmpty());
        assertEquals(List.of(FIRST, FIRST.plusDays(365), FIRST.plusDays(730)),
                task(UpkeepItem.BACTERIA_TEST, water(Supply.PRIVATE_WELL, 0, false), 20).orElseThrow().dates());
        assertEquals(List.of(FIRST.plusDays(365), FIRST.plusDays(730)),
                task(UpkeepItem.BACTERIA_TEST, water(Supply.PRIVATE_WELL, 0, true), 20).orElseThrow().dates());
    }

    @Test
    void sanitisesByTriggerAlone() {
        UpkeepTask task = task(UpkeepItem.SANITISE, water(Supply.PUBLIC_SUPPLY, 0, false), 20).orElseThrow();
        assertTrue(task.everyDays().isEmpty() && task.dates().isEmpty());
    }

    @Test
    void takesFilterAndSaltAsGiven() {
        WaterAnalysis water = water(Supply.PUBLIC_SUPPLY, 0, false);
        List<UpkeepTask> plain = UpkeepTask.of(new UpkeepConditions(water, 20, 1, 0.03, false, false), FIRST, 730);
        List<UpkeepTask> dirty = UpkeepTask.of(new UpkeepConditions(water, 20, 1, 0.03, true, true), FIRST, 730);
        assertFalse(plain.stream().anyMatch(task -> task.item() == UpkeepItem.SEDIMENT_FILTER));
        assertEquals(4, of(UpkeepItem.SEDIMENT_FILTER, dirty).orElseThrow().dates().size());
        assertEquals(2, of(UpkeepItem.BRINE_TANK, dirty).orElseThrow().dates().size());
        assertEquals(1, of(UpkeepItem.BRINE_TANK, plain).orElseThrow().dates().size());
    }

    private static Optional<UpkeepTask> task(UpkeepItem item, WaterAnalysis water, double bedVolumes) {
        return of(item, UpkeepTask.of(new UpkeepConditions(water, bedVolumes, 1, 0.03, false, false), FIRST, 730));
    }

    private static Optional<UpkeepTask> of(UpkeepItem item, List<UpkeepTask> tasks) {
        return tasks.stream().filter(task -> task.item() == item).findFirst();
    }

    private static WaterAnalysis water(Supply supply, double iron, boolean tested) {
        return WaterAnalysis.ofHardness(300).ironMgPerL(iron).supply(supply).bacteriaTested(tested).build();
    }
}
