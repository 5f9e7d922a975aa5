package dev.brinebook.regeneration.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.softener.api.ControlRequest;

@About("A way of starting regenerations, to be tried beside others.")
public record PolicyRequest(
        @Property(value = "The caller's own name for it.", required = true, minItems = 1, maxItems = 64,
                example = "\"metered, small reserve\"") String name,
        @Property(value = "What starts the regenerations.", required = true) ControlRequest control) {
}
