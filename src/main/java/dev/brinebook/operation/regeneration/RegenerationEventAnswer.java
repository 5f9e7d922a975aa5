package dev.brinebook.operation.regeneration;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.regeneration.Reason;
import java.time.LocalDate;

@About("One regeneration.")
public record RegenerationEventAnswer(
        @Property(value = "Date on which it runs, at the hour of regeneration.", example = "\"2026-01-05\"") LocalDate date,
        @Property("What started it.") Reason reason,
        @Property("Capacity that was still there, and thrown away.") CapacityQuantity capacityThrownAway) {
}
