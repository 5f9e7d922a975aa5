// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.SurfaceFlowQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.resin.BackwashEffect;
import java.math.BigDecimal;

@SchemaDescription("A drain line flow control, and the effect of its flow on the bed.")
public record DrainFlowEffect(
        @Property("Flow.") FlowQuantity flow,
        @Basis(formula = "formula.common.flowCrossSectionTank", source = "CP-CYCLE")
        @Property("Velocity over the empty cross-section of the tank.") SurfaceFlowQuantity velocity,
        @Basis(formula = "formula.common.formulaTargetVelocitySolved", source = "RICHARDSON-ZAKI")
        @Property(value = "Bed expansion, as a share of the settled depth.",
                optional = "when the flow carries the resin out of the tank", min = 0, example = "0.59") BigDecimal expansionShare,
        @Property(value = "Whether the expanded bed stays in the tank.", example = "true") Boolean staysInTank,
        @Property(value = "Whether the expansion is too small to clean all of the bed.", example = "false") Boolean weak,
        @Property(value = "Whether the velocity is in the range of the textbook. The range applies to ordinary temperatures. "
                + "The expansion decides.", example = "true") Boolean velocityWithinBand) {

    static DrainFlowEffect of(double flowLitresPerMinute, BackwashEffect effect, AnswerUnits units) {
        return new DrainFlowEffect(units.flow(flowLitresPerMinute), units.surfaceFlow(effect.velocityMetresPerHour()),
                effect.expansionShare().exists() ? Rounding.answer(effect.expansionShare().value()) : null,
                !effect.losesResin(), effect.isWeak(), effect.isWithinGuide());
    }

    /** How far it lifts the bed, in percent of the settled depth, for a sentence. */
    BigDecimal expansionPercent() {
        return Text.whole(100 * expansionShare.doubleValue());
    }
}
