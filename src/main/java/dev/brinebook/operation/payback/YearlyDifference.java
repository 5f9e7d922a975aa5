package dev.brinebook.operation.payback;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.payback.YearlyUse;
import dev.brinebook.quantity.Rounding;
import java.math.BigDecimal;

@About("What a year after the change no longer uses; negative where it uses more.")
public record YearlyDifference(
        @Property(value = "Regenerations.", optional = "when a year's use is given without them",
                unit = "regenerations a year", example = "26.84")
        BigDecimal regenerations,
        @Property("Salt.") MassQuantity salt,
        @Property("Water for regenerating.") VolumeQuantity water,
        @Property(value = "Paid service visits.", unit = "visits a year", example = "0") BigDecimal serviceVisits) {

    /** {@code before} less {@code after}; regenerations only where {@code counted}. */
    public static YearlyDifference of(YearlyUse before, YearlyUse after, boolean counted, AnswerUnits units) {
        return new YearlyDifference(
                counted ? Rounding.answer(before.regenerationsPerYear() - after.regenerationsPerYear()) : null,
                units.mass(before.saltKilograms() - after.saltKilograms()),
                units.volume(before.waterLitres() - after.waterLitres()),
                Rounding.answer(before.serviceVisits() - after.serviceVisits()));
    }
}
