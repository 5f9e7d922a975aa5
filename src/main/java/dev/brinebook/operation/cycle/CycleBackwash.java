package dev.brinebook.operation.cycle;

import dev.brinebook.answer.cycle.CycleBed;
import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.SurfaceFlowQuantity;
import dev.brinebook.api.quantity.TemperatureQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.BackwashFlow;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleStep.Kind;
import dev.brinebook.resin.BackwashEffect;
import dev.brinebook.resin.BackwashGuide;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("The backwash: the flow it needs in this water, and what the flow it gets does to the bed.")
public record CycleBackwash(
        @Property("Temperature of the water that it is worked out for.") TemperatureQuantity waterTemperature,
        @Property("Upflow that lifts the bed by half.") SurfaceFlowQuantity targetVelocity,
        @Property("Flow that has that velocity.") FlowQuantity targetFlow,
        @Property("The least of the drain line flow control that was given, or the next half gallon per minute at or above the"
                + " target, and of what drain and supply allow.")
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

    static void explain(AnswerUnits units, Explanation explanation) {
        explanation.given("/backwash/waterTemperature");
        explanation.because("/backwash/targetVelocity", Message.of("falling velocity of a bead of 0.62 mm in water of this"
                + " temperature, times the voids of the bed lifted by half to a power"), "RICHARDSON-ZAKI");
        explanation.because("/backwash/targetVelocity", Message.of("drag of the falling bead"), "BARATI-2014");
        explanation.because("/backwash/targetFlow", Message.of("target velocity times the cross-section of the tank"),
                "RICHARDSON-ZAKI");
        explanation.because("/backwash/flow", Message.of("the drain line flow control that was given, or the target flow to the"
                + " next step of {0}; no more than drain and supply allow",
                Text.of(units.flow(BackwashFlow.ASSUMED_STEP_LITRES_PER_MINUTE))), "CP-CYCLE");
        explanation.because("/backwash/velocity", Message.of("flow over the cross-section of the tank"), "CP-CYCLE");
        explanation.because("/backwash/expansionShare", Message.of("the formula of targetVelocity, solved for the voids"),
                "RICHARDSON-ZAKI");
        explanation.because("/backwash/mostFlow", Message.of("the velocity at which the lifted bed is as high as the tank"),
                "RICHARDSON-ZAKI");
        explanation.because("/backwash/velocityWithinBand", band(BackwashGuide.TEXTBOOK, units),
                BackwashGuide.TEXTBOOK.sourceKey());
        explanation.because("/backwash/velocityWithinBand", Message.of("{0}, asked of public plants",
                band(BackwashGuide.PUBLIC_PLANTS, units)), BackwashGuide.PUBLIC_PLANTS.sourceKey());
        CycleBed.explain(units, explanation);
    }

    private static Message band(BackwashGuide guide, AnswerUnits units) {
        return Text.span(units.surfaceFlow(guide.minMetresPerHour()), units.surfaceFlow(guide.maxMetresPerHour()));
    }
}
