// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.payback.ConvertedYears;
import dev.brinebook.payback.YearlyUse;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.softener.SoftenerSettings;
import java.math.BigDecimal;

@SchemaDescription("Consumption of a softener per year of 365 days.")
public record YearlyUseAnswer(
        @Property(value = "Regenerations.", optional = "when the use of a year is given without them", min = 0, example = "91.25")
        BigDecimal regenerations,
        @Property("Salt.") MassQuantity salt,
        @Property("Regeneration water.") VolumeQuantity water,
        @Property(value = "Paid service visits.", min = 0, example = "0") BigDecimal serviceVisits,
        @Property(value = "Hard days: days on which the bed was exhausted and hard water passed. A control with hard days "
                + "saves because it does not soften.", optional = "when the use of a year is given, and without softening",
                min = 0, unit = "days", example = "2") BigDecimal hardDays,
        @Property(value = "Unused capacity lost at regeneration, which a meter can save.",
                optional = "when the use of a year is given, and without softening") CapacityQuantity capacityThrownAway) {

    static YearlyUseAnswer given(YearlyUse use, boolean counted, AnswerUnits units) {
        return new YearlyUseAnswer(counted ? Rounding.answer(use.regenerationsPerYear()) : null,
                units.mass(use.saltKilograms()), units.volume(use.waterLitres()), Rounding.answer(use.serviceVisits()),
                null, null);
    }

    /** A year that was counted on days; {@code year} holds what hard water passed, null where nothing softens. */
    static YearlyUseAnswer of(YearlyUse use, SoftenerSettings.Year year, AnswerUnits units) {
        return new YearlyUseAnswer(Rounding.answer(use.regenerationsPerYear()), units.mass(use.saltKilograms()),
                units.volume(use.waterLitres()), Rounding.answer(use.serviceVisits()),
                year == null ? null : Rounding.toThousandth(year.totals().hardDays()),
                year == null ? null : units.capacity(year.totals().unusedGrams()));
    }

    /** A year that was tried, in the units of the answer. */
    public static YearlyUseAnswer tried(SoftenerSettings.Year year, AnswerUnits units) {
        YearlyUse use = ConvertedYears.use(year);
        return new YearlyUseAnswer(Rounding.answer(use.regenerationsPerYear()), units.mass(use.saltKilograms()),
                units.volume(use.waterLitres()), Rounding.answer(use.serviceVisits()),
                Rounding.toThousandth(year.totals().hardDays()), units.capacity(year.totals().unusedGrams()));
    }
}
