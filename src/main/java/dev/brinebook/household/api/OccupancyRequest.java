package dev.brinebook.household.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.household.Occupancy;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.List;

@About("On which days somebody is at home. On a vacant day nothing is used; the means given are those of days at home.")
public record OccupancyRequest(
        @Property(value = "The pattern: always at home; usual absences of 6 % of the days, three days at a time; a holiday home"
                + " with stays of three days on 30 % of the days; a chain with probabilities of your own; or spells of absence or"
                + " of stay that are known.", required = true, example = "\"usualAbsences\"") Pattern pattern,
        @Property(value = "With the pattern chain: probability that a house at home is vacant the next day.",
                min = Occupancy.Chain.MIN_PROBABILITY, max = 1, example = "0.021") BigDecimal leavePerDay,
        @Property(value = "With the pattern chain: probability that a vacant house is at home the next day.",
                min = Occupancy.Chain.MIN_PROBABILITY, max = 1, example = "0.32") BigDecimal returnPerDay,
        @Property(value = "With the patterns absences and stays: the spells.", minItems = 1,
                maxItems = Occupancy.Calendar.MAX_SPELLS) List<SpellRequest> spells) implements Checked {

    /** How the days at home come about. */
    public enum Pattern {
        ALWAYS, USUAL_ABSENCES, HOLIDAY_HOME, CHAIN, ABSENCES, STAYS
    }

    @Override
    public void check(Violations at) {
        boolean chain = pattern == Pattern.CHAIN;
        boolean calendar = pattern == Pattern.ABSENCES || pattern == Pattern.STAYS;
        needs(chain, leavePerDay, "leavePerDay", at);
        needs(chain, returnPerDay, "returnPerDay", at);
        needs(calendar, spells, "spells", at);
    }

    private void needs(boolean wanted, Object value, String name, Violations at) {
        if (wanted && value == null && !at.at(name).here()) {
            at.add(name, Code.MISSING, Message.of("{0} is missing: the pattern needs it", name));
        } else if (pattern != null && !wanted && value != null) {
            at.add(name, Code.INCONSISTENT, Message.of("must be left out with this pattern"));
        }
    }

    Occupancy toDomain() {
        return switch (pattern) {
            case ALWAYS -> Occupancy.ALWAYS;
            case USUAL_ABSENCES -> Occupancy.Chain.USUAL;
            case HOLIDAY_HOME -> Occupancy.Chain.ASSUMED_HOLIDAY_HOME;
            case CHAIN -> new Occupancy.Chain(leavePerDay.doubleValue(), returnPerDay.doubleValue());
            case ABSENCES -> new Occupancy.Calendar(spells.stream().map(SpellRequest::toDomain).toList(), true);
            case STAYS -> new Occupancy.Calendar(spells.stream().map(SpellRequest::toDomain).toList(), false);
        };
    }
}
