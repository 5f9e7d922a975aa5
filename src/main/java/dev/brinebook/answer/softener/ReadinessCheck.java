package dev.brinebook.answer.softener;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.softener.Readiness;
import dev.brinebook.wording.Message;

@About("A condition of the conversion and how it stands.")
public record ReadinessCheck(
        @Property("Which condition.") Readiness.Condition condition,
        @Property("How it stands.") Readiness.State state,
        @Property(value = "What is wanted.", example = "\"a bypass lets the softener be shut off and opened\"")
        Message wanted,
        @Property(value = "What it changes when it is not met.",
                example = "\"fit a bypass first, so that the house keeps water while the valve is open\"")
        Message whenNotMet,
        @Property(value = "Whether a price of meeting it is given. Without one the first cost of converting lacks it.",
                optional = "unless it is not met", example = "true") Boolean priced,
        @Property(value = "What meeting it costs, which enters the first cost of converting.",
                optional = "unless it is not met and a price is given") Money price) {

    /** The check in words, with the price of meeting it; null where none is given. */
    static ReadinessCheck of(Readiness.Check check, Money price) {
        boolean needed = check.state() == Readiness.State.NOT_MET;
        return new ReadinessCheck(check.condition(), check.state(), check.condition().wanted(),
                check.condition().whenNotMet(), needed ? price != null : null, needed ? price : null);
    }
}
