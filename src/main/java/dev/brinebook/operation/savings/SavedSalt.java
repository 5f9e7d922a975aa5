// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.household.Days;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.savings.SavingsError;
import dev.brinebook.savings.SavingsEstimate;
import java.math.BigDecimal;

@SchemaDescription("Salt saved at the use before the change, with the interval that holds it with 90 %. A number below 0 is more salt.")
public record SavedSalt(
        @Property(value = "Share of the salt that is saved.", unit = "%", example = "27.4") BigDecimal percent,
        @Property(value = "Low end of its interval.", unit = "%", example = "18.9") BigDecimal lowPercent,
        @Property(value = "High end of its interval.", unit = "%", example = "35") BigDecimal highPercent,
        @Property(value = "Its standard uncertainty.", min = 0, unit = "%", example = "4.9") BigDecimal uncertaintyPercent,
        @Property("Salt a year before the change.") MassQuantity beforePerYear,
        @Property("Salt a year after it, at the use before.") MassQuantity afterPerYear,
        @Property("Salt saved a year.") MassQuantity savedPerYear,
        @Property("Low end of its interval.") MassQuantity savedLow,
        @Property("High end of its interval.") MassQuantity savedHigh,
        @Property(value = "What makes it most uncertain: the salt of a regeneration, bags and levels, the count of regenerations, the "
                + "use of some days for that of the long run, or a level of use that was not read.", example = "\"count\"")
        SavingsError largestError) {

    static SavedSalt of(SavingsEstimate estimate, AnswerUnits units) {
        double year = Days.PER_YEAR * estimate.before();
        return new SavedSalt(percent(estimate.share()), percent(estimate.low()), percent(estimate.high()),
                percent(estimate.uncertainty()), units.mass(year), units.mass(Days.PER_YEAR * estimate.after()),
                units.mass(year * estimate.share()), units.mass(year * estimate.low()), units.mass(year * estimate.high()),
                estimate.largestError());
    }

    static BigDecimal percent(double share) {
        return Rounding.answer(100 * share);
    }
}
