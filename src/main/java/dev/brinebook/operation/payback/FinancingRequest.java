// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.payback.Outlay;
import java.math.BigDecimal;

@SchemaDescription("A loan for part of the cost less the rebate, repaid in equal amounts at the end of each year.")
public record FinancingRequest(
        @Property(value = "Share borrowed.", required = true, min = 0, max = 100, unit = "%", example = "80")
        BigDecimal sharePercent,
        @Property(value = "Term of the loan.", required = true, min = 1, max = Outlay.MAX_LOAN_YEARS,
                unit = "years", example = "5") Integer years,
        @Property(value = "Interest.", required = true, min = 0, max = 100 * Outlay.MAX_LOAN_SHARE_PER_YEAR,
                unit = "percent a year", example = "6") BigDecimal interestPercentPerYear) {
}
