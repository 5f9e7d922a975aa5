package dev.brinebook.operation.resin;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.guard.Figure;
import dev.brinebook.guard.NoAnswer;
import dev.brinebook.wording.Message;

@About("A salt dose that may honestly not exist: either saltDose is there, or reason and why.")
public record SaltDoseFigure(
        @Property(value = "The dose.", optional = "when there is none") SaltDoseQuantity saltDose,
        @Property(value = "Stable code of why there is none.", optional = "when saltDose is there") NoAnswer reason,
        @Property(value = "The same as a sentence.", optional = "when saltDose is there",
                example = "\"no salt dose that may be used reaches this salt efficiency\"") Message why) {

    static SaltDoseFigure of(Figure gramsPerLitre, AnswerUnits units) {
        return gramsPerLitre.exists() ? new SaltDoseFigure(units.saltDose(gramsPerLitre.value()), null, null)
                : new SaltDoseFigure(null, gramsPerLitre.reason(), units.saying(gramsPerLitre.reason()));
    }
}
