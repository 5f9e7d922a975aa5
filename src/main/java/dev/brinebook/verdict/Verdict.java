// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.verdict;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * The step to take.
 *
 * @param step which; {@link Step#REPLACE} too where no available bed meets the standard
 * @param chance that it is the right one, by the chances that it and the steps above it pay; 1 where money does not decide
 */
public record Verdict(Step step, double chance) {

    private static final double HIGH = 0.9;
    private static final double MEDIUM = 0.7;
    /** Nothing is sure beyond this while a setting that matters, the size of the tank or the price of the step is not known. */
    private static final double MOST_WITH_UNREAD = 0.8;

    /** Confidence in the verdict. */
    public enum Confidence {
        HIGH, MEDIUM, LOW
    }

    public Confidence confidence() {
        return chance >= HIGH ? Confidence.HIGH : chance >= MEDIUM ? Confidence.MEDIUM : Confidence.LOW;
    }

    /**
     * The verdict at the top of a climb.
     *
     * @param cure the step that makes a softener large enough which is too small, where correct settings cost more than those found
     * @param unread whether a setting that matters, or the size of the tank, was not read
     */
    static Verdict of(Climb climb, Optional<Step> cure, boolean unread) {
        if (climb.rung(Step.NONE_NEEDED).obstacles().isEmpty()) {
            return new Verdict(Step.NONE_NEEDED, 1);
        }
        if (climb.rung(Step.TREAT_FIRST).obstacles().isEmpty()) {
            return new Verdict(Step.TREAT_FIRST, 1);
        }
        Step step = cure.or(() -> climb.taken().map(Rung::step)).orElse(Step.REPLACE);
        double chance = chance(climb.rung(step), climb);
        Optional<Step> next = Stream.of(Step.values()).filter(one -> one.compareTo(step) > 0)
                .filter(one -> climb.rung(one).serves()).findFirst();
        double others = next.flatMap(one -> climb.rung(one).overBelow()).map(Increment::chanceOfPaying).orElse(OptionalDouble.empty())
                .orElse(0);
        double sure = chance * (1 - others);
        return new Verdict(step, unread || cure.isPresent() ? Math.min(sure, MOST_WITH_UNREAD) : sure);
    }

    /** That it pays over what is below it and over what was found; 1 where it is needed to keep to the standard. */
    private static double chance(Rung rung, Climb climb) {
        return rung.overBelow().filter(over -> climb.rung(over.over()).serves()).map(over -> Math.min(over.chanceOfPaying().orElse(1),
                rung.overAsFound().map(found -> found.chanceOfPaying().orElse(1)).orElse(1.0))).orElse(1.0);
    }
}
