// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.caution.Caution;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Days;
import dev.brinebook.household.Demand;
import dev.brinebook.household.Occupancy;
import dev.brinebook.household.UseChange;
import dev.brinebook.household.UseModel;
import dev.brinebook.household.WeekdayMeans;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.regeneration.MeteredDelayed;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.ServiceStandard;
import dev.brinebook.water.CompensationFactors;
import dev.brinebook.water.WaterAnalysis;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What iron and manganese do to the bed, to what is set, and to the time between regenerations. */
class IronTest {

    private static DesignConditions duty(WaterAnalysis water, CompensationFactors factors, Occupancy occupancy) {
        UseModel model = new UseModel(WeekdayMeans.everyDay(900), DayVariation.ofCv(0.4), UseModel.EVEN_MONTHS, occupancy,
                UseChange.NONE);
        Demand demand = new Demand(model, Optional.empty(), 20, 8);
        return new DesignConditions(water, water.compensated(factors), demand, demand.days(LocalDate.of(2026, 1, 1), Days.PER_YEAR, 1),
                ServiceStandard.USUAL, 3, 0);
    }

    /** 6 gpg and 8 mg/L: 102.71 mg/L and 8 times 100.086 / 55.845, from the atomic weights, by hand. */
    @Test
    void theBedIsExhaustedByWhatTheWaterHoldsAndNotByTheMarginOfTheSetting() {
        WaterAnalysis water = Softeners.water(6, 8, 300);
        DesignConditions duty = duty(water, CompensationFactors.STANDARD, Occupancy.ALWAYS);
        assertEquals(102.709 + 14.338, duty.loadMgPerL(), 2e-3);
        assertEquals(38, HardnessUnit.GPG.fromBase(duty.settingMgPerL()), 1e-6, "6 and 4 for each mg/L of iron: common practice");
        assertEquals(0.9 * 117.047, duty.dailyLoadGrams(), 2e-3);
    }

    /** Bed and meter of 1,000 g at 6 gpg and 8 mg/L: set to 38 gpg, the meter calls after 1,537 L of the 8,544 that the bed lasts. */
    @Test
    void anOrdinaryMeterOnIronHasNoHardDaysThatTheWaterDoesNotHave() {
        DesignConditions duty = duty(Softeners.water(6, 8, 300), CompensationFactors.STANDARD, Occupancy.ALWAYS);
        Regeneration each = new Regeneration(1_000, 4_000, 200, 90);
        MeteredDelayed meter = new MeteredDelayed(1_000_000 / duty.settingMgPerL(), 0, 14);
        assertEquals(0, duty.year(meter, each).hardDays(), 1e-6);
        assertTrue(duty.isServed(meter, each));
    }

    @Test
    void factorsOfTheCallerMoveTheSettingAndNotTheLoad() {
        WaterAnalysis water = Softeners.water(10, 2, 300);
        DesignConditions none = duty(water, CompensationFactors.ofGpg(0, 0), Occupancy.ALWAYS);
        DesignConditions most = duty(water, CompensationFactors.ofGpg(10, 10), Occupancy.ALWAYS);
        assertEquals(10, HardnessUnit.GPG.fromBase(none.settingMgPerL()), 1e-6);
        assertEquals(30, HardnessUnit.GPG.fromBase(most.settingMgPerL()), 1e-6);
        assertEquals(none.loadMgPerL(), most.loadMgPerL());
    }

    @Test
    void asMuchHarderAWaterLoadsTheBedAsMuchMoreWhateverItsIron() {
        DesignConditions duty = duty(Softeners.water(6, 8, 300), CompensationFactors.STANDARD, Occupancy.ALWAYS);
        double before = 0;
        for (double factor : List.of(0.001, 0.1, 0.12, 0.13, 0.5, 0.9, 1.0, 1.5, 20.0)) {
            DesignConditions there = duty.with(factor, 1);
            assertEquals(factor * duty.loadMgPerL(), there.loadMgPerL(), 1e-9);
            assertTrue(there.hardness().totalMgPerL() > before, "and the setting never falls: " + factor);
            before = there.hardness().totalMgPerL();
        }
        assertEquals(duty.hardness().totalMgPerL() + 0.5 * duty.loadMgPerL(), duty.with(1.5, 1).hardness().totalMgPerL(), 1e-9,
                "the same iron in harder water");
    }

    /** By hand: 14 days times 0.3 mg/L over iron and manganese, in whole days. 14 days, 0.3 mg/L and 3 days: see the method. */
    @ParameterizedTest(name = "{0} and {1} mg/L: {2} days")
    @CsvSource({"0, 0, 14", "0.30, 0, 14", "0.31, 0, 13", "0.29, 0.02, 13", "0.35, 0, 12", "0.4, 0, 10", "0, 0.4, 10", "0.6, 0, 7",
        "1, 0.05, 4", "1.0, 0, 4", "1.4, 0, 3", "10, 5, 3"})
    void theOverrideShrinksWithIronAndManganeseTogether(double iron, double manganese, int days) {
        assertEquals(days, MeterSettings.overrideDays(iron + manganese));
    }

    @Test
    void theOverrideHasNoCliff() {
        int before = 14;
        for (int hundredths = 0; hundredths <= 1_000; hundredths++) {
            int days = MeterSettings.overrideDays(hundredths / 100.0);
            assertTrue(days <= before && days >= before - 1, hundredths / 100.0 + " mg/L: " + days + " after " + before);
            before = days;
        }
        assertEquals(3, before);
    }

    @ParameterizedTest(name = "{0} mg/L, mostly empty {1}: {2}")
    @CsvSource({"0.3, true, false", "0.31, true, true", "0.31, false, false", "2, true, true"})
    void aBedThatNobodyUsesIsBypassed(double iron, boolean empty, boolean told) {
        DesignConditions duty = duty(Softeners.water(20, iron, 300), CompensationFactors.STANDARD,
                empty ? Occupancy.Chain.ASSUMED_HOLIDAY_HOME : Occupancy.Chain.USUAL);
        assertEquals(told, duty.cautions().contains(Caution.IDLE_BED_WITH_IRON));
    }

    @Test
    void aCabinOfWeekendsIsMostlyEmptyToo() {
        DesignConditions always = duty(Softeners.water(20, 0.5, 300), CompensationFactors.STANDARD, Occupancy.ALWAYS);
        Demand weekends = new Demand(new WeekdayMeans(0, 0, 0, 0, 400, 700, 600), DayVariation.ofCv(0.4), Optional.empty(), 20, 8);
        DesignConditions cabin = new DesignConditions(always.water(), always.hardness(), weekends, weekends.days(LocalDate.of(2026, 1, 1),
                Days.PER_YEAR, 1),
                ServiceStandard.USUAL, 3, 0);
        assertTrue(cabin.cautions().contains(Caution.IDLE_BED_WITH_IRON), "3 days of 7");
        assertFalse(always.cautions().contains(Caution.IDLE_BED_WITH_IRON));
    }
}
