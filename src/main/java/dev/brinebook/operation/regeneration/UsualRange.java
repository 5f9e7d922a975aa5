// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.household.Days;
import dev.brinebook.regeneration.UsualHardDays;

@SchemaDescription("Usual range of the number of hard days: at most 1 in 20 is lower and 1 in 20 is higher.")
public record UsualRange(
        @Property(value = "Lowest.", min = 0, max = Days.MAX_DAYS, unit = "days", example = "0") Integer from,
        @Property(value = "Highest.", min = 0, max = Days.MAX_DAYS, unit = "days", example = "4") Integer to) {

    static UsualRange of(UsualHardDays usual) {
        return new UsualRange(usual.from(), usual.to());
    }
}
