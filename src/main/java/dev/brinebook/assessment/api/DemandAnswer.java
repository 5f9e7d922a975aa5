package dev.brinebook.assessment.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.CapacityQuantity;
import dev.brinebook.quantity.api.FlowQuantity;
import dev.brinebook.quantity.api.VolumeQuantity;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.api.FlowCheckAnswer;
import dev.brinebook.wording.Message;

@About("What the household asks of the softener.")
public record DemandAnswer(
        @Property("Mean softened use of a day.") VolumeQuantity dailyUse,
        @Property("Highest softened use of a day in the year looked at.") VolumeQuantity highestDailyUse,
        @Property("Hardness that a mean day loads on the resin.") CapacityQuantity dailyLoad,
        @Property("Flow that lasts.") FlowQuantity continuousFlow,
        @Property("Flow of short peaks.") FlowQuantity peakFlow) {

    static DemandAnswer of(Duty duty, AnswerUnits units, Explanation explanation) {
        explanation.because("/demand/dailyUse", Message.of("indoor use times the share that is softened, over the days looked"
                + " at"), "REU-2016");
        explanation.because("/demand/highestDailyUse", Message.of("the highest of the year's days: equally likely parts of a"
                + " gamma distribution in an order set by the seed, or the days as measured"), "DAIAD");
        explanation.because("/demand/dailyLoad", Message.of("mean softened use times compensated hardness"), "WQP-2009");
        FlowCheckAnswer.explainFlows("/demand/continuousFlow", "/demand/peakFlow", explanation);
        return new DemandAnswer(units.volume(duty.days().meanLitres()), units.volume(duty.days().maxLitres()),
                units.capacity(duty.dailyLoadGrams()), units.flow(duty.demand().continuousLitresPerMinute()),
                units.flow(duty.demand().peakLitresPerMinute()));
    }
}
