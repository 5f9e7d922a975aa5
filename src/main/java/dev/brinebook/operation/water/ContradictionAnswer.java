// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.text.Message;
import dev.brinebook.water.report.Contradiction;

@SchemaDescription("Two results that cannot both be right.")
public record ContradictionAnswer(
        @Property("Stable code of the contradiction.") Contradiction code,
        @Property(value = "The contradiction, in a sentence.", example = "\"Calcium hardness is above the total hardness.\"")
        Message message) {
}
