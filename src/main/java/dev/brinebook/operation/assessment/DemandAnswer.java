package dev.brinebook.operation.assessment;

import dev.brinebook.answer.softener.FlowCheckAnswer;
import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.softener.Duty;
import dev.brinebook.wording.Message;

@About("What the household asks of the softener.")
public record DemandAnswer(
        @Property("Mean softened use of a day.") VolumeQuantity dailyUse,
        @Property("Softened use that one day in a thousand of the busiest weekday and month exceeds.") VolumeQuantity highestDailyUse,
        @Property("Hardness that a mean day loads on the resin.") CapacityQuantity dailyLoad,
        @Property("Flow that lasts.") FlowQuantity continuousFlow,
        @Property("Flow of short peaks.") FlowQuantity peakFlow) {

    static DemandAnswer of(Duty duty, AnswerUnits units, Explanation explanation) {
        explanation.because("/demand/dailyUse", Message.of("indoor use times the share that is softened, vacant days"
                + " included"), "REU-2016");
        explanation.because("/demand/highestDailyUse", Message.of("gamma distribution of a day of the busiest weekday and"
                + " month"), "DAIAD");
        explanation.because("/demand/dailyLoad", Message.of("mean softened use times hardness, with iron and manganese at their"
                + " chemical equivalents"), "WQP-2009");
        FlowCheckAnswer.explainFlows("/demand/continuousFlow", "/demand/peakFlow", explanation);
        return new DemandAnswer(units.volume(duty.meanLitres()), units.volume(duty.demand().highDayLitres()),
                units.capacity(duty.dailyLoadGrams()), units.flow(duty.demand().continuousLitresPerMinute()),
                units.flow(duty.demand().peakLitresPerMinute()));
    }
}
