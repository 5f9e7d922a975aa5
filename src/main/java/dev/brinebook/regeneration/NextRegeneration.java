// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import dev.brinebook.household.Days;
import java.time.LocalDate;
import java.util.Optional;

/** Looks ahead from the end of a trial, at mean use, by asking the policy night after night. */
final class NextRegeneration {

    private NextRegeneration() {
    }

    static Optional<LocalDate> expected(SimulationResult outcome, double meanLitres) {
        Guard.within(meanLitres, 0, Days.MAX_USE_LITRES, "meanLitres");
        Policy policy = outcome.policy();
        int nights = outcome.end().nightsSinceLast();
        double litres = outcome.end().litresSinceLast();
        WeekdayHistory history = WeekdayHistory.of(outcome.trial().days());
        LocalDate day = outcome.trial().days().dateOf(outcome.trial().days().size());
        for (int ahead = 0; ahead < Days.MAX_DAYS; ahead++, day = day.plusDays(1)) {
            if (meanLitres > 0 && policy.startsAtOnce() && policy.runsOutWithin(meanLitres, litres)) {
                return Optional.of(day);
            }
            litres += meanLitres;
            nights++;
            history.add(day.getDayOfWeek(), meanLitres);
            LocalDate morrow = day.plusDays(1);
            if (policy.callsTonight(litres, nights, morrow.getDayOfWeek(), history) || policy.overridesTonight(nights)) {
                return Optional.of(morrow);
            }
        }
        return Optional.empty();
    }
}
