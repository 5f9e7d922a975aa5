// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.comparison;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.text.Message;

@SchemaDescription("One of the two answers.")
public record ComparedAnswer(
        @Property(value = "Version of the formulas and data that gave it.", example = "\"2.2.0\"") String modelVersion,
        @Property(value = "Its summary.", example = "\"Correct the settings, free: 200 USD a year less.\"") Message summary) {
}
