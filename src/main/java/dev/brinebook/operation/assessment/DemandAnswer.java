// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.answer.softener.FlowCheckAnswer;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.text.Message;

@SchemaDescription("Demand of the household on the softener.")
public record DemandAnswer(
        @Property("Mean softened use per day.") VolumeQuantity dailyUse,
        @Property("Softened use exceeded on 1 day in 1,000 of the busiest weekday and month.") VolumeQuantity highestDailyUse,
        @Property("Hardness load on the resin per mean day.") CapacityQuantity dailyLoad,
        @Property("Continuous flow.") FlowQuantity continuousFlow,
        @Property("Peak flow.") FlowQuantity peakFlow) {

    static DemandAnswer of(DesignConditions duty, AnswerUnits units, Explanation explanation) {
        explanation.because("/demand/dailyUse", Message.of("formula.common.indoorUseSoftenedShare"), "REU-2016");
        explanation.because("/demand/highestDailyUse", Message.of("formula.common.gammaDistributionUseDay"), "DAIAD");
        explanation.because("/demand/dailyLoad", Message.of("formula.common.meanSoftenedUseHardness"), "WQP-2009");
        FlowCheckAnswer.explainFlows("/demand/continuousFlow", "/demand/peakFlow", explanation);
        return new DemandAnswer(units.volume(duty.meanLitres()), units.volume(duty.demand().highDayLitres()),
                units.capacity(duty.dailyLoadGrams()), units.flow(duty.demand().continuousLitresPerMinute()),
                units.flow(duty.demand().peakLitresPerMinute()));
    }
}
