// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.payback.YearlyUse;
import java.math.BigDecimal;

@SchemaDescription("Consumption of a softener per year, from bills or other calculations.")
public record AnnualUseRequest(
        @Property(value = "Salt.", required = true, min = 0, max = YearlyUse.MAX_PER_YEAR, unit = "kg")
        MassQuantity saltPerYear,
        @Property(value = "Water sent to the drain by regenerations.", required = true, min = 0, max = YearlyUse.MAX_PER_YEAR,
                unit = "L") VolumeQuantity waterPerYear,
        @Property(value = "Paid service visits.", min = 0, max = YearlyUse.MAX_PER_YEAR, unit = "visits/year",
                byDefault = ASSUMED_VISITS_PER_YEAR, example = "1") BigDecimal serviceVisitsPerYear,
        @Property(value = "Regenerations. They have no cost beyond their salt and water.", min = 0,
                max = YearlyUse.MAX_PER_YEAR, unit = "regenerations a year", fallback = "unknown, not compared",
                example = "91.25") BigDecimal regenerationsPerYear) {

    /** Without visits. */
    static final int ASSUMED_VISITS_PER_YEAR = 0;

    /** The use in SI, with every value recorded in {@code explanation} below {@code pointer}. */
    YearlyUse toDomain(String pointer, Explanation explanation) {
        explanation.assume(Resolved.of(pointer + "/saltPerYear", saltPerYear));
        explanation.assume(Resolved.of(pointer + "/waterPerYear", waterPerYear));
        double visits = explanation.resolve(serviceVisitsPerYear, Resolved.of(pointer + "/serviceVisitsPerYear",
                ASSUMED_VISITS_PER_YEAR, "visits/year").byDefault("OWN-ASSUMPTION"));
        return new YearlyUse(regenerationsPerYear == null ? 0 : regenerationsPerYear.doubleValue(), saltPerYear.inBase(),
                waterPerYear.inBase(), visits);
    }
}
