package dev.brinebook.regeneration.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.FlowQuantity;
import dev.brinebook.quantity.api.SurfaceFlowQuantity;
import dev.brinebook.quantity.api.TemperatureQuantity;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleStep.Kind;
import dev.brinebook.resin.BackwashEffect;
import dev.brinebook.resin.ResinBed;
import java.math.BigDecimal;

@About("The backwash: the flow it needs in this water, and what the flow it gets does to the bed.")
public record CycleBackwash(
        @Property("Temperature of the water that it is worked out for.") TemperatureQuantity waterTemperature,
        @Property("Upflow that lifts the bed by half.") SurfaceFlowQuantity targetVelocity,
        @Property("Flow that has that velocity.") FlowQuantity targetFlow,
        @Property("The drain line flow control that was given, or the next half gallon per minute at or above the target.")
        FlowQuantity flow,
        @Property("Its velocity.") SurfaceFlowQuantity velocity,
        @Property(value = "How far it lifts the bed, as a share of the settled depth.",
                optional = "when it carries the resin out of the tank", min = 0, example = "0.55") BigDecimal expansionShare,
        @Property(value = "Whether its velocity lies in the published band of 12 to 20 m/h. The band is for ordinary"
                + " temperatures: the expansion decides.", example = "true") Boolean velocityWithinBand,
        @Property("The flow that lifts the resin to the top of the tank, or to three times its depth where there is more"
                + " room: the drain line flow control must let less through.") FlowQuantity mostFlow) {

    static CycleBackwash of(ResinBed bed, Cycle cycle, BackwashEffect effect, double waterCelsius, AnswerUnits units) {
        return new CycleBackwash(units.temperature(waterCelsius),
                units.surfaceFlow(bed.velocityMetresPerHour(cycle.backwashTargetLitresPerMinute())),
                units.flow(cycle.backwashTargetLitresPerMinute()),
                units.flow(cycle.step(Kind.BACKWASH).flowLitresPerMinute()),
                units.surfaceFlow(effect.velocityMetresPerHour()),
                effect.expansionShare().exists() ? Rounding.answer(effect.expansionShare().value()) : null,
                effect.isWithinGuide(), units.flow(bed.flowLitresPerMinute(effect.mostVelocityMetresPerHour())));
    }

    static void explain(Explanation explanation) {
        explanation.because("/backwash/targetVelocity", "falling velocity of a bead of 0.62 mm in water of this"
                + " temperature, times the voids of the bed lifted by half to a power", "RICHARDSON-ZAKI");
        explanation.because("/backwash/targetVelocity", "drag of the falling bead", "BARATI-2014");
        explanation.because("/backwash/expansionShare", "the same, solved for the voids", "RICHARDSON-ZAKI");
        explanation.because("/backwash/velocityWithinBand", "12 to 20 m/h", "DAVIS");
        explanation.because("/backwash/velocityWithinBand", "6 to 8 gpm per square foot, 14.7 to 19.6 m/h, asked of"
                + " public plants", "TEN-STATES");
        CycleBed.explain(explanation);
    }
}
