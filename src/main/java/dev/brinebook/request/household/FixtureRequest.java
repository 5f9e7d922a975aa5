// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.household;

import dev.brinebook.api.Discriminator;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.household.Fixture;
import dev.brinebook.household.FixtureCount;
import dev.brinebook.household.FixtureUse;
import dev.brinebook.quantity.Quantity;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;

@SchemaDescription("Fixtures of one kind. An omitted value comes from the tables, if they have it. Not every kind has every value.")
public record FixtureRequest(
        @Property(value = "Kind of fixture. A bathroom group is a shower or tub, a lavatory and a water closet. It has fewer "
                + "fixture units than the three listed singly.", required = true,
                example = "\"shower\"") @Discriminator(others = "single") Fixture kind,
        @Property(value = "Number of fixtures.", min = 1, max = FixtureCount.MAX_COUNT, example = "2",
                byDefault = FixtureCount.ASSUMED_COUNT) Integer count,
        @Property(value = "Place of use: a home, or open to anyone.", defaultCode = "private") FixtureUse use,
        @Property(value = "Flow of one fixture while it runs. A bathroom group has none, so list its fixtures singly.",
                exceptKinds = {"bathroomGroup", "bathroomGroupFlushometer"},
                min = FixtureCount.MIN_FLOW_LITRES_PER_MINUTE, max = FixtureCount.MAX_FLOW_LITRES_PER_MINUTE, unit = "L/min",
                fallback = "from the table: 2 gpm for a shower, 3 gpm for a flush tank") FlowQuantity flow,
        @Property(value = "Probability that one fixture runs at a moment of the busy hour. A bathroom group has none, so list "
                + "its fixtures singly.", exceptKinds = {"bathroomGroup", "bathroomGroupFlushometer"},
                min = FixtureCount.MIN_BUSY_PROBABILITY, max = 1, example = "0.045",
                fallback = "from the table, measured in homes: 0.045 for a shower") BigDecimal busyProbability,
        @Property(value = "Water supply fixture units of one fixture, cold and hot together, if your code differs from the default.",
                min = FixtureCount.MIN_FIXTURE_UNITS, max = FixtureCount.MAX_FIXTURE_UNITS, example = "1.4",
                fallback = "those of the International Plumbing Code") BigDecimal fixtureUnits,
        @Property(value = "Design flow of one fixture, cold and hot connection together, from its maker or your standard.",
                min = FixtureRequest.MIN_DESIGN_LITRES_PER_MINUTE,
                max = FixtureRequest.MAX_DESIGN_LITRES_PER_MINUTE, unit = "L/min", fallback = "from the table")
        FlowQuantity designFlow) {

    static final double MIN_DESIGN_LITRES_PER_MINUTE = 60 * FixtureCount.MIN_DESIGN_LITRES_PER_SECOND;
    static final double MAX_DESIGN_LITRES_PER_MINUTE = 60 * FixtureCount.MAX_DESIGN_LITRES_PER_SECOND;

    /** The fixtures, with the values of the tables for what is left out. */
    FixtureCount toDomain() {
        return new FixtureCount(kind, count == null ? FixtureCount.ASSUMED_COUNT : count, use == null ? FixtureUse.PRIVATE : use,
                new FixtureCount.Known(base(flow, 1), number(busyProbability), number(fixtureUnits),
                        base(designFlow, 1 / 60.0)));
    }

    /**
     * Key of the source of the first value that replaces an omitted one: [BUCHBERGER-2017] flow and probability, [IPC-E103] fixture
     * units, [DIN-1988-300] design flow. Empty when everything is given.
     */
    Optional<String> sourceOfOmitted() {
        if (flow == null || busyProbability == null) {
            return Optional.of("BUCHBERGER-2017");
        }
        if (fixtureUnits == null) {
            return Optional.of("IPC-E103");
        }
        if (designFlow == null) {
            return Optional.of("DIN-1988-300");
        }
        return count == null || use == null ? Optional.of("OWN-ASSUMPTION") : Optional.empty();
    }

    private static OptionalDouble base(Quantity<?> given, double factor) {
        return given == null ? OptionalDouble.empty() : OptionalDouble.of(factor * given.inBase());
    }

    private static OptionalDouble number(BigDecimal given) {
        return given == null ? OptionalDouble.empty() : OptionalDouble.of(given.doubleValue());
    }
}
