package dev.brinebook.softener.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
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
        Message whenNotMet) {

    /** The check in words. */
    public static ReadinessCheck of(Readiness.Check check) {
        return new ReadinessCheck(check.condition(), check.state(), check.condition().wanted(),
                check.condition().whenNotMet());
    }
}
