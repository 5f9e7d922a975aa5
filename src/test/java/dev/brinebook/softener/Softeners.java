// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Demand;
import dev.brinebook.household.WeekdayMeans;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.SaltEfficiencyUnit;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.regeneration.ServiceStandard;
import dev.brinebook.resin.Brining.Direction;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.ColumnCapacity;
import dev.brinebook.resin.Columns;
import dev.brinebook.resin.FeedWater;
import dev.brinebook.resin.Resin;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.ResinEfficiency;
import dev.brinebook.resin.Salt;
import dev.brinebook.water.CompensatedHardness;
import dev.brinebook.water.CompensationFactors;
import dev.brinebook.water.WaterAnalysis;
import java.time.LocalDate;
import java.util.Optional;

/** Invented softeners and duties to test with. */
final class Softeners {

    static final double POUND_PER_CUBIC_FOOT = 16.01846337396014;
    static final LocalDate START = LocalDate.of(2026, 1, 1);

    private Softeners() {
    }

    static Softener cubicFeet(double cubicFeet, double diameterInches, double heightInches, CycleFlows flows) {
        return new Softener(new ResinBed(cubicFeet * Exact.CUBIC_FOOT_LITRES, diameterInches * Exact.INCH_METRES),
                heightInches * Exact.INCH_METRES, Salt.SODIUM_CHLORIDE, CapacityTable.WORKING, flows);
    }

    static Softener cubicFeet(double cubicFeet, double diameterInches, double heightInches) {
        return cubicFeet(cubicFeet, diameterInches, heightInches, CycleFlows.UNKNOWN);
    }

    /** A cubic foot that the column model knows, in water of 300 mg/L with much sodium. */
    static Softener salty(double sodiumMeqPerL) {
        FeedWater water = new FeedWater(0.004, 0.002, sodiumMeqPerL / 1000, 0);
        Softener plain = cubicFeet(1, 9, 48);
        return new Softener(plain.bed(), plain.tankHeightMetres(), plain.salt(), new ColumnCapacity(Resin.STANDARD, water,
                Direction.CO_CURRENT, ResinEfficiency.WORKING, 17.118, Columns.CALCULATED), plain.flows());
    }

    /** A duty with other limits. */
    static DesignConditions limited(DesignConditions duty, double minimumIntervalDays, double grainsPerPound) {
        return new DesignConditions(duty.water(), duty.hardness(), duty.demand(), duty.days(), duty.standard(),
                minimumIntervalDays, SaltEfficiencyUnit.GRAIN_PER_POUND.toBase(grainsPerPound));
    }

    /** The same without the line under stress. */
    static DesignConditions plain(DesignConditions duty) {
        return new DesignConditions(duty.water(), duty.hardness(), duty.demand(), duty.days(), new ServiceStandard(1, 365, 1, 1),
                duty.minimumIntervalDays(), duty.minimumSaltEfficiencyGramsPerGram());
    }

    static WaterAnalysis water(double gpg, double ironMgPerL, double solidsMgPerL) {
        return WaterAnalysis.ofHardness(HardnessUnit.GPG.toBase(gpg)).ironMgPerL(ironMgPerL).dissolvedSolidsMgPerL(solidsMgPerL)
                .bacteriaTested(true).build();
    }

    static DesignConditions duty(double gpg, double ironMgPerL, double gallonsPerDay, double cv) {
        return duty(water(gpg, ironMgPerL, 300), gallonsPerDay, cv);
    }

    static DesignConditions duty(WaterAnalysis water, double gallonsPerDay, double cv) {
        CompensatedHardness hardness = water.compensated(CompensationFactors.STANDARD);
        DayVariation variation = DayVariation.ofCv(cv);
        Demand demand = new Demand(WeekdayMeans.everyDay(gallonsPerDay * Exact.US_GALLON_LITRES), variation,
                Optional.empty(), 20, 8);
        return new DesignConditions(water, hardness, demand, demand.days(START, 365, 1), ServiceStandard.USUAL, 3, 0);
    }
}
