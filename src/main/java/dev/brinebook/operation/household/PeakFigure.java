package dev.brinebook.operation.household;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.guard.Figure;
import dev.brinebook.guard.NoAnswer;
import dev.brinebook.wording.Message;

@About("A peak flow, where the method has one: either flow is there, or reason and why.")
public record PeakFigure(
        @Property(value = "The flow.", optional = "when the method has none") FlowQuantity flow,
        @Property(value = "Stable code of why there is none.", optional = "when flow is there") NoAnswer reason,
        @Property(value = "The same as a sentence.", optional = "when flow is there",
                example = "\"the fixture units are above 5000, where the demand curve ends\"") Message why) {

    static PeakFigure of(Figure litresPerMinute, AnswerUnits units) {
        return litresPerMinute.exists() ? new PeakFigure(units.flow(litresPerMinute.value()), null, null)
                : new PeakFigure(null, litresPerMinute.reason(), units.saying(litresPerMinute.reason()));
    }

    /** What the method gives. */
    Message inWords() {
        return flow == null ? Message.of("no figure") : Text.of(flow);
    }
}
