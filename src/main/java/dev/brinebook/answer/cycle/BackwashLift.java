package dev.brinebook.answer.cycle;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.BackwashFlow;
import dev.brinebook.regeneration.BackwashRule;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.resin.Backwash;
import dev.brinebook.resin.BackwashEffect;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.List;

@About("The flow that the backwash gets on this site, and how far it lifts the bed.")
public record BackwashLift(
        @Property("The least of the drain line flow control, what the drain takes and what the supply gives.") FlowQuantity flow,
        @Property(value = "Which of the three it is.", example = "\"flowControl\"") BackwashRule rule,
        @Property(value = "How far it lifts the bed at the water's temperature, in percent of the settled depth.",
                optional = "when it carries the resin out of the tank", min = 0, unit = "%", example = "55") BigDecimal liftPercent,
        @Property(value = "How far it should.", min = 0, unit = "%", example = "50") BigDecimal targetPercent,
        @Property(value = "Whether that is too little to clean all of the bed.", example = "false") Boolean weak,
        @Property(value = "The same in words, with what gives more lift where there is too little.",
                example = "\"The backwash gets 3 gpm, limited by the drain line flow control.\"") Message sentence) {

    private static final double PERCENT = 100;

    /** The backwash of {@code cycle}. */
    static BackwashLift of(Cycle cycle, AnswerUnits units) {
        BackwashFlow flow = cycle.backwashFlow();
        BigDecimal target = Rounding.answer(PERCENT * Backwash.TARGET_EXPANSION_SHARE);
        BigDecimal lift = cycle.backwashExpansionShare().exists()
                ? Rounding.answer(PERCENT * cycle.backwashExpansionShare().value()) : null;
        boolean weak = BackwashEffect.isWeak(cycle.backwashExpansionShare());
        FlowQuantity gets = units.flow(flow.litresPerMinute());
        Message got = Message.of("The backwash gets {0}, limited by {1}.", Text.of(gets), Message.saying(flow.rule()));
        Message lifts = lift == null ? Message.of("That carries the resin out of the tank.")
                : Message.of("That lifts the bed by {0} %, where {1} % is the target.", Text.number(lift.doubleValue()), target);
        return new BackwashLift(gets, flow.rule(), lift, target, weak, Message.joined(" ", weak
                ? List.of(got, lifts, Message.of("Fines and iron stay in the bed."), flow.toRaise().cure()) : List.of(got, lifts)));
    }

    static void explain(String pointer, Explanation explanation) {
        explanation.because(pointer + "/flow", Message.of("the least of the drain line flow control, what the drain takes and what the"
                + " supply gives"), "CP-CYCLE");
        explanation.because(pointer + "/liftPercent", Message.of("the velocity at which beads of 0.62 mm fall through water of this"
                + " temperature, solved for the voids of the lifted bed"), "RICHARDSON-ZAKI");
        explanation.because(pointer + "/targetPercent", Message.of("half the depth of the bed is the usual target"), "CP-CYCLE");
    }
}
