// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
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
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

@SchemaDescription("Bed expansion: the upflow for the target expansion, and the effect of drain line flow controls.")
public record BedBackwash(
        @Basis
        @Property(value = "Target expansion, as a share of the settled depth.", min = 0, example = "0.5")
        BigDecimal targetExpansionShare,
        @Basis(formula = "formula.resin.fallingVelocityBeadWater", source = "RICHARDSON-ZAKI")
        @Basis(formula = "formula.common.dragFallingBead", source = "BARATI-2014")
        @Property("Upflow velocity for that expansion.") SurfaceFlowQuantity targetVelocity,
        @Basis(formula = "formula.common.targetVelocityCrossSection", source = "RICHARDSON-ZAKI")
        @Property("Flow at that velocity.") FlowQuantity targetFlow,
        @Property(value = "Whether the tank has room for the expanded bed.", example = "true") Boolean roomForTarget,
        @Property("Recommended drain line flow control: the next half gallon per minute at or above the target, or the largest that "
                + "drain and supply allow.")
        DrainFlowEffect choose,
        @Basis(formula = "formula.common.smallestDrainLineFlow", source = "CP-CYCLE")
        @Property(value = "Flow of the fitted drain line flow control, limited by drain and supply.",
                optional = "when softener.flows.drain is not given")
        DrainFlowEffect fitted,
        @Property(value = "Which of the three limits the flow of the fitted flow control, or of the recommended one if none is given.",
                example = "\"flowControl\"") BackwashRule rule,
        @Basis(formula = "formula.common.velocityLiftedBedHigh", source = "RICHARDSON-ZAKI")
        @Property("Flow that lifts the resin to the top of the tank, or to three times its depth if the tank is "
                + "taller. The drain line flow control must pass less.") FlowQuantity mostFlow,
        @Property(value = "Published ranges of velocities.", eachOf = BackwashGuide.class) List<BackwashBand> bands) {

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

    static void explain(AnswerUnits units, Explanation explanation) {
        explanation.because("/backwash/choose/flow", Message.of("formula.resin.targetVelocityCrossSection",
                Text.of(units.flow(BackwashFlow.ASSUMED_STEP_LITRES_PER_MINUTE))), "CP-CYCLE");
        explanation.because("/backwash/bands/0", BackwashBand.inWords(BackwashGuide.TEXTBOOK, units),
                BackwashGuide.TEXTBOOK.sourceKey());
        explanation.because("/backwash/bands/1", Message.of("formula.common.requiredPublicPlants",
                BackwashBand.inWords(BackwashGuide.PUBLIC_PLANTS, units)), BackwashGuide.PUBLIC_PLANTS.sourceKey());
    }
}
