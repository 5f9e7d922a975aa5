package dev.brinebook.request.household;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.TellsKind;
import dev.brinebook.household.Occupancy;
import dev.brinebook.quantity.Rounding;
import java.math.BigDecimal;
import java.util.List;

@About("On which days somebody is at home. On a vacant day nothing is used; the means given are those of days at home.")
public record OccupancyRequest(
        @Property(value = "The pattern: always at home; usual absences of 6 % of the days, three days at a time; a holiday home"
                + " with stays of three days on 30 % of the days; a chain with probabilities of your own; or spells of absence or"
                + " of stay that are known.", required = true, example = "\"usualAbsences\"") @TellsKind Pattern pattern,
        @Property(value = "Probability that a house at home is vacant the next day.", kinds = "chain", required = true,
                min = Occupancy.Chain.MIN_PROBABILITY, max = 1, example = "0.021") BigDecimal leavePerDay,
        @Property(value = "Probability that a vacant house is at home the next day.", kinds = "chain", required = true,
                min = Occupancy.Chain.MIN_PROBABILITY, max = 1, example = "0.32") BigDecimal returnPerDay,
        @Property(value = "The spells.", kinds = {"absences", "stays"}, required = true, minItems = 1,
                maxItems = Occupancy.Calendar.MAX_SPELLS) List<SpellRequest> spells) {

    /** How the days at home come about. */
    public enum Pattern {
        ALWAYS, USUAL_ABSENCES, HOLIDAY_HOME, CHAIN, ABSENCES, STAYS
    }

    /** A chain as a caller may send it back; null where somebody is always at home. */
    public static OccupancyRequest of(Occupancy occupancy) {
        return occupancy instanceof Occupancy.Chain chain ? new OccupancyRequest(Pattern.CHAIN,
                Rounding.answer(chain.leavePerDay()), Rounding.answer(chain.returnPerDay()), null) : null;
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
