package dev.brinebook.household.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.guard.Figure;
import dev.brinebook.guard.NoAnswer;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.FlowQuantity;

@About("A peak flow, where the method has one: either flow is there, or reason and why.")
public record PeakFigure(
        @Property(value = "The flow.", optional = "when the method has none") FlowQuantity flow,
        @Property(value = "Stable code of why there is none.", optional = "when flow is there") NoAnswer reason,
        @Property(value = "The same as a sentence.", optional = "when flow is there",
                example = "\"the fixture units are above 5000, where the demand curve ends\"") String why) {

    static PeakFigure of(Figure litresPerMinute, AnswerUnits units) {
        return litresPerMinute.exists() ? new PeakFigure(units.flow(litresPerMinute.value()), null, null)
                : new PeakFigure(null, litresPerMinute.reason(), litresPerMinute.reason().words());
    }

    /** What the method does, behind its name in a sentence. */
    String inWords(String gives) {
        return flow != null ? gives + " " + Text.of(flow) : (gives.endsWith("s") ? "has" : "have") + " no figure";
    }
}
