// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.guard.Guard;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.SoftenerSettings;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * An alternative as equipment: a softener and its settings, or none.
 *
 * <p>Not thread-safe: results for one set of design conditions are cached and used again.
 */
public final class AlternativePlan {

    /** One a week. */
    public static final double MAX_VISITS_PER_YEAR = 52;

    private final String name;
    private final Function<DesignConditions, List<Possible>> possible;
    private final Outlay outlay;
    private final double visitsPerYear;
    private final Map<Circumstances, List<Possible>> known = new HashMap<>();

    /**
     * Possible settings in a household, with the expected year.
     *
     * @param setup the softener and its settings
     * @param each what one regeneration restores and uses
     * @param year expected totals of a year
     */
    public record Possible(SoftenerSettings setup, Regeneration each, YearlyTotals year) {

        /** The settings in a household. */
        public static Possible of(SoftenerSettings setup, DesignConditions duty) {
            Regeneration each = setup.regeneration(duty.water().temperatureCelsius());
            return new Possible(setup, each, duty.year(setup.policy(), each));
        }
    }

    /** Differences from the given case, as factors on its numbers (1 = unchanged). */
    public record Circumstances(double hardness, double dailyUse, double capacity) {

        /** Upper limit of the load where a simulated capacity is near zero: beyond it the bed does not last a day anyway. */
        private static final double MOST_TIMES_AS_HARD = 1e4;

        public static final Circumstances AS_GIVEN = new Circumstances(1, 1, 1);

        public Circumstances {
            Guard.positive(hardness, "hardness");
            Guard.notNegative(dailyUse, "dailyUse");
            Guard.positive(capacity, "capacity");
        }

        /** The design conditions with these factors. A lower capacity is a proportionally higher load. */
        public DesignConditions of(DesignConditions duty) {
            return equals(AS_GIVEN) ? duty : duty.with(Math.min(MOST_TIMES_AS_HARD, hardness / capacity), dailyUse);
        }
    }

    /**
     * An alternative.
     *
     * @param name the name the caller gave it
     * @param possible the settings from which the cheapest in salt and water is chosen for the household; none
     *     where nothing softens
     * @param outlay what it costs to have
     */
    public AlternativePlan(String name, Function<DesignConditions, List<Possible>> possible, Outlay outlay, double visitsPerYear) {
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

    /** Possible settings in these circumstances; empty without a softener. */
    List<Possible> possible(DesignConditions duty, Circumstances circumstances) {
        return known.computeIfAbsent(circumstances, there -> possible.apply(there.of(duty)));
    }

    /** The settings used in these circumstances: the possible ones that cost least to run. */
    public Optional<Possible> set(DesignConditions duty, Circumstances circumstances, RunningCost cost) {
        return possible(duty, circumstances).stream().min(Comparator.comparingDouble(one -> cost.ofYear(one.year())));
    }

    /** Expected use of a year. */
    public YearlyUse use(DesignConditions duty, Circumstances circumstances, RunningCost cost) {
        return set(duty, circumstances, cost).map(one -> new YearlyUse(one.year().regenerations(),
                one.year().saltGrams() / 1000, one.year().waterLitres(), visitsPerYear))
                .orElseGet(() -> new YearlyUse(0, 0, 0, visitsPerYear));
    }
}
