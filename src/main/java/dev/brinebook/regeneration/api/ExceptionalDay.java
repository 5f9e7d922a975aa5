package dev.brinebook.regeneration.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.quantity.api.VolumeQuantity;
import java.time.LocalDate;

@About("A day on which far more was used than is usual of the household.")
public record ExceptionalDay(
        @Property(value = "Its date.", example = "\"2026-07-04\"") LocalDate date,
        @Property("What was softened on it.") VolumeQuantity use) {
}
