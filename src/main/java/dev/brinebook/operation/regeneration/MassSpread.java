package dev.brinebook.operation.regeneration;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.regeneration.Spread;

@About("How a mass spreads over the simulated years.")
public record MassSpread(
        @Property("Mean of the years.") MassQuantity mean,
        @Property("What the mean is uncertain by, as its standard error.") MassQuantity standardError,
        @Property("A twentieth of the years stay below it.") MassQuantity percentile5,
        @Property("Half of the years stay below it.") MassQuantity median,
        @Property("A twentieth of the years are above it.") MassQuantity percentile95) {

    /** The spread, told in grams. */
    static MassSpread of(Spread spread, AnswerUnits units) {
        return new MassSpread(units.mass(spread.mean() / 1000), units.mass(spread.standardError() / 1000),
                units.mass(spread.percentile5() / 1000), units.mass(spread.median() / 1000),
                units.mass(spread.percentile95() / 1000));
    }
}
