// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.household.PeakFlow.Fixtures;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * The fixtures of a building.
 *
 * @param fixtures kind by kind
 */
public record FixtureSchedule(List<FixtureCount> fixtures) {

    public static final int MAX_KINDS = 40;
    /** Showers of which every second may run for long; in larger buildings the mean of the busy hour decides. */
    private static final int MAX_SHOWERS_OF_A_HOME = PeakFlow.MAX_BATHROOMS;

    public FixtureSchedule {
        fixtures = List.copyOf(fixtures);
        Guard.within(fixtures.size(), 1, MAX_KINDS, "fixtures");
    }

    /** The fixtures assumed for a house of which only the bathrooms are known. */
    public static FixtureSchedule ofBathrooms(int bathrooms) {
        Guard.within(bathrooms, 1, PeakFlow.MAX_BATHROOMS, "bathrooms");
        return new FixtureSchedule(List.of(FixtureCount.of(Fixture.BATHROOM_GROUP, bathrooms),
                FixtureCount.of(Fixture.KITCHEN_SINK, 1), FixtureCount.of(Fixture.CLOTHES_WASHER, 1),
                FixtureCount.of(Fixture.DISHWASHER, 1)));
    }

    /** Bathroom groups among them. */
    public int bathroomGroups() {
        return fixtures.stream().filter(f -> f.fixture().isGroup()).mapToInt(FixtureCount::count).sum();
    }

    /** Water supply fixture units together. A group has its own value; fixtures given singly are added singly. */
    public OptionalResult fixtureUnits() {
        return sum(FixtureCount::fixtureUnits, NoResultReason.NO_FIXTURE_UNITS);
    }

    /** Sum of the design flows of all connections, L/s. */
    public OptionalResult designLitresPerSecond() {
        return sum(FixtureCount::designLitresPerSecond, NoResultReason.NO_DESIGN_FLOW);
    }

    private OptionalResult sum(Function<FixtureCount, OptionalDouble> ofOne, NoResultReason missing) {
        double sum = 0;
        for (FixtureCount f : fixtures) {
            OptionalDouble one = ofOne.apply(f);
            if (one.isEmpty()) {
                return OptionalResult.none(missing);
            }
            sum += f.count() * one.getAsDouble();
        }
        return OptionalResult.of(sum);
    }

    /** The curve that applies: one flushometer valve takes more than all else in a small building, so one is enough. */
    public DemandCurve curve() {
        return fixtures.stream().anyMatch(f -> f.fixture().isFlushedByValve()) ? DemandCurve.FLUSHOMETER
                : DemandCurve.FLUSH_TANK;
    }

    /** Flow and busy probability of the fixtures; absent where either was not measured for one of them. */
    public Optional<List<Fixtures>> draws() {
        List<Fixtures> draws = new ArrayList<>();
        for (FixtureCount f : fixtures) {
            Optional<List<Fixtures>> ofKind = f.draws();
            if (ofKind.isEmpty()) {
                return Optional.empty();
            }
            draws.addAll(ofKind.get());
        }
        return Optional.of(List.copyOf(draws));
    }

    /**
     * Continuous flow: the flow that lasts for minutes.
     *
     * <pre>
     * Q = max(sum of q over every second shower, those of most flow first; sum n p q of all fixtures)
     * </pre>
     *
     * <p>Q continuous flow, L/min; q flow of one fixture, L/min; n count; p busy probability.
     * Validity: at least one shower and at most six; without showers the fixture of most flow.
     * Source: [CP-HYDRAULICS] showers that run at once; [BUCHBERGER-2017] mean of the busy hour, which decides in large
     * buildings.
     * Deviation: a tub with a shower is taken as a shower, since the tub is full in minutes.
     *
     * @param draws count, busy probability and flow of these fixtures
     */
    public double continuousLitresPerMinute(List<Fixtures> draws) {
        List<Double> showers = fixtures.stream().flatMap(f -> f.fixture().parts().stream().filter(Fixture::isShower)
                .flatMap(part -> Collections.nCopies(Math.min(f.count(), MAX_SHOWERS_OF_A_HOME),
                        showerLitresPerMinute(f, part)).stream())).sorted(Comparator.reverseOrder()).toList();
        int running = (Math.min(showers.size(), MAX_SHOWERS_OF_A_HOME) + 1) / 2;
        double lasting = showers.isEmpty() ? draws.stream().mapToDouble(Fixtures::litresPerMinute).max().orElse(0)
                : showers.stream().limit(running).mapToDouble(Double::doubleValue).sum();
        return Math.max(lasting, PeakFlow.meanLitresPerMinute(draws));
    }

    /** A tub with a shower lasts as a shower: the tub is full in minutes. */
    private static double showerLitresPerMinute(FixtureCount f, Fixture part) {
        return f.known().litresPerMinute().isPresent() ? f.known().litresPerMinute().getAsDouble()
                : f.litresPerMinute(part == Fixture.TUB_SHOWER ? Fixture.SHOWER : part).getAsDouble();
    }
}
