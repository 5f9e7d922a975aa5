package dev.brinebook.operation.regeneration;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.regeneration.Spread;

@About("How a capacity spreads over the simulated years.")
public record CapacitySpread(
        @Property("Mean of the years.") CapacityQuantity mean,
        @Property("What the mean is uncertain by, as its standard error.") CapacityQuantity standardError,
        @Property("A twentieth of the years stay below it.") CapacityQuantity percentile5,
        @Property("Half of the years stay below it.") CapacityQuantity median,
        @Property("A twentieth of the years are above it.") CapacityQuantity percentile95) {

    /** The spread, told in grams as CaCO3. */
    static CapacitySpread of(Spread spread, AnswerUnits units) {
        return new CapacitySpread(units.capacity(spread.mean()), units.capacity(spread.standardError()),
                units.capacity(spread.percentile5()), units.capacity(spread.median()),
                units.capacity(spread.percentile95()));
    }
}
