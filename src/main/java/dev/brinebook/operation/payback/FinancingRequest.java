package dev.brinebook.operation.payback;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.payback.Outlay;
import java.math.BigDecimal;

@About("A loan for part of the cost less the rebate, paid back in equal amounts at the end of each year.")
public record FinancingRequest(
        @Property(value = "Share that is borrowed.", required = true, min = 0, max = 100, unit = "%", example = "80")
        BigDecimal sharePercent,
        @Property(value = "Years over which it is paid back.", required = true, min = 1, max = Outlay.MAX_LOAN_YEARS,
                unit = "years", example = "5") Integer years,
        @Property(value = "Interest.", required = true, min = 0, max = 100 * Outlay.MAX_LOAN_SHARE_PER_YEAR,
                unit = "percent a year", example = "6") BigDecimal interestPercentPerYear) {
}
