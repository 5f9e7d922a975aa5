package dev.brinebook.operation.resin;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.SurfaceFlowQuantity;
import dev.brinebook.resin.BackwashGuide;
import dev.brinebook.wording.Message;

@About("A published band of backwash velocities, for ordinary temperatures.")
public record BackwashBand(
        @Property(value = "Whose it is.", example = "\"textbook\"") BackwashGuide guide,
        @Property("Its low end.") SurfaceFlowQuantity minVelocity,
        @Property("Its high end.") SurfaceFlowQuantity maxVelocity) {

    static BackwashBand of(BackwashGuide guide, AnswerUnits units) {
        return new BackwashBand(guide, units.surfaceFlow(guide.minMetresPerHour()),
                units.surfaceFlow(guide.maxMetresPerHour()));
    }

    static Message inWords(BackwashGuide guide, AnswerUnits units) {
        return Text.span(units.surfaceFlow(guide.minMetresPerHour()), units.surfaceFlow(guide.maxMetresPerHour()));
    }
}
