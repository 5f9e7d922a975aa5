package dev.brinebook.household;

import dev.brinebook.guard.Figure;
import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoAnswer;
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

    /** The fixtures taken for a house of which only the bathrooms are known. */
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

    /** Water supply fixture units together. A group counts as a group, fixtures told singly count singly. */
    public Figure fixtureUnits() {
        return sum(FixtureCount::fixtureUnits, NoAnswer.NO_FIXTURE_UNITS);
    }

    /** Sum of the design flows of all connections, L/s. */
    public Figure designLitresPerSecond() {
        return sum(FixtureCount::designLitresPerSecond, NoAnswer.NO_DESIGN_FLOW);
    }

    private Figure sum(Function<FixtureCount, OptionalDouble> ofOne, NoAnswer missing) {
        double sum = 0;
        for (FixtureCount f : fixtures) {
            OptionalDouble one = ofOne.apply(f);
            if (one.isEmpty()) {
                return Figure.none(missing);
            }
            sum += f.count() * one.getAsDouble();
        }
        return Figure.of(sum);
    }

    /** The curve that holds: one flushometer valve draws more than all else in a small building, so one is enough. */
    public DemandCurve curve() {
        return fixtures.stream().anyMatch(f -> f.fixture().isFlushedByValve()) ? DemandCurve.FLUSHOMETER
                : DemandCurve.FLUSH_TANK;
    }

    /** How they draw; absent where how often one runs, or its flow, was not measured. */
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
     * Flow that lasts for minutes.
     *
     * <pre>
     * max(sum of q over every second shower, those of most flow first; sum n p q of all fixtures)
     * </pre>
     *
     * <p>q flow of one, n count, p busy probability. At least one shower and at most six; without showers the fixture of
     * most flow. {@code draws} are those of these fixtures. Source: [CP-HYDRAULICS] showers that run at once;
     * [BUCHBERGER-2017] mean of the busy hour, which decides in large buildings.
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
