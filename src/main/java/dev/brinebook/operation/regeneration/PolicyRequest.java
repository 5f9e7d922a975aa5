package dev.brinebook.operation.regeneration;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.request.softener.ControlRequest;
import dev.brinebook.wording.Message;

@About("A way of starting regenerations, to be tried beside others.")
public record PolicyRequest(
        @Property(value = "The caller's own name for it.", required = true, minItems = 1, maxItems = 64,
                example = "\"metered, small reserve\"") String name,
        @Property(value = "What starts the regenerations.", required = true) ControlRequest control) {

    /** The softener's own control, of which the caller did not say what it is called. */
    static PolicyRequest asFound(ControlRequest control) {
        return new PolicyRequest(null, control);
    }

    /** What it is called in the answer. */
    Message title() {
        return name == null ? Message.of("as found") : Message.verbatim(name);
    }
}
