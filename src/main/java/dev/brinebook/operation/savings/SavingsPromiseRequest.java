// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.savings.SavingsGoal;
import java.math.BigDecimal;

@SchemaDescription("The promised saving, and how much of it fulfils the promise.")
public record SavingsPromiseRequest(
        @Property(value = "Share of the salt that was promised to be saved.", min = 0, aboveMin = true,
                max = 100 * SavingsGoal.MAX_PROMISE, unit = "%", example = "30",
                fallback = "no promise: the question is whether anything is saved") BigDecimal saltPercent,
        @Property(value = "Share of the promised saving that fulfils the promise.", min = 10, max = 100, unit = "%",
                byDefault = 100 * SavingsGoal.ASSUMED_TOLERATED, example = "80") BigDecimal keptPercent,
        @Property(value = "Probability that a verdict needs.", min = 100 * SavingsGoal.MIN_CONFIDENCE,
                max = 100 * SavingsGoal.MAX_CONFIDENCE, unit = "%", byDefault = 100 * SavingsGoal.ASSUMED_CONFIDENCE, example = "90")
        BigDecimal confidencePercent) {

    static final SavingsPromiseRequest NONE = new SavingsPromiseRequest(null, null, null);

    /** What has to be shown; {@code own} and {@code common} may be null, and {@code own} comes first. */
    static SavingsGoal goal(SavingsPromiseRequest own, SavingsPromiseRequest common, Explanation explanation) {
        SavingsPromiseRequest given = own != null ? own : common != null ? common : NONE;
        double kept = explanation.resolve(given.keptPercent, Resolved.of("/promise/keptPercent", 100 * SavingsGoal.ASSUMED_TOLERATED, "%")
                .byDefault("OWN-ASSUMPTION"));
        double confidence = explanation.resolve(given.confidencePercent, Resolved.of("/promise/confidencePercent",
                100 * SavingsGoal.ASSUMED_CONFIDENCE, "%").byDefault("OWN-ASSUMPTION"));
        return new SavingsGoal(given.saltPercent == null ? 0 : given.saltPercent.doubleValue() / 100, kept / 100, confidence / 100);
    }
}
