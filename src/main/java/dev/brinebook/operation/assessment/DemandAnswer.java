// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.api.Basis;
import dev.brinebook.api.From;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.softener.DesignConditions;

@SchemaDescription("Demand of the household on the softener.")
public record DemandAnswer(
        @Basis(formula = "formula.common.indoorUseSoftenedShare", source = "REU-2016")
        @Property("Mean softened use per day.") VolumeQuantity dailyUse,
        @Basis(formula = "formula.household.highestDayQuantile", source = "DAIAD")
        @From("dailyUse")
        @Property("Softened use exceeded on 1 day in 1,000 of the busiest weekday and month.") VolumeQuantity highestDailyUse,
        @Basis(formula = "formula.common.meanSoftenedUseHardness", source = "WQP-2009")
        @From({"dailyUse", "/hardness/real"})
        @Property("Hardness load on the resin per mean day.") CapacityQuantity dailyLoad,
        @Basis(formula = "formula.softener.givenOrOneShower", source = "BUCHBERGER-2017")
        @Property("Continuous flow.") FlowQuantity continuousFlow,
        @Basis(formula = "formula.softener.givenOrLargerContinuous", source = "BUCHBERGER-2017")
        @From("continuousFlow")
        @Property("Peak flow.") FlowQuantity peakFlow) {

    static DemandAnswer of(DesignConditions duty, AnswerUnits units) {
        return new DemandAnswer(units.volume(duty.meanLitres()), units.volume(duty.demand().highDayLitres()),
                units.capacity(duty.dailyLoadGrams()), units.flow(duty.demand().continuousLitresPerMinute()),
                units.flow(duty.demand().peakLitresPerMinute()));
    }
}
