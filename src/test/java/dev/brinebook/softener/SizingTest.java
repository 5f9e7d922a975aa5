// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Rows;
import dev.brinebook.quantity.CapacityUnit;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.SaltEfficiencyUnit;
import dev.brinebook.softener.Fit.Shortcoming;
import dev.brinebook.softener.Sizing.Candidate;
import dev.brinebook.softener.Sizing.Ranked;
import dev.brinebook.text.Message;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class SizingTest {

    private static final String TANKS = "/softener/practice-standard-tanks.csv";
    private static final RunningCost COST = new RunningCost(0.45, 2.9);

    @ParameterizedTest
    @CsvFileSource(resources = TANKS, useHeadersInDisplayName = true)
    void findsTheStandardTankOfAResinVolume(double diameter, double height, double cubicFeet) {
        StandardTank tank = StandardTank.smallestFor(cubicFeet * Exact.CUBIC_FOOT_LITRES).orElseThrow();
        assertEquals(diameter, tank.diameterMetres() / Exact.INCH_METRES, 1e-9);
        assertEquals(height, tank.heightMetres() / Exact.INCH_METRES, 1e-9);
    }

    @Test
    void knowsEveryTankAndNoLarger() {
        assertEquals(StandardTank.all().size(), Rows.in(TANKS));
        assertTrue(StandardTank.smallestFor(300).isEmpty());
    }

    @Test
    void countsThePublishedCaseOfFivePeople() {
        Softener softener = Softeners.cubicFeet(32.0 / 30, 9, 48);
        DesignConditions duty = Softeners.duty(20, 0, 375, 0);
        Fit fit = Fit.of(DosedSoftener.designed(softener, 15 * Softeners.POUND_PER_CUBIC_FOOT, 12), duty, true,
                Fit.Datasheet.TANK_ALONE);
        assertEquals(32_000, CapacityUnit.GRAIN.fromBase(fit.dosed().capacityGrams()), 1e-6, "nameplate end: common practice");
        assertEquals(7_500, CapacityUnit.GRAIN.fromBase(fit.dailyLoadGrams()), 1e-6, "WQP, Sizing Softeners, 2009");
        assertEquals(4.27, fit.fullChargeDays().value(), 0.005, "WQP, Sizing Softeners, 2009");
        assertEquals(2_000, SaltEfficiencyUnit.GRAIN_PER_POUND.fromBase(fit.dosed().saltEfficiencyGramsPerGram()), 1e-6,
                "30,000 gr for 15\u00a0lb: common practice; WQP prints 2,133 for 32,000 gr of the same 15\u00a0lb");
        assertTrue(fit.fits(), fit.shortcomings().toString());
    }

    @Test
    void saysWhyASoftenerDoesNotFit() {
        DesignConditions duty = Softeners.duty(30, 0, 400, 0.4);
        Softener shallow = Softeners.cubicFeet(0.5, 12, 20);
        Fit fit = Fit.of(DosedSoftener.designed(shallow, 10 * Softeners.POUND_PER_CUBIC_FOOT, 12), duty, false,
                new Fit.Datasheet(OptionalDouble.of(5), OptionalDouble.of(6), TankSize.KNOWN));
        assertEquals(List.of(Shortcoming.INTERVAL_TOO_SHORT, Shortcoming.SERVICE_STANDARD_NOT_MET,
                Shortcoming.CONTINUOUS_FLOW_TOO_HIGH, Shortcoming.PEAK_FLOW_TOO_HIGH, Shortcoming.BED_TOO_SHALLOW),
                fit.shortcomings());
        assertEquals(5, fit.continuous().limitLitresPerMinute(), "the maker's rating binds below the guide");
        assertFalse(fit.fits());
        assertNull(fit.continuous().binding(), "no limit of the bed");
        assertNotNull(Fit.of(fit.dosed(), duty, false, Fit.Datasheet.TANK_ALONE).continuous().binding());
        assertTrue(Message.of(Shortcoming.BED_TOO_SHALLOW).inMetricUnits(true).toString().contains("61\u00a0cm"),
                "24\u00a0in: NIST SP 811");
        Softener full = Softeners.cubicFeet(1, 9, 30);
        assertTrue(Fit.of(DosedSoftener.designed(full, 100, 12), duty, false, Fit.Datasheet.TANK_ALONE).shortcomings()
                .contains(Shortcoming.NO_ROOM_FOR_BACKWASH));
        assertTrue(Message.of(Shortcoming.NO_ROOM_FOR_BACKWASH).toString().contains("half"));
    }

    @Test
    void hasNoIntervalWhereNothingIsUsed() {
        DesignConditions unused = Softeners.duty(20, 0, 0, 0);
        DoseChoice choice = DoseSearch.cheapest(Softeners.cubicFeet(1, 9, 48), unused, COST);
        assertFalse(Fit.of(choice.best().dosed(), unused, true, Fit.Datasheet.TANK_ALONE).fullChargeDays().exists());
        assertEquals(365 / 14.0, choice.best().year().regenerations(), 1e-9, "override every 14 days");
    }

    @Test
    void choosesTheCheapestDoseThatServes() {
        DesignConditions duty = Softeners.duty(20, 0, 240, 0.4);
        DoseChoice choice = DoseSearch.cheapest(Softeners.cubicFeet(1.5, 10, 54), duty, COST);
        assertEquals(19, choice.options().size(), "6 to 15\u00a0lb/ft3 by halves");
        for (DoseChoice.Option option : choice.options()) {
            assertTrue(option.year().hardDays() <= 1 && choice.best().costPerYear() <= option.costPerYear());
        }
        assertTrue(choice.band(duty).stream().allMatch(option -> option.costPerYear() <= 1.02 * choice.best().costPerYear()));
        DesignConditions heavy = Softeners.duty(40, 0, 600, 0.4);
        DoseChoice nearest = DoseSearch.cheapest(Softeners.cubicFeet(1, 9, 48), heavy, COST);
        assertEquals(15, nearest.best().dosed().saltDoseGramsPerLitre() / Softeners.POUND_PER_CUBIC_FOOT, 1e-9,
                "none serves, so the one that comes nearest");
        assertEquals(List.of(DoseChoice.Limit.SERVICE_STANDARD, DoseChoice.Limit.INTERVAL), nearest.unmet(heavy));
    }

    @Test
    void saysWhatWouldServeWhereNoSettingDoes() {
        DesignConditions heavy = Softeners.duty(40, 0, 600, 0.4);
        DoseChoice nearest = DoseSearch.cheapest(Softeners.cubicFeet(1, 9, 48), heavy, COST);
        List<ServiceRemedy> remedies = ServiceRemedy.of(nearest, heavy, COST);
        assertEquals(List.of(ServiceRemedy.Kind.LARGER_BED, ServiceRemedy.Kind.TWIN_BEDS, ServiceRemedy.Kind.TREATED_WATER),
                remedies.stream().map(ServiceRemedy::kind).toList());
        for (ServiceRemedy remedy : remedies) {
            assertTrue(remedy.year().hardDays() <= 1, remedy.kind() + " has " + remedy.year().hardDays());
        }
        DesignConditions easy = Softeners.duty(20, 0, 240, 0.4);
        Softener enough = Softeners.cubicFeet(1.5, 10, 54);
        assertEquals(List.of(), ServiceRemedy.of(DoseSearch.cheapest(enough, easy, COST), easy, COST));
    }

    @Test
    void leavesOutTheLowestDosesOnADifficultWater() {
        DesignConditions duty = Softeners.duty(Softeners.water(20, 0, 800), 200, 0.4);
        DoseChoice choice = DoseSearch.cheapest(Softeners.cubicFeet(1.5, 10, 54), duty, COST);
        assertEquals(8, choice.options().get(0).dosed().saltDoseGramsPerLitre() / Softeners.POUND_PER_CUBIC_FOOT, 1e-9,
                "trade association booklet: lowest doses do not hold above 750\u00a0mg/L");
    }

    @Test
    void ranksWhatFitsFirstThenByCostOverTheLife() {
        DesignConditions duty = Softeners.duty(20, 0, 240, 0.4);
        Softener small = Softeners.cubicFeet(1, 9, 48);
        Softener large = Softeners.cubicFeet(2, 12, 52);
        Softener shallow = Softeners.cubicFeet(1, 14, 40);
        List<Ranked> bySize = Sizing.rank(List.of(candidate("large", large, OptionalDouble.empty()),
                candidate("shallow", shallow, OptionalDouble.empty()), candidate("small", small, OptionalDouble.empty())),
                duty, COST, OptionalDouble.empty());
        assertEquals(List.of("large", "small", "shallow"), names(bySize), "saves more over 15 years than a cubic foot of resin costs");
        assertEquals(bySize.get(1).option().costPerYear() + 150 / 15.0, bySize.get(1).costPerYear(), 1e-9,
                "150 for a cubic foot: common practice");
        List<Ranked> byCost = Sizing.rank(List.of(candidate("small", small, OptionalDouble.of(3_000)),
                candidate("large", large, OptionalDouble.of(500))), duty, COST, OptionalDouble.of(120));
        assertEquals(List.of("large", "small"), names(byCost));
        assertEquals(byCost.get(0).option().costPerYear() + 500 / 15.0, byCost.get(0).costPerYear(), 1e-9);
    }

    private static Candidate candidate(String name, Softener softener, OptionalDouble price) {
        return new Candidate(name, softener, Fit.Datasheet.TANK_ALONE, price);
    }

    private static List<String> names(List<Ranked> ranked) {
        return ranked.stream().map(one -> one.candidate().name()).toList();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.75, 1, 1.5, 2})
    void morePeopleNeverLengthenTheInterval(double cubicFeet) {
        Softener softener = Softeners.cubicFeet(cubicFeet, 10, 54);
        double before = Double.POSITIVE_INFINITY;
        for (int people = 1; people <= 10; people++) {
            Fit fit = Fit.of(DosedSoftener.designed(softener, 8 * Softeners.POUND_PER_CUBIC_FOOT, 12),
                    Softeners.duty(20, 0, 60 * people, 0), true, Fit.Datasheet.TANK_ALONE);
            assertTrue(fit.fullChargeDays().value() <= before, people + " people");
            before = fit.fullChargeDays().value();
        }
    }

    @Test
    void setsAMeterByWholeGrainsAndHundreds() {
        DesignConditions duty = Softeners.duty(20.2, 0, 240, 0.4);
        MeterSettings settings = MeterSettings.of(DosedSoftener.designed(Softeners.cubicFeet(1, 9, 48),
                7 * Softeners.POUND_PER_CUBIC_FOOT, 12), duty);
        assertEquals(21, HardnessUnit.GPG.fromBase(settings.hardnessMgPerL()), 1e-9);
        assertEquals(0, CapacityUnit.GRAIN.fromBase(settings.capacityGrams()) % 100, 1e-6);
        assertEquals(22_100, CapacityUnit.GRAIN.fromBase(settings.capacityGrams()), 1e-6);
        assertEquals(22_100 / 21.0, settings.meterLitres() / Exact.US_GALLON_LITRES, 1e-9);
        assertEquals(14, settings.overrideDays());
        assertEquals(8, MeterSettings.of(DosedSoftener.designed(Softeners.cubicFeet(1, 9, 48), 120, 12),
                Softeners.duty(20, 0.5, 240, 0.4)).overrideDays(), "14 days times 0.3\u00a0mg/L over 0.5\u00a0mg/L, whole days");
        assertEquals(100, CapacityUnit.GRAIN.fromBase(ControllerTerms.US.capacityDownGrams(0.1)), 1e-9);
        for (int hundreds = 1; hundreds < 1_000; hundreds++) {
            assertEquals(100 * hundreds, CapacityUnit.GRAIN.fromBase(ControllerTerms.US.capacityDownGrams(
                    CapacityUnit.GRAIN.toBase(100 * hundreds))), 1e-6, "what is whole stays");
        }
    }

    @Test
    void refusesATankLowerThanItsBed() {
        assertThrows(IllegalArgumentException.class, () -> Softeners.cubicFeet(2, 9, 40));
        assertThrows(IllegalArgumentException.class, () -> new RunningCost(-1, 0));
    }

    @Test
    void reportsABedThatIsLargerThanNeeded() {
        DesignConditions small = Softeners.duty(10, 0, 100, 0.4);
        assertTrue(Fit.of(DosedSoftener.designed(Softeners.cubicFeet(2, 12, 52), 130, 12), small, true, Fit.Datasheet.TANK_ALONE)
                .largerThanNeeded(), "48,000 gr for 1,000 gr a day");
        DesignConditions slow = Softeners.duty(20, 0, 500, 0.4);
        assertTrue(Fit.of(DosedSoftener.designed(Softeners.cubicFeet(4, 16, 65), 130, 12), slow, true, Fit.Datasheet.TANK_ALONE)
                .largerThanNeeded(), "8\u00a0L/min are 0.5\u00a0gpm/ft3, below the 1\u00a0gpm/ft3 of Davis T8-2");
        assertFalse(Fit.of(DosedSoftener.designed(Softeners.cubicFeet(1, 9, 48), 130, 12), Softeners.duty(20, 0, 240, 0.4),
                true, Fit.Datasheet.TANK_ALONE).largerThanNeeded());
    }
}
