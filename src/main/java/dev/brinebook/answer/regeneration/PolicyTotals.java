package dev.brinebook.answer.regeneration;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.Days;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.Outcome;
import dev.brinebook.regeneration.YearlyTotals;
import java.math.BigDecimal;

@About("What a policy uses and delivers.")
public record PolicyTotals(
        @Property(value = "Regenerations.", min = 0, example = "91") BigDecimal regenerations,
        @Property(value = "Of these, started by the day override.", min = 0, example = "0") BigDecimal overrides,
        @Property("Salt.") MassQuantity salt,
        @Property("Regeneration water.") VolumeQuantity water,
        @Property(value = "Days on which the bed was exhausted and hard water passed.", min = 0, unit = "days", example = "2")
        BigDecimal hardDays,
        @Property("Hard water that passed because the bed was exhausted.") VolumeQuantity hardWater,
        @Property("Hard water that passed by the bed while an immediate regeneration ran.") VolumeQuantity bypassedWater,
        @Property("Capacity that was still there when it regenerated, and thrown away.") CapacityQuantity capacityThrownAway,
        @Property("Hardness removed.") CapacityQuantity hardnessRemoved) {

    /** What an outcome came to on its days, unscaled. */
    public static PolicyTotals ofDays(Outcome outcome, AnswerUnits units) {
        return of(YearlyTotals.of(outcome.totals(), Days.PER_YEAR), units);
    }

    /** What is to be expected of a year. */
    public static PolicyTotals of(YearlyTotals totals, AnswerUnits units) {
        return new PolicyTotals(Rounding.answer(totals.regenerations()), Rounding.answer(totals.overrides()),
                units.mass(totals.saltGrams() / 1000), units.volume(totals.waterLitres()),
                Rounding.toThousandth(totals.hardDays()), units.volume(totals.hardLitres()),
                units.volume(totals.bypassedLitres()), units.capacity(totals.unusedGrams()),
                units.capacity(totals.removedGrams()));
    }
}
