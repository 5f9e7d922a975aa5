// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.brinebook.softener.MaintenanceTask.Kind;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterAnalysis.IronForm;
import dev.brinebook.water.WaterAnalysis.Supply;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Dates counted by hand. Yearly tests of a private well: CDC, Guidelines for Testing Well Water, from memory. */
class MaintenanceTaskTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);

    private static WaterAnalysis water(Supply supply, boolean tested, OptionalDouble iron, IronForm form) {
        OptionalDouble none = OptionalDouble.empty();
        return WaterAnalysis.ofHardness(300).ironMgPerL(iron).ironForm(form).supply(supply).bacteriaTested(tested).build();
    }

    private static WaterAnalysis of(Supply supply, boolean tested) {
        return water(supply, tested, OptionalDouble.of(0.1), IronForm.DISSOLVED);
    }

    private static MaintenanceTask due(int year, Kind kind) {
        return new MaintenanceTask(LocalDate.of(year, 1, 1), kind);
    }

    @Test
    void aWellIsTestedAtOnceIfItWasNotAndYearlyFromThenOn() {
        assertEquals(List.of(due(2026, Kind.BACTERIA_TEST), due(2027, Kind.BACTERIA_TEST), due(2027, Kind.SERVICE)),
                MaintenanceTask.of(of(Supply.PRIVATE_WELL, false), 20, FIRST, 365));
        assertEquals(List.of(due(2027, Kind.BACTERIA_TEST), due(2027, Kind.SERVICE), due(2028, Kind.BACTERIA_TEST),
                due(2028, Kind.SERVICE)), MaintenanceTask.of(of(Supply.PRIVATE_WELL, true), 20, FIRST, 800));
    }

    @Test
    void aPublicSupplyIsNotTested() {
        assertEquals(List.of(due(2027, Kind.SERVICE)), MaintenanceTask.of(of(Supply.PUBLIC_SUPPLY, false), 20, FIRST, 365));
        assertEquals(List.of(), MaintenanceTask.of(of(Supply.PUBLIC_SUPPLY, false), 20, FIRST, 364));
    }

    @Test
    void waterThatFoulsTheResinAsksForACleaner() {
        for (OptionalDouble iron : List.of(OptionalDouble.of(0.31), OptionalDouble.of(1.2))) {
            assertEquals(Kind.SERVICE_WITH_RESIN_CLEANER, service(iron, IronForm.DISSOLVED));
        }
        assertEquals(Kind.SERVICE, service(OptionalDouble.of(0.3), IronForm.DISSOLVED));
        assertEquals(Kind.SERVICE, service(OptionalDouble.empty(), IronForm.DISSOLVED));
        for (IronForm form : IronForm.values()) {
            assertEquals(form == IronForm.DISSOLVED ? Kind.SERVICE : Kind.SERVICE_WITH_RESIN_CLEANER,
                    service(OptionalDouble.of(0.1), form));
        }
    }

    private static Kind service(OptionalDouble iron, IronForm form) {
        List<MaintenanceTask> due = MaintenanceTask.of(water(Supply.PUBLIC_SUPPLY, false, iron, form), 5, FIRST, 365);
        assertEquals(1, due.size());
        return due.get(0).kind();
    }

    /** 2.5 g at 2 mg/L and 20 bed volumes a day: 2,500 / 40 = 62.5 days, by hand. */
    @Test
    void balancesTheIronThatALitreOfResinIsFed() {
        assertEquals(62.5, MaintenanceTask.daysBetweenCleanings(2, 20), 1e-9);
        assertEquals(2 * 62.5, MaintenanceTask.daysBetweenCleanings(2, 10), 1e-9, "twice the resin");
        assertEquals(30, MaintenanceTask.daysBetweenCleanings(9, 40), 1e-9, "no oftener than monthly");
        assertEquals(Double.POSITIVE_INFINITY, MaintenanceTask.daysBetweenCleanings(0, 20));
        List<MaintenanceTask> due = MaintenanceTask.of(water(Supply.PUBLIC_SUPPLY, false, OptionalDouble.of(2), IronForm.DISSOLVED), 20,
                FIRST, 365);
        assertEquals(List.of(FIRST.plusDays(62), FIRST.plusDays(124), FIRST.plusDays(186), FIRST.plusDays(248), FIRST.plusDays(310),
                FIRST.plusDays(365)), due.stream().map(MaintenanceTask::date).toList());
        assertEquals(Kind.SERVICE_WITH_RESIN_CLEANER, due.get(5).kind());
        List<MaintenanceTask> often = MaintenanceTask.of(water(Supply.PUBLIC_SUPPLY, false, OptionalDouble.of(2), IronForm.DISSOLVED),
                1250.0 / 73, FIRST,
                365);
        assertEquals(5, often.size(), "every 73 days, the fifth with the service");
    }

    @Test
    void refusesNoDays() {
        assertThrows(IllegalArgumentException.class, () -> MaintenanceTask.of(of(Supply.PUBLIC_SUPPLY, true), 20, FIRST, 0));
    }
}
