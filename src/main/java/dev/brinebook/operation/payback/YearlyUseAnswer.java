package dev.brinebook.operation.payback;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.payback.ConvertedYears;
import dev.brinebook.payback.YearlyUse;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.softener.Setup;
import java.math.BigDecimal;

@About("What a softener uses in a year of 365 days.")
public record YearlyUseAnswer(
        @Property(value = "Regenerations.", optional = "when a year's use is given without them", min = 0, example = "91.25")
        BigDecimal regenerations,
        @Property("Salt.") MassQuantity salt,
        @Property("Water for regenerating.") VolumeQuantity water,
        @Property(value = "Paid service visits.", min = 0, example = "0") BigDecimal serviceVisits,
        @Property(value = "Days on which the bed was exhausted and hard water passed: a side that runs hard saves by not"
                + " softening.", optional = "when a year's use is given, and where nothing softens",
                min = 0, unit = "days", example = "2") BigDecimal hardDays,
        @Property(value = "Capacity that was still there when it regenerated: what a meter can save.",
                optional = "when a year's use is given, and where nothing softens") CapacityQuantity capacityThrownAway) {

    static YearlyUseAnswer given(YearlyUse use, boolean counted, AnswerUnits units) {
        return new YearlyUseAnswer(counted ? Rounding.answer(use.regenerationsPerYear()) : null,
                units.mass(use.saltKilograms()), units.volume(use.waterLitres()), Rounding.answer(use.serviceVisits()),
                null, null);
    }

    /** A year that was counted on days; {@code year} holds what hard water passed, null where nothing softens. */
    static YearlyUseAnswer of(YearlyUse use, Setup.Year year, AnswerUnits units) {
        return new YearlyUseAnswer(Rounding.answer(use.regenerationsPerYear()), units.mass(use.saltKilograms()),
                units.volume(use.waterLitres()), Rounding.answer(use.serviceVisits()),
                year == null ? null : Rounding.toThousandth(year.totals().hardDays()),
                year == null ? null : units.capacity(year.totals().unusedGrams()));
    }

    /** A year that was tried, in the units of the answer. */
    public static YearlyUseAnswer tried(Setup.Year year, AnswerUnits units) {
        YearlyUse use = ConvertedYears.use(year);
        return new YearlyUseAnswer(Rounding.answer(use.regenerationsPerYear()), units.mass(use.saltKilograms()),
                units.volume(use.waterLitres()), Rounding.answer(use.serviceVisits()),
                Rounding.toThousandth(year.totals().hardDays()), units.capacity(year.totals().unusedGrams()));
    }
}
