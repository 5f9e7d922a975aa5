// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.answer.regeneration.HardDaysRange;
import dev.brinebook.answer.regeneration.PolicyTotals;
import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("Smallest reserve that meets the service standard.")
public record SmallestReserveAnswer(
        @Basis
        @Property(value = "Maximum hard days per year requested.", min = 0, example = "1")
        BigDecimal hardDaysPerYear,
        @Basis(formula = "formula.regeneration.smallestNumberStepsHard", source = "FELLER")
        @Property(value = "The reserve, in steps of the controller.", optional = "when no reserve is sufficient") VolumeQuantity reserve,
        @Basis(formula = "formula.regeneration.reserveMeterVolume", source = "WQP-2009")
        @Property(value = "The same as a share of the meter volume.", optional = "when no reserve is sufficient", min = 0, max = 100,
                unit = "%", example = "22.5") BigDecimal shareOfMeterPercent,
        @Basis(formula = "formula.common.gammaDistributionUseDay", source = "DAIAD")
        @Property(value = "Probability that the use of a day of the busiest weekday stays below it, by the gamma distribution. Hard "
                + "days are rarer than this suggests, because most days do not start with the reserve alone.",
                optional = "when no reserve is sufficient", min = 0, max = 1, example = "0.87") BigDecimal dayBelowProbability,
        @Basis(formula = "chooseReserve.longRunHouseholdsDays", source = "FELLER")
        @Property(value = "Expected results per year with it.", optional = "when no reserve is sufficient") PolicyTotals year,
        @Basis(formula = "formula.softener.probabilityEachNumberHard", source = "FELLER")
        @Basis(formula = "formula.softener.oneLevelUseEach", source = "DAIAD")
        @Property(value = "Range of hard days in single years.", optional = "when no reserve is sufficient")
        HardDaysRange hardDaysRange,
        @Property(value = "Stable code of the reason why no reserve is sufficient.",
                optional = "when one is sufficient") NoResultReason reason,
        @Property(value = "The reason as a sentence.", optional = "when one is sufficient",
                example = "\"Even a softener that regenerates every night has more hard days than allowed.\"") Message why) {
}
