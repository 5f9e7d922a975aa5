package dev.brinebook.operation.payback;

import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.payback.YearlyUse;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("What a softener uses in a year, as read from bills or worked out elsewhere.")
public record AnnualUseRequest(
        @Property(value = "Salt.", required = true, min = 0, max = YearlyUse.MAX_PER_YEAR, unit = "kg")
        MassQuantity saltPerYear,
        @Property(value = "Water sent to drain by regenerating.", required = true, min = 0, max = YearlyUse.MAX_PER_YEAR,
                unit = "L") VolumeQuantity waterPerYear,
        @Property(value = "Paid service visits.", min = 0, max = YearlyUse.MAX_PER_YEAR, unit = "visits a year",
                fallback = "0", example = "1") BigDecimal serviceVisitsPerYear,
        @Property(value = "Regenerations. They cost nothing beside their salt and water.", min = 0,
                max = YearlyUse.MAX_PER_YEAR, unit = "regenerations a year", fallback = "unknown, not compared",
                example = "91.25") BigDecimal regenerationsPerYear) {

    /** The use in SI, with every value told to {@code explanation} below {@code name}. */
    YearlyUse toDomain(String name, Explanation explanation) {
        explanation.assume(name + ".saltPerYear", Text.of(saltPerYear), Origin.CALLER);
        explanation.assume(name + ".waterPerYear", Text.of(waterPerYear), Origin.CALLER);
        double visits = explanation.orDefault(name + ".serviceVisitsPerYear", serviceVisitsPerYear, 0,
                count -> Message.of("{0} visits", count));
        return new YearlyUse(regenerationsPerYear == null ? 0 : regenerationsPerYear.doubleValue(), saltPerYear.inBase(),
                waterPerYear.inBase(), visits);
    }
}
