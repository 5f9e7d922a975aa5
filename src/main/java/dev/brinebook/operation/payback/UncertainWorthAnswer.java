// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.Input;
import dev.brinebook.payback.UncertainWorth;
import dev.brinebook.quantity.Rounding;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;

@SchemaDescription("Benefit of an option with uncertain inputs, and which inputs matter most.")
public record UncertainWorthAnswer(
        @Property(value = "Number of simulated cases.", min = 1, example = "1000") Integer draws,
        @Property("Net present value over the simulated cases.") MoneyQuantiles netPresentValue,
        @Property("Mean net present value.") Money mean,
        @Property("Standard error of the mean.") Money standardError,
        @Property("Simple payback over the simulated cases.") PaybackQuantiles paybackYears,
        @Property(value = "Years within which it should pay back.", min = 0, unit = "years", example = "5")
        BigDecimal withinYears,
        @Property(value = "Probability that it pays back within these years.", min = 0, max = 100, unit = "%", example = "83.2")
        BigDecimal paysWithinPercent,
        @Property(value = "Probability that it pays over the horizon.", min = 0, max = 100, unit = "%",
                example = "91") BigDecimal worthwhilePercent,
        @Property(value = "Inputs by their effect, largest first.", eachOf = Input.class) List<DriverAnswer> drivers) {

    static UncertainWorthAnswer of(UncertainWorth worth, double withinYears, Currency currency) {
        return new UncertainWorthAnswer(worth.draws(), MoneyQuantiles.of(worth.netPresentValue(), currency),
                Money.of(worth.mean().value(), currency), Money.of(worth.mean().standardError(), currency),
                PaybackQuantiles.of(worth.paybackYears()), Rounding.answer(withinYears),
                Rounding.answer(100 * worth.paysWithinShare(withinYears)),
                Rounding.answer(100 * (1 - worth.netPresentValue().shareUpTo(0))),
                worth.drivers().stream().map(driver -> DriverAnswer.of(driver, currency)).toList());
    }
}
