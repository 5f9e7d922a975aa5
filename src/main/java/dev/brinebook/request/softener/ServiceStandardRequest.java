package dev.brinebook.request.softener;

import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.regeneration.ServiceStandard;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("How seldom hard water may pass because the bed is used up: the same for every way of starting regenerations.")
public record ServiceStandardRequest(
        @Property(value = "Most hard days to be expected in a year.", min = ServiceStandard.MIN_HARD_DAYS,
                max = ServiceStandard.MAX_HARD_DAYS, unit = "days a year", fallback = "1", example = "1")
        BigDecimal hardDaysPerYear,
        @Property(value = "Most where more is used and the bed gives less than is counted on; 365 to do without.",
                min = ServiceStandard.MIN_HARD_DAYS, max = ServiceStandard.MAX_HARD_DAYS, unit = "days a year",
                fallback = "three times hardDaysPerYear", example = "3") BigDecimal stressedHardDaysPerYear,
        @Property(value = "Use of a day there, over what it is.", min = 1, max = ServiceStandard.MAX_STRESSED_USE,
                fallback = "1.10", example = "1.10") BigDecimal stressedUseFactor,
        @Property(value = "Capacity there, over what it is.", min = ServiceStandard.MIN_STRESSED_CAPACITY, max = 1,
                fallback = "0.95", example = "0.95") BigDecimal stressedCapacityFactor) {

    static final ServiceStandardRequest NONE = new ServiceStandardRequest(null, null, null, null);

    /** The standard in the domain, with its defaults told to {@code explanation}. */
    ServiceStandard toDomain(Explanation explanation) {
        double days = explanation.orDefault("preferences.serviceStandard.hardDaysPerYear", hardDaysPerYear,
                ServiceStandard.ASSUMED_HARD_DAYS, number -> Message.counted("{0} day a year", "{0} days a year", number));
        double usual = Math.min(ServiceStandard.MAX_HARD_DAYS,
                days * ServiceStandard.ASSUMED_STRESSED_HARD_DAYS / ServiceStandard.ASSUMED_HARD_DAYS);
        double stressed = stressedHardDaysPerYear == null ? usual : stressedHardDaysPerYear.doubleValue();
        double use = stressedUseFactor == null ? ServiceStandard.ASSUMED_STRESSED_USE : stressedUseFactor.doubleValue();
        double capacity = stressedCapacityFactor == null ? ServiceStandard.ASSUMED_STRESSED_CAPACITY
                : stressedCapacityFactor.doubleValue();
        explanation.assume("preferences.serviceStandard.stressedHardDaysPerYear", Message.of("at most {0} with {1} times the use"
                + " and {2} times the capacity", Text.number(stressed), Text.number(use), Text.number(capacity)),
                stressedHardDaysPerYear == null ? Origin.DEFAULT : Origin.CALLER);
        return new ServiceStandard(days, stressed, use, capacity);
    }
}
