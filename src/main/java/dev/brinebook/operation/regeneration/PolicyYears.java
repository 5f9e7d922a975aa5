// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.household.SampledYears;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.SimulatedYears;
import dev.brinebook.regeneration.Totals;
import java.math.BigDecimal;

@SchemaDescription("Results of a policy in many simulated years of 365 days. All policies have the same years.")
public record PolicyYears(
        @Basis
        @Property(value = "Years simulated.", min = SimulatedYears.MIN_YEARS, max = SampledYears.MAX_YEARS, example = "500")
        Integer years,
        @Property("Regenerations per year.") YearSpread regenerations,
        @Property("Salt per year.") MassSpread salt,
        @Property("Regeneration water per year.") VolumeSpread water,
        @Property("Days per year on which the bed was exhausted.") YearSpread hardDays,
        @Property("Hard water per year that passed because the bed was exhausted.") VolumeSpread hardWater,
        @Property("Hard water per year that bypassed the bed during immediate regenerations.")
        VolumeSpread bypassedWater,
        @Property("Unused capacity lost at regenerations per year.")
        CapacitySpread capacityThrownAway,
        @Property(value = "Share of the years with at least one hard day.", min = 0, max = 100, unit = "%", example = "12.4")
        BigDecimal yearsWithHardDaysPercent) {

    static PolicyYears of(SimulatedYears years, AnswerUnits units) {
        return new PolicyYears(years.count(), YearSpread.of(years.spread(Totals::regenerations)),
                MassSpread.of(years.spread(Totals::saltGrams), units),
                VolumeSpread.of(years.spread(Totals::waterLitres), units), YearSpread.of(years.spread(Totals::hardDays)),
                VolumeSpread.of(years.spread(Totals::hardLitres), units),
                VolumeSpread.of(years.spread(Totals::bypassedLitres), units),
                CapacitySpread.of(years.spread(Totals::unusedGrams), units),
                Rounding.answer(100 * years.yearsWithHardDaysShare()));
    }
}
