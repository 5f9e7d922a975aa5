// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.regeneration;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.Days;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.SimulationResult;
import dev.brinebook.regeneration.YearlyTotals;
import java.math.BigDecimal;

@SchemaDescription("Consumption and performance of a policy.")
public record PolicyTotals(
        @Property(value = "Regenerations.", min = 0, example = "91") BigDecimal regenerations,
        @Property(value = "Regenerations started by the day override.", min = 0, example = "0") BigDecimal overrides,
        @Property("Salt.") MassQuantity salt,
        @Property("Regeneration water.") VolumeQuantity water,
        @Property(value = "Hard days: days on which the bed was exhausted and hard water passed.", min = 0, unit = "days", example = "2")
        BigDecimal hardDays,
        @Property("Hard water that passed because the bed was exhausted.") VolumeQuantity hardWater,
        @Property("Hard water that bypassed the bed during immediate regenerations.") VolumeQuantity bypassedWater,
        @Property("Unused capacity lost at regeneration.") CapacityQuantity capacityThrownAway,
        @Property("Hardness removed.") CapacityQuantity hardnessRemoved) {

    /** What an outcome came to on its days, unscaled. */
    public static PolicyTotals ofDays(SimulationResult outcome, AnswerUnits units) {
        return of(YearlyTotals.of(outcome.totals(), Days.PER_YEAR), units);
    }

    /** Expected results per year. */
    public static PolicyTotals of(YearlyTotals totals, AnswerUnits units) {
        return new PolicyTotals(Rounding.answer(totals.regenerations()), Rounding.answer(totals.overrides()),
                units.mass(totals.saltGrams() / 1000), units.volume(totals.waterLitres()),
                Rounding.toThousandth(totals.hardDays()), units.volume(totals.hardLitres()),
                units.volume(totals.bypassedLitres()), units.capacity(totals.unusedGrams()),
                units.capacity(totals.removedGrams()));
    }
}
