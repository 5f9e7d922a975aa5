package dev.brinebook.operation.resin;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.SurfaceFlowQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.BackwashFlow;
import dev.brinebook.regeneration.BackwashRule;
import dev.brinebook.resin.BackwashEffect;
import dev.brinebook.resin.BackwashGuide;
import dev.brinebook.softener.BedDuty;
import dev.brinebook.softener.BedHydraulics;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

@About("What lifts the bed: the upflow for the expansion aimed at, and what drain line flow controls do.")
public record BedBackwash(
        @Property(value = "The expansion aimed at, as a share of the settled depth.", min = 0, example = "0.5")
        BigDecimal targetExpansionShare,
        @Property("Upflow that lifts the bed so far.") SurfaceFlowQuantity targetVelocity,
        @Property("Flow that has that velocity.") FlowQuantity targetFlow,
        @Property(value = "Whether the tank has room for the bed lifted so far.", example = "true") Boolean roomForTarget,
        @Property("The drain line flow control to choose: the next half gallon per minute at or above the target, or the largest"
                + " that drain and supply allow.")
        DrainFlowEffect choose,
        @Property(value = "What the drain line flow control that is fitted gets: no more than drain and supply allow.",
                optional = "when softener.flows.drain is not given")
        DrainFlowEffect fitted,
        @Property(value = "Which of three decides the flow, of the flow control fitted or else of the one to choose.",
                example = "\"flowControl\"") BackwashRule rule,
        @Property("The flow that lifts the resin to the top of the tank, or to three times its depth where there is more"
                + " room: the drain line flow control must let less through.") FlowQuantity mostFlow,
        @Property("Published bands of velocities.") List<BackwashBand> bands) {

    static BedBackwash of(BedHydraulics hydraulics, BedDuty duty, AnswerUnits units) {
        double target = duty.targetExpansionShare();
        double targetFlow = hydraulics.backwashLitresPerMinute(target);
        BackwashFlow choose = hydraulics.chosenFlow(duty);
        BackwashEffect chosen = hydraulics.backwash(choose.litresPerMinute());
        double fitted = hydraulics.backwashFlow(duty).litresPerMinute();
        return new BedBackwash(Rounding.answer(target),
                units.surfaceFlow(hydraulics.bed().velocityMetresPerHour(targetFlow)), units.flow(targetFlow),
                hydraulics.hasRoomFor(target), DrainFlowEffect.of(choose.litresPerMinute(), chosen, units),
                duty.flows().drainLitresPerMinute().isEmpty() ? null
                        : DrainFlowEffect.of(fitted, hydraulics.backwash(fitted), units), hydraulics.backwashFlow(duty).rule(),
                units.flow(hydraulics.bed().flowLitresPerMinute(chosen.mostVelocityMetresPerHour())),
                Arrays.stream(BackwashGuide.values()).map(guide -> BackwashBand.of(guide, units)).toList());
    }

    static void explain(BedDuty duty, AnswerUnits units, Explanation explanation) {
        explanation.given("/backwash/targetExpansionShare");
        explanation.because("/backwash/targetVelocity", Message.of("falling velocity of a bead in water of this temperature,"
                + " times the voids of the lifted bed to a power"), "RICHARDSON-ZAKI");
        explanation.because("/backwash/targetVelocity", Message.of("drag of the falling bead"), "BARATI-2014");
        explanation.because("/backwash/targetFlow", Message.of("target velocity times the cross-section of the tank"),
                "RICHARDSON-ZAKI");
        explanation.because("/backwash/choose/flow", Message.of("target velocity times the cross-section of the tank, to the"
                + " next step of {0}, or to the largest that drain and supply allow",
                Text.of(units.flow(BackwashFlow.ASSUMED_STEP_LITRES_PER_MINUTE))), "CP-CYCLE");
        DrainFlowEffect.explain("/backwash/choose", explanation);
        if (duty.flows().drainLitresPerMinute().isPresent()) {
            explanation.because("/backwash/fitted/flow", Message.of("the least of the drain line flow control, what the drain takes"
                    + " and what the supply gives"), "CP-CYCLE");
            DrainFlowEffect.explain("/backwash/fitted", explanation);
        }
        explanation.because("/backwash/mostFlow", Message.of("the velocity at which the lifted bed is as high as the tank"),
                "RICHARDSON-ZAKI");
        explanation.because("/backwash/bands/0", BackwashBand.inWords(BackwashGuide.TEXTBOOK, units),
                BackwashGuide.TEXTBOOK.sourceKey());
        explanation.because("/backwash/bands/1", Message.of("{0}, asked of public plants",
                BackwashBand.inWords(BackwashGuide.PUBLIC_PLANTS, units)), BackwashGuide.PUBLIC_PLANTS.sourceKey());
    }
}
