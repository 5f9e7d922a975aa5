// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.regeneration.Reason;
import java.time.LocalDate;

@SchemaDescription("One regeneration.")
public record RegenerationEventAnswer(
        @Property(value = "Date on which it runs, at the hour of regeneration.", example = "\"2026-01-05\"") LocalDate date,
        @Property("Trigger of the regeneration.") Reason reason,
        @Property("Unused capacity lost.") CapacityQuantity capacityThrownAway) {
}
