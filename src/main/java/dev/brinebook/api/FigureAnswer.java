package dev.brinebook.api;

import dev.brinebook.guard.Figure;
import dev.brinebook.guard.NoAnswer;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("A number that may honestly not exist: either value is there, or reason and why.")
public record FigureAnswer(
        @Property(value = "The number.", unit = "the unit that the property is named with",
                optional = "when it does not exist", example = "3.084") BigDecimal value,
        @Property(value = "Stable code of why there is no number.", optional = "when value is there") NoAnswer reason,
        @Property(value = "The same as a sentence.", optional = "when value is there",
                example = "\"nothing is saved, so the cost is never paid back\"") Message why) {

    /** The figure times {@code factor}, such as 100 for a share told in percent. */
    public static FigureAnswer of(Figure figure, double factor) {
        return figure.exists() ? new FigureAnswer(Rounding.answer(factor * figure.value()), null, null)
                : new FigureAnswer(null, figure.reason(), Message.saying(figure.reason()));
    }
}
