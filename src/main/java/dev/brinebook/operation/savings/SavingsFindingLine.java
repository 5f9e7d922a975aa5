// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.savings.SavingsFinding;
import dev.brinebook.text.Message;

@SchemaDescription("What the verdict should not be read without.")
public record SavingsFindingLine(
        @Property(value = "Stable code.", example = "\"waterNotRead\"") SavingsFinding code,
        @Property(value = "The finding, in sentences.", example = "\"The outlet was not tested in both periods.\"") Message message) {
}
