// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.regeneration.ServiceStandard;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("How rarely hard water may pass because the bed is exhausted. The same for every control type.")
public record ServiceStandardRequest(
        @Property(value = "Maximum expected hard days per year.", min = ServiceStandard.MIN_HARD_DAYS,
                max = ServiceStandard.MAX_HARD_DAYS, unit = "days a year", fallback = "1", example = "1")
        BigDecimal hardDaysPerYear,
        @Property(value = "Maximum with more use and less capacity than expected. 365 switches this test off.",
                min = ServiceStandard.MIN_HARD_DAYS, max = ServiceStandard.MAX_HARD_DAYS, unit = "days a year",
                fallback = "three times hardDaysPerYear", example = "3") BigDecimal stressedHardDaysPerYear,
        @Property(value = "Daily use in this test, divided by the expected use.", min = 1, max = ServiceStandard.MAX_STRESSED_USE,
                fallback = "1.10", example = "1.10") BigDecimal stressedUseFactor,
        @Property(value = "Capacity in this test, divided by the calculated capacity.", min = ServiceStandard.MIN_STRESSED_CAPACITY,
                max = 1,
                fallback = "0.95", example = "0.95") BigDecimal stressedCapacityFactor) {

    static final ServiceStandardRequest NONE = new ServiceStandardRequest(null, null, null, null);

    /** The standard in the domain, with its defaults recorded in {@code explanation}. */
    ServiceStandard toDomain(Explanation explanation) {
        double days = explanation.orDefault("preferences.serviceStandard.hardDaysPerYear", hardDaysPerYear,
                ServiceStandard.ASSUMED_HARD_DAYS, number -> Message.of("assumed.softener.daysYear", number));
        double usual = Math.min(ServiceStandard.MAX_HARD_DAYS,
                days * ServiceStandard.ASSUMED_STRESSED_HARD_DAYS / ServiceStandard.ASSUMED_HARD_DAYS);
        double stressed = stressedHardDaysPerYear == null ? usual : stressedHardDaysPerYear.doubleValue();
        double use = stressedUseFactor == null ? ServiceStandard.ASSUMED_STRESSED_USE : stressedUseFactor.doubleValue();
        double capacity = stressedCapacityFactor == null ? ServiceStandard.ASSUMED_STRESSED_CAPACITY
                : stressedCapacityFactor.doubleValue();
        explanation.assume("preferences.serviceStandard.stressedHardDaysPerYear", Message.of("assumed.softener.mostDaysTimesUse",
                Text.number(stressed), Text.number(use), Text.number(capacity)),
                stressedHardDaysPerYear == null ? Origin.DEFAULT : Origin.CALLER);
        return new ServiceStandard(days, stressed, use, capacity);
    }
}
