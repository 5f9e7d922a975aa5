// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.regeneration;

import dev.brinebook.api.Basis;
import dev.brinebook.api.From;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.softener.SoftenerSettings;
import java.math.BigDecimal;

@SchemaDescription("Expected results of a softener per year of 365 days, in the long run.")
public record YearTotals(
        @Property(value = "Regenerations.", min = 0, example = "91") BigDecimal regenerations,
        @From("regenerations")
        @Property("Salt.") MassQuantity salt,
        @From("regenerations")
        @Property("Regeneration water.") VolumeQuantity water,
        @Property(value = "Expected hard days: days on which the bed is exhausted and hard water passes.", min = 0, unit = "days",
                example = "0.8") BigDecimal hardDays,
        @Basis(formula = "formula.softener.probabilityEachNumberHard", source = "FELLER")
        @Basis(formula = "formula.softener.oneLevelUseEach", source = "DAIAD")
        @Property("Range of hard days in single years.") HardDaysRange hardDaysRange,
        @Property(value = "Share of the water that is hard because the bed is exhausted.", min = 0, max = 100, unit = "%",
                example = "0.12") BigDecimal hardWaterPercent,
        @Property("Hard water that passed because the bed was exhausted.") VolumeQuantity hardWater,
        @Property("Hard water used during regenerations, by the hourly profile of use.")
        VolumeQuantity hardWaterWhileRegenerating,
        @Property("Unused capacity lost at regeneration.") CapacityQuantity capacityThrownAway) {

    /** The totals in the units of the answer. */
    public static YearTotals of(SoftenerSettings.Year year, AnswerUnits units) {
        var totals = year.totals();
        return new YearTotals(Rounding.answer(totals.regenerations()), units.mass(totals.saltGrams() / 1000),
                units.volume(totals.waterLitres()), Rounding.toThousandth(totals.hardDays()),
                HardDaysRange.of(year.hardDays()), Rounding.toThousandth(100 * totals.hardShare()), units.volume(totals.hardLitres()),
                units.volume(year.hardWhileRegeneratingLitres()), units.capacity(totals.unusedGrams()));
    }
}
