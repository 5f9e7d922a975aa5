// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.verdict;

import dev.brinebook.payback.Outlay;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.MeteringWorth;
import dev.brinebook.softener.Readiness;
import dev.brinebook.softener.SoftenerSettings;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A step of the ladder, in this household.
 *
 * @param step which
 * @param what which improvement or which of the goods, where the step is one of several
 * @param option its result; absent where it cannot be taken
 * @param obstacles reasons why it cannot be taken, or what it lacks
 * @param overBelow its value over the cheapest step below it that meets the service standard
 * @param overAsFound its value over the existing softener
 */
public record Rung(Step step, What what, Optional<Option> option, List<Obstacle> obstacles, Optional<Increment> overBelow,
        Optional<Increment> overAsFound) {

    /**
     * Result of a step.
     *
     * @param setup the softener and its settings; with two tanks, each of them
     * @param year expected totals of a year
     * @param costPerYear salt and regeneration water of that year, at today's prices
     * @param outlay its outlay, if known
     * @param unpriced conditions without a price, which its outlay does not include
     * @param everySeason the year of a clock that is set again every season
     * @param metered the settings of a meter; absent for a clock and for the existing softener
     */
    public record Option(SoftenerSettings setup, YearlyTotals year, double costPerYear, Optional<Outlay> outlay,
            List<Readiness.Condition> unpriced, Optional<MeteringWorth.Control> everySeason,
            Optional<DoseChoice.Option> metered) {

        public Option {
            unpriced = List.copyOf(unpriced);
        }
    }

    /**
     * Which of several.
     *
     * @param improvement which improvement
     * @param goods which of the shop's goods, by its name
     */
    public record What(Optional<Improvement> improvement, Optional<String> goods) {

        static final What ONLY = new What(Optional.empty(), Optional.empty());

        static What of(Improvement improvement) {
            return new What(Optional.of(improvement), Optional.empty());
        }

        static What of(String goods) {
            return new What(Optional.empty(), Optional.of(goods));
        }
    }

    public Rung {
        obstacles = List.copyOf(obstacles);
    }

    static Rung barred(Step step, Obstacle... obstacles) {
        return barred(step, What.ONLY, obstacles);
    }

    static Rung barred(Step step, What what, Obstacle... obstacles) {
        return new Rung(step, what, Optional.empty(), List.of(obstacles), Optional.empty(), Optional.empty());
    }

    /**
     * Its value over the step below it or over the existing softener, whichever saves less: it is credited neither with what correct
     * settings save nor with what they would cost more than now.
     */
    public Optional<Increment> counted() {
        return Stream.concat(overBelow.stream(), overAsFound.stream()).min(Comparator.comparingDouble(Increment::savedPerYear));
    }

    /** Whether it can be taken and keeps to what every step is held to. */
    public boolean serves() {
        return option.isPresent() && obstacles.isEmpty();
    }
}
