// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.quantity.Exact;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** Finds the softener for a duty among candidates. */
public final class Sizing {

    /**
     * What a litre of resin costs with the larger tank that it needs, where a price is not known: some 150 for a cubic foot, in the
     * money of the prices. It keeps a bed from being advised that saves less than it costs.
     *
     * <p>Source: [CP-RESIN-PRICE].
     */
    public static final double ASSUMED_COST_PER_RESIN_LITRE = 150 / Exact.CUBIC_FOOT_LITRES;
    /** Years over which the price of a softener is spread; the trade counts on 10 to 15. */
    public static final double ASSUMED_LIFE_YEARS = 15;

    /**
     * A softener to choose from.
     *
     * @param name what the caller calls it
     * @param softener the softener
     * @param datasheet what its maker states
     * @param price its price, if known
     */
    public record Candidate(String name, Softener softener, Fit.Datasheet datasheet, OptionalDouble price) {

        public Candidate {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(softener, "softener");
            Objects.requireNonNull(datasheet, "datasheet");
        }
    }

    /**
     * A candidate, tried.
     *
     * @param candidate the candidate
     * @param option its dose, settings, year and running cost
     * @param choice how the dose was chosen; absent when it was given
     * @param fit whether it fits
     */
    public record Ranked(Candidate candidate, DoseChoice.Option option, Optional<DoseChoice> choice, Fit fit) {

        /** Running cost and the price spread over the life, a year; of a price that is unknown, what its resin is assumed to cost. */
        public double costPerYear() {
            return option.costPerYear() + candidate.price().orElseGet(this::assumedPrice) / ASSUMED_LIFE_YEARS;
        }

        /** What could not be checked, as its maker states too little. */
        public List<Fit.Shortcoming> notChecked() {
            return fit.notChecked(candidate.datasheet());
        }

        private double assumedPrice() {
            return ASSUMED_COST_PER_RESIN_LITRE * candidate.softener().bed().resinLitres();
        }

        private Ranked withoutPrice() {
            return new Ranked(new Candidate(candidate.name(), candidate.softener(), candidate.datasheet(), OptionalDouble.empty()), option,
                    choice, fit);
        }
    }

    private Sizing() {
    }

    /**
     * All candidates, the best first: those that fit before those that do not, then by salt, water and price over the life; of
     * candidates whose prices are not all known, by what their resin is assumed to cost.
     *
     * @param saltDoseGramsPerLitre the dose for all, or empty for the cheapest of each
     */
    public static List<Ranked> rank(List<Candidate> candidates, DesignConditions duty, RunningCost cost,
            OptionalDouble saltDoseGramsPerLitre) {
        boolean priced = candidates.stream().allMatch(candidate -> candidate.price().isPresent());
        return candidates.stream().map(candidate -> tried(candidate, duty, cost, saltDoseGramsPerLitre))
                .sorted(Comparator.<Ranked>comparingInt(ranked -> ranked.fit().shortcomings().size())
                        .thenComparingDouble(ranked -> (priced ? ranked : ranked.withoutPrice()).costPerYear()))
                .toList();
    }

    /** A candidate at the dose and settings that cost least. */
    public static Ranked tried(Candidate candidate, DesignConditions duty, RunningCost cost) {
        return tried(candidate, duty, cost, OptionalDouble.empty());
    }

    private static Ranked tried(Candidate candidate, DesignConditions duty, RunningCost cost, OptionalDouble saltDoseGramsPerLitre) {
        Optional<DoseChoice> choice = saltDoseGramsPerLitre.isPresent() ? Optional.empty()
                : Optional.of(DoseSearch.cheapest(candidate.softener(), duty, cost));
        DoseChoice.Option option = choice.map(DoseChoice::best).orElseGet(() ->
                DoseSearch.option(candidate.softener(), saltDoseGramsPerLitre.getAsDouble(), duty, cost));
        return new Ranked(candidate, option, choice, Fit.of(option.dosed(), duty, true, candidate.datasheet(), option.year()));
    }
}
