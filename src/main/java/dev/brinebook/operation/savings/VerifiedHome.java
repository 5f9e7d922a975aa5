// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.savings.SavingsEstimate;
import dev.brinebook.savings.SavingsFinding;
import dev.brinebook.savings.SavingsGoal;
import dev.brinebook.savings.SavingsPeriod;
import dev.brinebook.savings.SavingsVerdict;
import dev.brinebook.savings.UseScatter;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.OptionalLong;
import java.util.Set;

/**
 * One home with readings before and after.
 *
 * @param before the period before
 * @param after the period after
 * @param estimate the saving
 * @param findings what it should not be read without
 * @param verdict whether it is as promised
 * @param avoidedKilograms salt that was not used in the period after, at its own use
 */
record VerifiedHome(SavingsPeriod before, SavingsPeriod after, SavingsEstimate estimate, Set<SavingsFinding> findings,
        SavingsVerdict verdict, double avoidedKilograms) {

    static VerifiedHome of(SavingsPeriodRequest before, SavingsPeriodRequest after, SavingsPeriod readBefore, SavingsPeriod readAfter,
            LocalDate changedOn, UseScatter scatter, SavingsGoal goal) {
        SavingsEstimate estimate = SavingsEstimate.of(readBefore, readAfter, scatter);
        Set<SavingsFinding> findings = SavingsFinding.of(readBefore, readAfter, estimate.saltAgrees(),
                ReadPeriod.hardness(before.outletHardness()), ReadPeriod.hardness(after.outletHardness()),
                changedOn == null ? OptionalLong.empty() : OptionalLong.of(ChronoUnit.DAYS.between(changedOn, after.from())));
        return new VerifiedHome(readBefore, readAfter, estimate, findings, verdict(readBefore, readAfter, estimate, findings, goal),
                SavingsEstimate.avoidedKilograms(readBefore, readAfter, scatter));
    }

    private static SavingsVerdict verdict(SavingsPeriod before, SavingsPeriod after, SavingsEstimate estimate,
            Set<SavingsFinding> findings, SavingsGoal goal) {
        if (findings.stream().anyMatch(SavingsFinding::forbidsVerdict)) {
            return SavingsVerdict.NO_VERDICT;
        }
        return before.hasTooFewRegenerations() || after.hasTooFewRegenerations() ? SavingsVerdict.TOO_EARLY
                : SavingsVerdict.of(estimate, goal);
    }
}
