// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.household;

import dev.brinebook.api.Discriminator;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.household.Occupancy;
import dev.brinebook.quantity.Rounding;
import java.math.BigDecimal;
import java.util.List;

@SchemaDescription("Days on which somebody is at home. No water is used on a vacant day. The means given are those of days at home.")
public record OccupancyRequest(
        @Property(value = "The pattern: always at home; typical absences of 6 % of the days, three days at a time; a holiday "
                + "home with three-day stays on 30 % of the days; a Markov chain with your own probabilities; or known periods "
                + "of absence or stay.", required = true, example = "\"usualAbsences\"") @Discriminator Pattern pattern,
        @Property(value = "Probability that an occupied house is vacant the next day.", kinds = "chain", required = true,
                min = Occupancy.Chain.MIN_PROBABILITY, max = 1, example = "0.021") BigDecimal leavePerDay,
        @Property(value = "Probability that a vacant house is occupied the next day.", kinds = "chain", required = true,
                min = Occupancy.Chain.MIN_PROBABILITY, max = 1, example = "0.32") BigDecimal returnPerDay,
        @Property(value = "Known periods of absence or stay.", kinds = {"absences", "stays"}, required = true, minItems = 1,
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

    /** On which days somebody is at home. */
    public Occupancy toDomain() {
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
