// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Demand;
import dev.brinebook.household.WeekdayMeans;
import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.regeneration.MeteredDelayed;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.ServiceStandard;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.Salt;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.Softener;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.water.CompensationFactors;
import dev.brinebook.water.WaterAnalysis;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ConvertedYearsTest {

    private static final double RESIN_LITRES = 28;
    private static final double DOSE = 160;
    private static final Prices PRICES = new Prices(0.5, 2, 3, 100, 0, 0.05);
    private static final Softener SOFTENER = new Softener(new ResinBed(RESIN_LITRES, 0.23), 1.22, Salt.SODIUM_CHLORIDE,
            CapacityTable.WORKING, CycleFlows.UNKNOWN);

    /**
     * Source: arithmetic on constant use. A clock of 4 nights runs 365 / 4 times, rounded down. A meter of 1,500 L that
     * keeps back the 250 L of a day runs every 1500 / 250 - 1 = 5 nights, 73 times.
     */
    @Test
    void countsBothControlsOnTheSameDays() {
        ConvertedYears years = ConvertedYears.of(found(4), new MeteredDelayed(1_500, 250, Policy.NO_OVERRIDE),
                duty(250, 0, 1));
        assertEquals(365 / 4.0, ConvertedYears.use(years.asFound()).regenerationsPerYear(), 1e-9);
        assertEquals(73, ConvertedYears.use(years.metered()).regenerationsPerYear(), 1e-9);
        assertEquals(365 / 4.0 * RESIN_LITRES * DOSE / 1000, ConvertedYears.use(years.asFound()).saltKilograms(), 1e-9);
        assertEquals((365 / 4.0 - 73) * RESIN_LITRES * DOSE / 1000 * 0.5, years.savedByMetering(PRICES).salt(), 1e-9);
        assertEquals(years.metered(), years.converted());
        assertEquals(0, years.savedByDose(PRICES).total());
    }

    /** Source: arithmetic, the clock stays so only the dose is another: 365/4 times 40 g/L less in 28 L, at 0.5 a kilogram. */
    @Test
    void putsAChangedDoseToTheDose() {
        SoftenerSettings found = found(4);
        ConvertedYears years = ConvertedYears.of(found, found.policy(), found.withDose(DOSE - 40, Map.of()),
                duty(250, 0, 1));
        assertEquals(0, years.savedByMetering(PRICES).total());
        assertEquals(365 / 4.0 * 40 * RESIN_LITRES / 1000 * 0.5, years.savedByDose(PRICES).salt(), 1e-9);
    }

    @Test
    void splitsTheSavingWithoutRest() {
        int more = 0;
        for (int seed = 0; seed < 50; seed++) {
            Random random = new Random(seed);
            double mean = 100 + 600 * random.nextDouble();
            DesignConditions duty = duty(mean, random.nextDouble(), seed);
            Policy meter = new MeteredDelayed(800 + 2_000 * random.nextDouble(), mean, 14);
            SoftenerSettings found = found(1 + random.nextInt(9));
            SoftenerSettings converted = found.withDose(80 + 160 * random.nextDouble(), Map.of()).with(meter);
            ConvertedYears years = ConvertedYears.of(found, meter, converted, duty);
            double whole = YearlyCost.of(ConvertedYears.use(years.asFound()), PRICES)
                    .minus(YearlyCost.of(ConvertedYears.use(years.converted()), PRICES)).total();
            assertEquals(whole, years.saved(PRICES).total(), 1e-9, "seed " + seed);
            assertEquals(whole, years.savedByMetering(PRICES).total() + years.savedByDose(PRICES).total(), 1e-9,
                    "seed " + seed);
            more += years.savedByMetering(PRICES).total() < 0 ? 1 : 0;
        }
        assertTrue(more > 0 && more < 50, "a meter must have used more in some households and less in others: " + more);
    }

    private static SoftenerSettings found(int everyDays) {
        return new SoftenerSettings(SOFTENER, DOSE, Map.of(), new ClockEveryDays(everyDays), 2);
    }

    private static DesignConditions duty(double meanLitres, double cv, long seed) {
        WaterAnalysis water = WaterAnalysis.ofHardness(300).bacteriaTested(true).build();
        Demand demand = new Demand(WeekdayMeans.everyDay(meanLitres), DayVariation.ofCv(cv), Optional.empty(), 20, 8);
        return new DesignConditions(water, water.compensated(CompensationFactors.STANDARD), demand,
                demand.days(LocalDate.of(2026, 1, 1), 365, seed), ServiceStandard.USUAL, 3, 0);
    }
}
