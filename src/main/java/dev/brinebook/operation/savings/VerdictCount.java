// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.savings.SavingsVerdict;

@SchemaDescription("How many homes have a verdict.")
public record VerdictCount(
        @Property(value = "The verdict.", example = "\"confirmed\"") SavingsVerdict verdict,
        @Basis(formula = "formula.savings.counted", source = "REQUEST")
        @Property(value = "Homes with it.", min = 0, example = "41") Integer homes) {
}
