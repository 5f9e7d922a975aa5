package dev.brinebook.api;

import dev.brinebook.wording.Message;

@About("A value that the calculation took.")
public record AssumptionAnswer(
        @Property(value = "What was assumed; a property of the request by its name where there is one.",
                example = "\"water.temperature\"") String name,
        @Property(value = "The value used, with its unit.", example = "\"12 C\"") Message value,
        @Property("Whether it is the caller's, a default, or worked out from other values.") Origin origin) {

    /** Where an assumed value came from. */
    public enum Origin {
        CALLER, DEFAULT, DERIVED
    }
}
