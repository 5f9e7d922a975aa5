package dev.brinebook.payback;

import dev.brinebook.guard.Guard;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.Setup;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * A way of going on, as something that softens: what stands there and how it is set, or nothing.
 *
 * <p>Used by one thread: what was worked out for one duty is kept for the next question about it.
 */
public final class Way {

    /** One a week. */
    public static final double MAX_VISITS_PER_YEAR = 52;

    private final String name;
    private final Function<Duty, List<Possible>> possible;
    private final Outlay outlay;
    private final double visitsPerYear;
    private final Map<Circumstances, List<Possible>> known = new HashMap<>();

    /**
     * What could be set in a household, with a year of it.
     *
     * @param setup the softener and its settings
     * @param each what one of its regenerations restores and uses
     * @param year what is to be expected of a year
     */
    public record Possible(Setup setup, Regeneration each, YearlyTotals year) {

        /** A setup in a household. */
        public static Possible of(Setup setup, Duty duty) {
            Regeneration each = setup.regeneration(duty.water().temperatureCelsius());
            return new Possible(setup, each, duty.year(setup.policy(), each));
        }
    }

    /** What differs from the case as given: factors on its numbers, 1 where nothing does. */
    public record Circumstances(double hardness, double dailyUse, double capacity) {

        /** Upper limit of the load where a drawn capacity is near zero: beyond it the bed does not last a day anyway. */
        private static final double MOST_TIMES_AS_HARD = 1e4;

        public static final Circumstances AS_TOLD = new Circumstances(1, 1, 1);

        public Circumstances {
            Guard.positive(hardness, "hardness");
            Guard.notNegative(dailyUse, "dailyUse");
            Guard.positive(capacity, "capacity");
        }

        /** The duty there. A bed that restores less is asked for in proportion more. */
        public Duty of(Duty duty) {
            return equals(AS_TOLD) ? duty : duty.with(Math.min(MOST_TIMES_AS_HARD, hardness / capacity), dailyUse);
        }
    }

    /**
     * A way.
     *
     * @param name what the caller calls it
     * @param possible the settings among which the one that costs least in salt and water is taken, by the household; none
     *     where nothing softens
     * @param outlay what it costs to have
     */
    public Way(String name, Function<Duty, List<Possible>> possible, Outlay outlay, double visitsPerYear) {
        this.name = Objects.requireNonNull(name, "name");
        this.possible = Objects.requireNonNull(possible, "possible");
        this.outlay = Objects.requireNonNull(outlay, "outlay");
        this.visitsPerYear = Guard.within(visitsPerYear, 0, MAX_VISITS_PER_YEAR, "visitsPerYear");
    }

    public String name() {
        return name;
    }

    public Outlay outlay() {
        return outlay;
    }

    public double visitsPerYear() {
        return visitsPerYear;
    }

    /** What could be set in circumstances; empty where nothing softens. */
    List<Possible> possible(Duty duty, Circumstances circumstances) {
        return known.computeIfAbsent(circumstances, there -> possible.apply(there.of(duty)));
    }

    /** What is set there: of what could be the least costly to run. */
    public Optional<Possible> set(Duty duty, Circumstances circumstances, RunningCost cost) {
        return possible(duty, circumstances).stream().min(Comparator.comparingDouble(one -> cost.ofYear(one.year())));
    }

    /** What is to be expected of a year. */
    public YearlyUse use(Duty duty, Circumstances circumstances, RunningCost cost) {
        return set(duty, circumstances, cost).map(one -> new YearlyUse(one.year().regenerations(),
                one.year().saltGrams() / 1000, one.year().waterLitres(), visitsPerYear))
                .orElseGet(() -> new YearlyUse(0, 0, 0, visitsPerYear));
    }
}
