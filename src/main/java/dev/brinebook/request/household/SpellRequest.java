// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.household;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.household.Occupancy;
import dev.brinebook.text.Message;
import java.time.LocalDate;

@SchemaDescription("A run of days.")
public record SpellRequest(
        @Property(value = "Its first day.", required = true, example = "\"2026-07-01\"") LocalDate from,
        @Property(value = "Its last day.", required = true, example = "\"2026-07-14\"") LocalDate to) implements Checked {

    @Override
    public void check(Violations at) {
        if (from != null && to != null && to.isBefore(from)) {
            at.add("to", Code.INCONSISTENT, Message.of("problem.household.mustBefore"));
        }
    }

    Occupancy.Spell toDomain() {
        return new Occupancy.Spell(from, to);
    }
}
