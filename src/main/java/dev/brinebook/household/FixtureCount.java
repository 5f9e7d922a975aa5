// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import dev.brinebook.household.PeakFlow.Fixtures;
import dev.brinebook.quantity.Exact;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Fixtures of one kind and use, and what is known of them better than the tables know.
 *
 * @param fixture kind
 * @param count how many
 * @param use where they are installed
 * @param known values that replace those of the tables
 */
public record FixtureCount(Fixture fixture, int count, FixtureUse use, Known known) {

    public static final int MAX_COUNT = 1_000;
    /** Fixtures of a kind whose number is not given. */
    public static final int ASSUMED_COUNT = 1;
    public static final double MIN_FLOW_LITRES_PER_MINUTE = 0.5;
    public static final double MAX_FLOW_LITRES_PER_MINUTE = 200;
    public static final double MIN_BUSY_PROBABILITY = 0.0001;
    public static final double MIN_FIXTURE_UNITS = 0.1;
    public static final double MAX_FIXTURE_UNITS = 100;
    public static final double MIN_DESIGN_LITRES_PER_SECOND = 0.01;
    public static final double MAX_DESIGN_LITRES_PER_SECOND = 5;

    /**
     * What is known of one fixture.
     *
     * @param litresPerMinute flow when it runs
     * @param busyProbability how likely it runs in the busy hour
     * @param fixtureUnits water supply fixture units
     * @param designLitresPerSecond design flow, of its cold and its hot connection together
     */
    public record Known(OptionalDouble litresPerMinute, OptionalDouble busyProbability, OptionalDouble fixtureUnits,
            OptionalDouble designLitresPerSecond) {

        /** Nothing: all comes from the tables. */
        public static final Known NOTHING = new Known(OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty(), OptionalDouble.empty());

        public Known {
            litresPerMinute.ifPresent(flow -> Guard.within(flow, MIN_FLOW_LITRES_PER_MINUTE, MAX_FLOW_LITRES_PER_MINUTE,
                    "litresPerMinute"));
            busyProbability.ifPresent(busy -> Guard.within(busy, MIN_BUSY_PROBABILITY, 1, "busyProbability"));
            fixtureUnits.ifPresent(units -> Guard.within(units, MIN_FIXTURE_UNITS, MAX_FIXTURE_UNITS, "fixtureUnits"));
            designLitresPerSecond.ifPresent(flow -> Guard.within(flow, MIN_DESIGN_LITRES_PER_SECOND,
                    MAX_DESIGN_LITRES_PER_SECOND, "designLitresPerSecond"));
        }
    }

    public FixtureCount {
        Objects.requireNonNull(fixture, "fixture");
        Guard.within(count, 1, MAX_COUNT, "count");
        Objects.requireNonNull(use, "use");
        if (fixture.isGroup() && (known.litresPerMinute().isPresent() || known.busyProbability().isPresent())) {
            throw new IllegalArgumentException("flow and busy probability of " + fixture + " must be those of its parts");
        }
    }

    /** Fixtures of a home, with the values of the tables. */
    public static FixtureCount of(Fixture fixture, int count) {
        return new FixtureCount(fixture, count, FixtureUse.PRIVATE, Known.NOTHING);
    }

    /** Fixture units of one; none where the table has none for its use. */
    public OptionalDouble fixtureUnits() {
        return known.fixtureUnits().isPresent() ? known.fixtureUnits() : fixture.fixtureUnits(use);
    }

    /** Design flow of one, of all its connections and parts; none where the table has none. */
    public OptionalDouble designLitresPerSecond() {
        if (known.designLitresPerSecond().isPresent()) {
            return known.designLitresPerSecond();
        }
        List<OptionalDouble> flows = fixture.parts().stream().map(Fixture::designLitresPerSecond).toList();
        return flows.stream().allMatch(OptionalDouble::isPresent)
                ? OptionalDouble.of(flows.stream().mapToDouble(OptionalDouble::getAsDouble).sum()) : OptionalDouble.empty();
    }

    /** Flow and busy probability of each part; absent where the busy probability or the flow of a part was not measured. */
    public Optional<List<Fixtures>> draws() {
        boolean measured = fixture.parts().stream().allMatch(part -> busyProbability(part).isPresent()
                && litresPerMinute(part).isPresent());
        return measured ? Optional.of(fixture.parts().stream().map(part -> new Fixtures(count,
                busyProbability(part).getAsDouble(), litresPerMinute(part).getAsDouble())).toList()) : Optional.empty();
    }

    /** How likely {@code part} of it runs. */
    public OptionalDouble busyProbability(Fixture part) {
        return known.busyProbability().isPresent() ? known.busyProbability() : part.busyProbability(use);
    }

    /** Flow of {@code part} of it. */
    public OptionalDouble litresPerMinute(Fixture part) {
        if (known.litresPerMinute().isPresent() || part.gpm().isEmpty()) {
            return known.litresPerMinute();
        }
        return OptionalDouble.of(part.gpm().getAsDouble() * Exact.US_GALLON_LITRES);
    }
}
