package dev.brinebook.request.household;

import dev.brinebook.api.About;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.household.Occupancy;
import dev.brinebook.wording.Message;
import java.time.LocalDate;

@About("A run of days.")
public record SpellRequest(
        @Property(value = "Its first day.", required = true, example = "\"2026-07-01\"") LocalDate from,
        @Property(value = "Its last day.", required = true, example = "\"2026-07-14\"") LocalDate to) implements Checked {

    @Override
    public void check(Violations at) {
        if (from != null && to != null && to.isBefore(from)) {
            at.add("to", Code.INCONSISTENT, Message.of("must not be before from"));
        }
    }

    Occupancy.Spell toDomain() {
        return new Occupancy.Spell(from, to);
    }
}
