package dev.brinebook.softener;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.brinebook.softener.Upkeep.Kind;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterAnalysis.IronForm;
import dev.brinebook.water.WaterAnalysis.Supply;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Dates counted by hand. Yearly tests of a private well: CDC, Guidelines for Testing Well Water, from memory. */
class UpkeepTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);

    private static WaterAnalysis water(Supply supply, boolean tested, OptionalDouble iron, IronForm form) {
        OptionalDouble none = OptionalDouble.empty();
        return new WaterAnalysis(300, 0, iron, none, none, none, none, none, none, none, 12, form, supply, tested);
    }

    private static WaterAnalysis of(Supply supply, boolean tested) {
        return water(supply, tested, OptionalDouble.of(0.1), IronForm.DISSOLVED);
    }

    private static Upkeep due(int year, Kind kind) {
        return new Upkeep(LocalDate.of(year, 1, 1), kind);
    }

    @Test
    void aWellIsTestedAtOnceIfItWasNotAndYearlyFromThenOn() {
        assertEquals(List.of(due(2026, Kind.BACTERIA_TEST), due(2027, Kind.BACTERIA_TEST), due(2027, Kind.SERVICE)),
                Upkeep.of(of(Supply.PRIVATE_WELL, false), FIRST, 365));
        assertEquals(List.of(due(2027, Kind.BACTERIA_TEST), due(2027, Kind.SERVICE), due(2028, Kind.BACTERIA_TEST),
                due(2028, Kind.SERVICE)), Upkeep.of(of(Supply.PRIVATE_WELL, true), FIRST, 800));
    }

    @Test
    void aPublicSupplyIsNotTested() {
        assertEquals(List.of(due(2027, Kind.SERVICE)), Upkeep.of(of(Supply.PUBLIC_SUPPLY, false), FIRST, 365));
        assertEquals(List.of(), Upkeep.of(of(Supply.PUBLIC_SUPPLY, false), FIRST, 364));
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
        List<Upkeep> due = Upkeep.of(water(Supply.PUBLIC_SUPPLY, false, iron, form), FIRST, 365);
        assertEquals(1, due.size());
        return due.get(0).kind();
    }

    @Test
    void refusesNoDays() {
        assertThrows(IllegalArgumentException.class, () -> Upkeep.of(of(Supply.PUBLIC_SUPPLY, true), FIRST, 0));
    }
}
