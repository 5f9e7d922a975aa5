package dev.brinebook.request.household;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.TellsKind;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.household.Fixture;
import dev.brinebook.household.FixtureCount;
import dev.brinebook.household.FixtureUse;
import dev.brinebook.quantity.Quantity;
import java.math.BigDecimal;
import java.util.OptionalDouble;

@About("Fixtures of one kind. What is left out comes from the tables, where they have it: not every kind has every value.")
public record FixtureRequest(
        @Property(value = "What they are. A bathroom group is a shower or tub, a lavatory and a water closet, and counts less"
                + " than the three singly.", required = true, example = "\"shower\"") @TellsKind(others = "single") Fixture kind,
        @Property(value = "How many.", min = 1, max = FixtureCount.MAX_COUNT, example = "2", fallback = "1") Integer count,
        @Property(value = "Whether they stand in a home or where anyone may use them.", fallback = "private") FixtureUse use,
        @Property(value = "Flow of one when it runs. A bathroom group has none: tell its fixtures singly.",
                exceptKinds = {"bathroomGroup", "bathroomGroupFlushometer"},
                min = FixtureCount.MIN_FLOW_LITRES_PER_MINUTE, max = FixtureCount.MAX_FLOW_LITRES_PER_MINUTE, unit = "L/min",
                fallback = "that of the table: 2 gpm of a shower, 3 gpm of a tank that fills") FlowQuantity flow,
        @Property(value = "How likely one runs at a moment of the busy hour. A bathroom group has no such number: tell its"
                + " fixtures singly.", exceptKinds = {"bathroomGroup", "bathroomGroupFlushometer"},
                min = FixtureCount.MIN_BUSY_PROBABILITY, max = 1, example = "0.045",
                fallback = "that of the table, measured in homes: 0.045 of a shower") BigDecimal busyProbability,
        @Property(value = "Water supply fixture units of one, cold and hot together, where your code says otherwise.",
                min = FixtureCount.MIN_FIXTURE_UNITS, max = FixtureCount.MAX_FIXTURE_UNITS, example = "1.4",
                fallback = "those of the International Plumbing Code") BigDecimal fixtureUnits,
        @Property(value = "Design flow of one, of its cold and its hot connection together, as its maker or your standard"
                + " gives it.", min = FixtureRequest.MIN_DESIGN_LITRES_PER_MINUTE,
                max = FixtureRequest.MAX_DESIGN_LITRES_PER_MINUTE, unit = "L/min", fallback = "that of the table")
        FlowQuantity designFlow) {

    static final double MIN_DESIGN_LITRES_PER_MINUTE = 60 * FixtureCount.MIN_DESIGN_LITRES_PER_SECOND;
    static final double MAX_DESIGN_LITRES_PER_MINUTE = 60 * FixtureCount.MAX_DESIGN_LITRES_PER_SECOND;

    /** The fixtures, with the values of the tables for what is left out. */
    FixtureCount toDomain() {
        return new FixtureCount(kind, count == null ? 1 : count, use == null ? FixtureUse.PRIVATE : use,
                new FixtureCount.Known(base(flow, 1), number(busyProbability), number(fixtureUnits),
                        base(designFlow, 1 / 60.0)));
    }

    /** Whether any value of the table stands in for one that was left out. */
    boolean leavesOut() {
        return count == null || use == null || flow == null || busyProbability == null || fixtureUnits == null
                || designFlow == null;
    }

    private static OptionalDouble base(Quantity<?> given, double factor) {
        return given == null ? OptionalDouble.empty() : OptionalDouble.of(factor * given.inBase());
    }

    private static OptionalDouble number(BigDecimal given) {
        return given == null ? OptionalDouble.empty() : OptionalDouble.of(given.doubleValue());
    }
}
