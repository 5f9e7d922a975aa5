// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.water.chemistry.BalanceCriterion;
import dev.brinebook.water.chemistry.ChargeBalance;
import java.math.BigDecimal;

@SchemaDescription("What one rule says of a balance of charges.")
public record BalanceVerdict(
        @Property("The rule: Standard Methods 1030 E, the German rule of the half sum, or the practice of agencies.")
        BalanceCriterion criterion,
        @Property(value = "The figure that the rule looks at. That of the half sum is twice the others.", unit = "%", example = "0.76")
        BigDecimal figurePercent,
        @Property("Its verdict.") BalanceCriterion.Verdict verdict) {

    static BalanceVerdict of(BalanceCriterion criterion, ChargeBalance balance) {
        return new BalanceVerdict(criterion, Rounding.answer(criterion.figurePercent(balance)), criterion.of(balance));
    }
}
