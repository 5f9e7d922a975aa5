// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.verdict;

import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.Fit;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.ServiceRemedy;
import dev.brinebook.softener.Softener;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether a softener is too small for its household, and what cures that. It is where bed or tank do not suit the flows, or where its
 * capacity or its own control, set right, does not last the fewest days that are wanted between regenerations.
 *
 * <p>Source: [MMSD] at least 3 days between regenerations; [NIST-HB135] for the limit price of what cures it.
 *
 * @param climb the steps so far, with those of the present control
 * @param fit how the softener that was found fits
 * @param duty its design conditions
 */
record TooSmall(Climb climb, Fit fit, DesignConditions duty) {

    /** Whether it is; never in a version of the model that does not judge it. */
    boolean isTooSmall() {
        return duty.practice().replacesTooSmall() && (failsBySize() || fit.shortcomings().contains(Fit.Shortcoming.INTERVAL_TOO_SHORT)
                || !lasts(climb.rung(Step.SET_RIGHT)));
    }

    private boolean failsBySize() {
        return fit.shortcomings().stream().anyMatch(Fit.Shortcoming::isOfSize);
    }

    private boolean lasts(Rung rung) {
        return rung.option().map(option -> lasts(option.year())).orElse(true);
    }

    private boolean lasts(YearlyTotals year) {
        return !year.intervalDays().exists() || year.intervalDays().value() >= duty.minimumIntervalDays();
    }

    /** What an improvement lacks of the size. A second tank is as large as the first, and one is in service. */
    Optional<Obstacle> obstacle(Improvements.Improved improved) {
        boolean fits = switch (improved.improvement()) {
            case SECOND_TANK -> !failsBySize();
            case LARGER_BED -> Fit.ofSize(improved.set().orElseThrow().setup().softener(), duty).isEmpty();
            default -> true;
        };
        return fits || !duty.practice().replacesTooSmall() ? Optional.empty() : Optional.of(Obstacle.DOES_NOT_FIT);
    }

    /** The smallest standard bed that keeps to the standard: of those that suit the flows and last long enough, if any does. */
    Optional<DoseChoice.Option> larger(Softener softener, RunningCost cost) {
        Optional<DoseChoice.Option> fitting = !duty.practice().replacesTooSmall() ? Optional.empty()
                : ServiceRemedy.largerBeds(softener, larger -> Fit.ofSize(larger, duty).isEmpty(), duty, cost)
                        .filter(option -> lasts(option.year())).findFirst();
        return fitting.or(() -> ServiceRemedy.largerBed(softener, duty, cost));
    }

    /**
     * The step to take instead of correct settings that cost more a year than the present ones: the first step without a known price that
     * makes the softener large enough and whose saving over those settings is distinguishable from none. Until it is bought, the correct
     * settings are used.
     */
    Optional<Step> cure() {
        Rung right = climb.rung(Step.SET_RIGHT);
        boolean dearer = climb.taken().filter(taken -> taken == right).flatMap(Rung::overAsFound)
                .filter(over -> Climb.costsEnough(over, climb.rung(Step.AS_FOUND))).isPresent();
        return !dearer || !isTooSmall() ? Optional.empty() : Stream.of(Step.CONVERT, Step.IMPROVE, Step.REPLACE)
                .filter(step -> cures(climb.rung(step), right)).findFirst();
    }

    private boolean cures(Rung rung, Rung right) {
        return rung.serves() && rung.option().orElseThrow().outlay().isEmpty()
                && rung.overBelow().filter(over -> Climb.savesEnough(over, right)).isPresent()
                && switch (rung.step()) {
                    case CONVERT -> !failsBySize() && lasts(rung);
                    case IMPROVE -> rung.what().improvement().filter(what -> what == Improvement.SECOND_TANK
                            || what == Improvement.LARGER_BED && lasts(rung)).isPresent();
                    default -> true;
                };
    }
}
