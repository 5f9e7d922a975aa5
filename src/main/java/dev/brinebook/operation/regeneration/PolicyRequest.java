// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.request.softener.ControlRequest;
import dev.brinebook.text.Message;

@SchemaDescription("A regeneration policy to compare.")
public record PolicyRequest(
        @Property(value = "Your name for it.", required = true, minItems = 1, maxItems = 64,
                example = "\"metered, small reserve\"") String name,
        @Property(value = "The control and its settings.", required = true) ControlRequest control) {

    /** The softener's own control, which has no name in the request. */
    static PolicyRequest asFound(ControlRequest control) {
        return new PolicyRequest(null, control);
    }

    /** Its name in the answer. */
    Message title() {
        return name == null ? Message.of("policy.now") : Message.verbatim(name);
    }
}
