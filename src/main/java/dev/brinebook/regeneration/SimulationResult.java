// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What one policy did in one trial.
 *
 * @param trial the days, water and softener it was tried on
 * @param policy the policy
 * @param events every regeneration in order
 * @param totals sums over all the days
 * @param firstHardDay index of the first day on which the bed was exhausted
 * @param end what it leaves
 */
public record SimulationResult(SimulationInput trial, Policy policy, List<RegenerationEvent> events, Totals totals,
                      OptionalInt firstHardDay, FinalState end) {

    /** Date of the first day on which the bed was exhausted. */
    public Optional<LocalDate> firstHardDate() {
        return firstHardDay.isPresent() ? Optional.of(trial.days().dateOf(firstHardDay.getAsInt())) : Optional.empty();
    }

    public Optional<LocalDate> lastRegeneration() {
        return events.isEmpty() ? Optional.empty() : Optional.of(events.get(events.size() - 1).date());
    }

    /** Mean number of days from one regeneration to the next; the time before the first one does not count. */
    public OptionalResult meanIntervalDays() {
        if (events.isEmpty()) {
            return OptionalResult.none(NoResultReason.NEVER_REGENERATES);
        }
        if (events.size() == 1) {
            return OptionalResult.none(NoResultReason.ONE_REGENERATION);
        }
        LocalDate first = events.get(0).date();
        return OptionalResult.of((double) ChronoUnit.DAYS.between(first, lastRegeneration().orElseThrow()) / (events.size() - 1));
    }

    /** The totals of a year of such days. */
    public YearlyTotals yearly() {
        return YearlyTotals.of(totals, trial.days().size());
    }

    /**
     * What the charge balance is out by, as CaCO3: 0 but for rounding.
     * <pre>d = removed - (regenerated + start - end)</pre>
     * removed: taken up from the water; regenerated: driven off; start, end: capacity left before and after, all in grams.
     *
     * <p>Source: conservation of charge.
     */
    public double chargeImbalanceGrams() {
        return totals.removedGrams() - (totals.regeneratedGrams() + trial.startGrams() - end.leftGrams());
    }

    /**
     * When it will regenerate next if every day from now on uses {@code meanLitres}; empty when not within three years.
     */
    public Optional<LocalDate> nextRegeneration(double meanLitres) {
        return NextRegeneration.expected(this, meanLitres);
    }
}
