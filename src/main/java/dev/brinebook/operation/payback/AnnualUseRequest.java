// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.payback.YearlyUse;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("Consumption of a softener per year, from bills or other calculations.")
public record AnnualUseRequest(
        @Property(value = "Salt.", required = true, min = 0, max = YearlyUse.MAX_PER_YEAR, unit = "kg")
        MassQuantity saltPerYear,
        @Property(value = "Water sent to the drain by regenerations.", required = true, min = 0, max = YearlyUse.MAX_PER_YEAR,
                unit = "L") VolumeQuantity waterPerYear,
        @Property(value = "Paid service visits.", min = 0, max = YearlyUse.MAX_PER_YEAR, unit = "visits a year",
                fallback = "0", example = "1") BigDecimal serviceVisitsPerYear,
        @Property(value = "Regenerations. They have no cost beyond their salt and water.", min = 0,
                max = YearlyUse.MAX_PER_YEAR, unit = "regenerations a year", fallback = "unknown, not compared",
                example = "91.25") BigDecimal regenerationsPerYear) {

    /** The use in SI, with every value recorded in {@code explanation} below {@code name}. */
    YearlyUse toDomain(String name, Explanation explanation) {
        explanation.assume(name + ".saltPerYear", Text.of(saltPerYear), Origin.CALLER);
        explanation.assume(name + ".waterPerYear", Text.of(waterPerYear), Origin.CALLER);
        double visits = explanation.orDefault(name + ".serviceVisitsPerYear", serviceVisitsPerYear, 0,
                count -> Message.of("assumed.payback.visits", count));
        return new YearlyUse(regenerationsPerYear == null ? 0 : regenerationsPerYear.doubleValue(), saltPerYear.inBase(),
                waterPerYear.inBase(), visits);
    }
}
