package dev.brinebook.operation.payback;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.Input;
import dev.brinebook.payback.UncertainWorth.Driver;
import dev.brinebook.quantity.Rounding;
import java.math.BigDecimal;
import java.util.Currency;

@About("What one uncertain input does to the net present value, the others at their medians.")
public record DriverAnswer(
        @Property(value = "The input.", example = "\"saltPrice\"") Input input,
        @Property(value = "Factor on it that it stays below in one case of ten.", min = 0, example = "0.81") BigDecimal lowFactor,
        @Property(value = "Factor on it that it is above in one case of ten.", min = 0, example = "1.19") BigDecimal highFactor,
        @Property("Net present value at the low factor, on the mean of endlessly many years.") Money worthAtLow,
        @Property("Net present value at the high factor.") Money worthAtHigh,
        @Property(value = "Rank correlation of the input with the net present value over the draws.", min = -1, max = 1,
                example = "0.42") BigDecimal rankCorrelation) {

    static DriverAnswer of(Driver driver, Currency currency) {
        return new DriverAnswer(driver.input(), Rounding.answer(driver.lowFactor()), Rounding.answer(driver.highFactor()),
                Money.of(driver.worthAtLow(), currency), Money.of(driver.worthAtHigh(), currency),
                Rounding.answer(driver.rankCorrelation()));
    }
}
