// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.softener;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.softener.Readiness;
import dev.brinebook.text.Message;

@SchemaDescription("A condition of the conversion and its state.")
public record ReadinessCheck(
        @Property("Name of the condition.") Readiness.Condition condition,
        @Property("State of the condition.") Readiness.State state,
        @Property(value = "The requirement.", example = "\"A bypass lets you shut off and open the softener.\"")
        Message wanted,
        @Property(value = "Action if the condition is not met.",
                example = "\"Fit a bypass first, so that the house keeps water while the valve is open.\"")
        Message whenNotMet,
        @Property(value = "Whether the price of meeting it is given. Without a price, the first cost of converting does not include it.",
                optional = "unless it is not met", example = "true") Boolean priced,
        @Basis
        @Property(value = "Cost of meeting it, included in the first cost of converting.",
                optional = "unless it is not met and a price is given") Money price) {

    /** The check in words, with the price of meeting it; null where none is given. */
    public static ReadinessCheck of(Readiness.Check check, Money price) {
        boolean needed = check.state() == Readiness.State.NOT_MET;
        return new ReadinessCheck(check.condition(), check.state(), check.condition().wanted(),
                check.condition().whenNotMet(), needed ? price != null : null, needed ? price : null);
    }
}
