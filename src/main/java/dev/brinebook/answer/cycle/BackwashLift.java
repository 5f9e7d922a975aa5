// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.cycle;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.BackwashFlow;
import dev.brinebook.regeneration.BackwashRule;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.resin.Backwash;
import dev.brinebook.resin.BackwashEffect;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;

@SchemaDescription("Backwash flow at this site, and the bed expansion it gives.")
public record BackwashLift(
        @Basis(formula = "formula.common.smallestDrainLineFlow", source = "CP-CYCLE")
        @Property("Smallest of the drain line flow control, the maximum flow of the drain and the maximum flow of "
                + "the supply.") FlowQuantity flow,
        @Property(value = "Which of the three limits the flow.", example = "\"flowControl\"") BackwashRule rule,
        @Basis(formula = "formula.regeneration.velocityBeads062", source = "RICHARDSON-ZAKI")
        @Property(value = "Bed expansion at the water's temperature, in percent of the settled depth.",
                optional = "when the flow carries the resin out of the tank", min = 0, unit = "%", example = "55") BigDecimal liftPercent,
        @Basis(formula = "formula.regeneration.halfBedDepthUsual", source = "CP-CYCLE")
        @Property(value = "Target bed expansion.", min = 0, unit = "%", example = "50") BigDecimal targetPercent,
        @Property(value = "Whether the expansion is too small to clean all of the bed.", example = "false") Boolean weak,
        @Property(value = "The same in words, with the remedy if the expansion is too small.",
                example = "\"The drain line flow control limits the backwash to 3 gpm.\"") Message sentence) {

    private static final double PERCENT = 100;

    /** The backwash of {@code cycle}. */
    static BackwashLift of(Cycle cycle, AnswerUnits units) {
        BackwashFlow flow = cycle.backwashFlow();
        BigDecimal target = Rounding.answer(PERCENT * Backwash.TARGET_EXPANSION_SHARE);
        BigDecimal lift = cycle.backwashExpansionShare().exists()
                ? Rounding.answer(PERCENT * cycle.backwashExpansionShare().value()) : null;
        boolean weak = BackwashEffect.isWeak(cycle.backwashExpansionShare());
        FlowQuantity gets = units.flow(flow.litresPerMinute());
        Message got = Message.of("backwashLift.drainLineFlowControl", Text.rounded(gets), WireNames.of(flow.rule()));
        Message lifts = lift == null ? Message.of("backwashLift.flowCarriesResinOut")
                : Message.of("backwashLift.flowLiftsBedTarget", Text.whole(lift.doubleValue()), target);
        return new BackwashLift(gets, flow.rule(), lift, target, weak, Message.sentences(weak
                ? List.of(got, lifts, Message.of("backwashLift.finesIronStayBed"), flow.toRaise().cure()) : List.of(got, lifts)));
    }
}
