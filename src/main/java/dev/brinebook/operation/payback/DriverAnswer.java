// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.Input;
import dev.brinebook.payback.UncertainWorth.Driver;
import dev.brinebook.quantity.Rounding;
import java.math.BigDecimal;
import java.util.Currency;

@SchemaDescription("Effect of one uncertain input on the net present value, with the others at their medians.")
public record DriverAnswer(
        @Property(value = "The input.", example = "\"saltPrice\"") Input input,
        @Property(value = "Factor at the 10 % quantile.", min = 0, example = "0.81") BigDecimal lowFactor,
        @Property(value = "Factor at the 90 % quantile.", min = 0, example = "1.19") BigDecimal highFactor,
        @Property("Net present value at the low factor, in the long run.") Money worthAtLow,
        @Property("Net present value at the high factor.") Money worthAtHigh,
        @Basis(formula = "formula.payback.rankCorrelationOverSimulated", source = "SPEARMAN-1904")
        @Property(value = "Rank correlation of the input with the net present value over the simulated cases.", min = -1, max = 1,
                example = "0.42") BigDecimal rankCorrelation) {

    static DriverAnswer of(Driver driver, Currency currency) {
        return new DriverAnswer(driver.input(), Rounding.answer(driver.lowFactor()), Rounding.answer(driver.highFactor()),
                Money.of(driver.worthAtLow(), currency), Money.of(driver.worthAtHigh(), currency),
                Rounding.answer(driver.rankCorrelation()));
    }
}
