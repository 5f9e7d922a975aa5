package dev.brinebook.operation.regeneration;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.Spread;
import java.math.BigDecimal;

@About("How a number spreads over the simulated years.")
public record YearSpread(
        @Property(value = "Mean of the years.", min = 0, example = "90.4") BigDecimal mean,
        @Property(value = "What the mean is uncertain by, as its standard error.", min = 0, example = "0.1")
        BigDecimal standardError,
        @Property(value = "A twentieth of the years stay below it.", min = 0, example = "87") BigDecimal percentile5,
        @Property(value = "Half of the years stay below it.", min = 0, example = "90") BigDecimal median,
        @Property(value = "A twentieth of the years are above it.", min = 0, example = "94") BigDecimal percentile95) {

    static YearSpread of(Spread spread) {
        return new YearSpread(Rounding.answer(spread.mean()), Rounding.answer(spread.standardError()),
                Rounding.answer(spread.percentile5()), Rounding.answer(spread.median()),
                Rounding.answer(spread.percentile95()));
    }
}
