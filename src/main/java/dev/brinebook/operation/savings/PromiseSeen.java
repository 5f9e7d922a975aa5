// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.savings.SavingsEstimate;
import dev.brinebook.savings.SavingsGoal;
import java.math.BigDecimal;

@SchemaDescription("The promise against what was seen.")
public record PromiseSeen(
        @Property(value = "Share of the salt that was promised.", min = 0, unit = "%", example = "30") BigDecimal promisedPercent,
        @Property(value = "Share that was seen.", unit = "%", example = "27.4") BigDecimal seenPercent,
        @Property(value = "Seen divided by promised.", unit = "times the promise", example = "0.91") BigDecimal factor,
        @Property(value = "Low end of its interval.", unit = "times the promise", example = "0.63") BigDecimal factorLow,
        @Property(value = "High end of its interval.", unit = "times the promise", example = "1.17") BigDecimal factorHigh,
        @Property(value = "Probability that the promise is kept.", min = 0, max = 100, unit = "%", example = "76")
        BigDecimal probabilityKeptPercent) {

    /** Null without a promise. */
    static PromiseSeen of(SavingsEstimate estimate, SavingsGoal goal) {
        return goal.promised() == 0 ? null : new PromiseSeen(SavedSalt.percent(goal.promised()), SavedSalt.percent(estimate.share()),
                factor(estimate.share(), goal), factor(estimate.low(), goal), factor(estimate.high(), goal),
                SavedSalt.percent(estimate.probabilityOfAtLeast(goal.leastShare())));
    }

    private static BigDecimal factor(double share, SavingsGoal goal) {
        return Rounding.answer(share / goal.promised());
    }
}
