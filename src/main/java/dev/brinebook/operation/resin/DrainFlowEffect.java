package dev.brinebook.operation.resin;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.SurfaceFlowQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.resin.BackwashEffect;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("A drain line flow control, and what its flow does to the bed.")
public record DrainFlowEffect(
        @Property("Its flow.") FlowQuantity flow,
        @Property("Its velocity over the empty cross-section of the tank.") SurfaceFlowQuantity velocity,
        @Property(value = "How far it lifts the bed, as a share of the settled depth.",
                optional = "when it carries the resin out of the tank", min = 0, example = "0.59") BigDecimal expansionShare,
        @Property(value = "Whether the lifted resin stays in the tank.", example = "true") Boolean staysInTank,
        @Property(value = "Whether it lifts the bed too little to clean all of it.", example = "false") Boolean weak,
        @Property(value = "Whether its velocity lies in the textbook's band. The band is for ordinary temperatures: the"
                + " expansion decides.", example = "true") Boolean velocityWithinBand) {

    static DrainFlowEffect of(double flowLitresPerMinute, BackwashEffect effect, AnswerUnits units) {
        return new DrainFlowEffect(units.flow(flowLitresPerMinute), units.surfaceFlow(effect.velocityMetresPerHour()),
                effect.expansionShare().exists() ? Rounding.answer(effect.expansionShare().value()) : null,
                !effect.losesResin(), effect.isWeak(), effect.isWithinGuide());
    }

    /** How far it lifts the bed, in percent of the settled depth, for a sentence. */
    BigDecimal expansionPercent() {
        return Text.number(100 * expansionShare.doubleValue());
    }

    static void explain(String pointer, Explanation explanation) {
        explanation.because(pointer + "/velocity", Message.of("flow over the cross-section of the tank"), "CP-CYCLE");
        explanation.because(pointer + "/expansionShare", Message.of("the formula of targetVelocity, solved for the voids"),
                "RICHARDSON-ZAKI");
    }
}
