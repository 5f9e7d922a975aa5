package dev.brinebook.operation.regeneration;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.household.Days;
import dev.brinebook.regeneration.UsualHardDays;

@About("Counts of hard days that are usual: one in twenty is lower and one in twenty higher, at most.")
public record UsualRange(
        @Property(value = "Lowest.", min = 0, max = Days.MAX_DAYS, unit = "days", example = "0") Integer from,
        @Property(value = "Highest.", min = 0, max = Days.MAX_DAYS, unit = "days", example = "4") Integer to) {

    static UsualRange of(UsualHardDays usual) {
        return new UsualRange(usual.from(), usual.to());
    }
}
