// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.regeneration.ServiceStandard;
import java.math.BigDecimal;

@SchemaDescription("How rarely hard water may pass because the bed is exhausted. The same for every control type.")
public record ServiceStandardRequest(
        @Property(value = "Maximum expected hard days per year.", min = ServiceStandard.MIN_HARD_DAYS,
                max = ServiceStandard.MAX_HARD_DAYS, unit = "days a year", byDefault = ServiceStandard.ASSUMED_HARD_DAYS, example = "1")
        BigDecimal hardDaysPerYear,
        @Property(value = "Maximum with more use and less capacity than expected. 365 switches this test off.",
                min = ServiceStandard.MIN_HARD_DAYS, max = ServiceStandard.MAX_HARD_DAYS, unit = "days a year",
                fallback = "three times hardDaysPerYear", example = "3") BigDecimal stressedHardDaysPerYear,
        @Property(value = "Daily use in this test, divided by the expected use.", min = 1, max = ServiceStandard.MAX_STRESSED_USE,
                byDefault = ServiceStandard.ASSUMED_STRESSED_USE, example = "1.10") BigDecimal stressedUseFactor,
        @Property(value = "Capacity in this test, divided by the calculated capacity.", min = ServiceStandard.MIN_STRESSED_CAPACITY,
                max = 1,
                byDefault = ServiceStandard.ASSUMED_STRESSED_CAPACITY, example = "0.95") BigDecimal stressedCapacityFactor) {

    static final ServiceStandardRequest NONE = new ServiceStandardRequest(null, null, null, null);

    /** The standard in the domain, with its defaults recorded in {@code explanation}. */
    ServiceStandard toDomain(Explanation explanation) {
        double days = resolve("hardDaysPerYear", hardDaysPerYear, ServiceStandard.ASSUMED_HARD_DAYS, "days/year", explanation);
        double usual = Math.min(ServiceStandard.MAX_HARD_DAYS,
                days * ServiceStandard.ASSUMED_STRESSED_HARD_DAYS / ServiceStandard.ASSUMED_HARD_DAYS);
        double stressed = resolve("stressedHardDaysPerYear", stressedHardDaysPerYear, usual, "days/year", explanation);
        double use = resolve("stressedUseFactor", stressedUseFactor, ServiceStandard.ASSUMED_STRESSED_USE, null, explanation);
        double capacity = resolve("stressedCapacityFactor", stressedCapacityFactor, ServiceStandard.ASSUMED_STRESSED_CAPACITY, null,
                explanation);
        return new ServiceStandard(days, stressed, use, capacity);
    }

    private static double resolve(String name, BigDecimal given, double otherwise, String unit, Explanation explanation) {
        return explanation.resolve(given, otherwise,
                Resolved.of("/preferences/serviceStandard/" + name, otherwise, unit).byDefault("OWN-ASSUMPTION"));
    }
}
