// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.field;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.field.InstallationCheck.Seen;
import dev.brinebook.field.InstallationCheck.Sign;
import dev.brinebook.text.Message;

@SchemaDescription("A sign of a softener that can be converted, as a question, and what its answer means.")
public record InstallationSignLine(
        @Property("Stable code.") Sign sign,
        @Property("What was seen.") Seen seen,
        @Property(value = "The question.", example = "\"Is a tank with salt joined to the valve by a small line?\"") Message question,
        @Property(value = "What this answer means.", example = "\"It regenerates with salt.\"") Message meaning) {

    static InstallationSignLine of(Sign sign, Seen seen) {
        return new InstallationSignLine(sign, seen, Message.of(sign), Message.of(sign.meaning(seen)));
    }
}
