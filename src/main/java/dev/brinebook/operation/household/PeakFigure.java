// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.text.Message;

@SchemaDescription("A peak flow that may not exist: has either `flow`, or `reason` and `why`.")
public record PeakFigure(
        @Property(value = "The flow.", optional = "when the method has none") FlowQuantity flow,
        @Property(value = "Stable code of the reason.", optional = "when flow is present") NoResultReason reason,
        @Property(value = "The reason as a sentence.", optional = "when flow is present",
                example = "\"The fixture units are above 5000, where the demand curve ends.\"") Message why) {

    static PeakFigure of(OptionalResult litresPerMinute, AnswerUnits units) {
        return litresPerMinute.exists() ? new PeakFigure(units.flow(litresPerMinute.value()), null, null)
                : new PeakFigure(null, litresPerMinute.reason(), units.saying(litresPerMinute.reason()));
    }

    /** What the method gives. */
    Message inWords() {
        return flow == null ? Message.of("peakFigure.noValue") : Text.rounded(flow);
    }
}
