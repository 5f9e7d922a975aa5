// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.SurfaceFlowQuantity;
import dev.brinebook.resin.BackwashGuide;
import dev.brinebook.text.Message;

@SchemaDescription("A published range of backwash velocities, for ordinary temperatures.")
public record BackwashBand(
        @Property(value = "Publisher of the range.", example = "\"textbook\"") BackwashGuide guide,
        @Property("Lower end.") SurfaceFlowQuantity minVelocity,
        @Property("Upper end.") SurfaceFlowQuantity maxVelocity) {

    static BackwashBand of(BackwashGuide guide, AnswerUnits units) {
        return new BackwashBand(guide, units.surfaceFlow(guide.minMetresPerHour()),
                units.surfaceFlow(guide.maxMetresPerHour()));
    }

    static Message inWords(BackwashGuide guide, AnswerUnits units) {
        return Text.span(units.surfaceFlow(guide.minMetresPerHour()), units.surfaceFlow(guide.maxMetresPerHour()));
    }
}
