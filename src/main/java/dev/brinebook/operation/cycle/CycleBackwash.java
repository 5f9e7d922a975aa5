// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.cycle;

import dev.brinebook.answer.cycle.CycleBed;
import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
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
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("The backwash: the flow needed in this water, and the effect of the actual flow on the bed.")
public record CycleBackwash(
        @Basis
        @Property("Temperature of the backwash water.") TemperatureQuantity waterTemperature,
        @Basis(formula = "formula.regeneration.fallingVelocityBead0", source = "RICHARDSON-ZAKI")
        @Basis(formula = "formula.common.dragFallingBead", source = "BARATI-2014")
        @Property("Upflow velocity that expands the bed by 50 %.") SurfaceFlowQuantity targetVelocity,
        @Basis(formula = "formula.common.targetVelocityCrossSection", source = "RICHARDSON-ZAKI")
        @Property("Flow at that velocity.") FlowQuantity targetFlow,
        @Property("Actual flow: the drain line flow control given, or the next half gallon per minute at or above the target, limited "
                + "by drain and supply.")
        FlowQuantity flow,
        @Basis(formula = "formula.common.flowCrossSectionTank", source = "CP-CYCLE")
        @Property("Velocity of the actual flow.") SurfaceFlowQuantity velocity,
        @Basis(formula = "formula.common.formulaTargetVelocitySolved", source = "RICHARDSON-ZAKI")
        @Property(value = "Bed expansion, as a share of the settled depth.",
                optional = "when the flow carries the resin out of the tank", min = 0, example = "0.55") BigDecimal expansionShare,
        @Property(value = "Whether the velocity is in the published range of 12 to 20 m/h. The range applies to ordinary "
                + "temperatures. The expansion decides.", example = "true") Boolean velocityWithinBand,
        @Basis(formula = "formula.common.velocityLiftedBedHigh", source = "RICHARDSON-ZAKI")
        @Property("Flow that lifts the resin to the top of the tank, or to three times its depth if the tank "
                + "is taller. The drain line flow control must pass less.") FlowQuantity mostFlow) {

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
        explanation.because("/backwash/flow", Message.of("formula.regeneration.givenDrainLineFlow",
                Text.of(units.flow(BackwashFlow.ASSUMED_STEP_LITRES_PER_MINUTE))), "CP-CYCLE");
        explanation.because("/backwash/velocityWithinBand", band(BackwashGuide.TEXTBOOK, units),
                BackwashGuide.TEXTBOOK.sourceKey());
        explanation.because("/backwash/velocityWithinBand", Message.of("formula.common.requiredPublicPlants",
                band(BackwashGuide.PUBLIC_PLANTS, units)), BackwashGuide.PUBLIC_PLANTS.sourceKey());
        CycleBed.explain(units, explanation);
    }

    private static Message band(BackwashGuide guide, AnswerUnits units) {
        return Text.span(units.surfaceFlow(guide.minMetresPerHour()), units.surfaceFlow(guide.maxMetresPerHour()));
    }
}
