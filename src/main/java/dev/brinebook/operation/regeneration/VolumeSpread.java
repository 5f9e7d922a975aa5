package dev.brinebook.operation.regeneration;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.regeneration.Spread;

@About("How a volume spreads over the simulated years.")
public record VolumeSpread(
        @Property("Mean of the years.") VolumeQuantity mean,
        @Property("What the mean is uncertain by, as its standard error.") VolumeQuantity standardError,
        @Property("A twentieth of the years stay below it.") VolumeQuantity percentile5,
        @Property("Half of the years stay below it.") VolumeQuantity median,
        @Property("A twentieth of the years are above it.") VolumeQuantity percentile95) {

    /** The spread, told in litres. */
    static VolumeSpread of(Spread spread, AnswerUnits units) {
        return new VolumeSpread(units.volume(spread.mean()), units.volume(spread.standardError()),
                units.volume(spread.percentile5()), units.volume(spread.median()),
                units.volume(spread.percentile95()));
    }
}
