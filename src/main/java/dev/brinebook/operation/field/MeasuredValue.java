// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.field;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.field.ReadingCode;
import dev.brinebook.measurement.Measured;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.Unit;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

@SchemaDescription("A quantity from readings, with its uncertainty by propagation and by simulation.")
public record MeasuredValue(
        @Property(value = "The number.", example = "8.97") BigDecimal value,
        @Property(value = "Its unit, that of a quantity, or degrees or %.", example = "\"lb\"") String unit,
        @Property(value = "Standard uncertainty by propagation.", min = 0, example = "0.27") BigDecimal standardUncertainty,
        @Property(value = "Expanded uncertainty: twice the standard uncertainty.", min = 0, example = "0.54")
        BigDecimal expandedUncertainty,
        @Property(value = "Low end of the interval that holds it with 95 %, by simulation.", example = "8.46") BigDecimal low,
        @Property(value = "High end of that interval.", example = "9.48") BigDecimal high,
        @Property(value = "Standard uncertainty by simulation.", min = 0, example = "0.271") BigDecimal simulatedUncertainty,
        @Property(value = "Whether propagation and simulation agree. Where they do not, trust the interval.", example = "true")
        Boolean agrees,
        @Property(value = "The reading that makes it most uncertain.", example = "\"refillVolume\"") ReadingCode largestContribution,
        @Property(value = "Its part in the variance.", min = 0, max = 100, unit = "%", example = "91") BigDecimal contributionPercent) {

    /** A quantity in a unit. */
    static MeasuredValue of(Measured<ReadingCode> measured, Unit unit) {
        return of(measured, unit.symbol(), unit::fromBase);
    }

    /** The same of a quantity that may not be known; null then. */
    static MeasuredValue orNull(Optional<Measured<ReadingCode>> measured, Unit unit) {
        return measured.map(known -> of(known, unit)).orElse(null);
    }

    /** A share in percent; null if it is not known. */
    static MeasuredValue percent(Optional<Measured<ReadingCode>> measured) {
        return measured.map(known -> of(known, "%", share -> 100 * share)).orElse(null);
    }

    /** A quantity in a unit without a name of its own on the wire. */
    static MeasuredValue of(Measured<ReadingCode> measured, String symbol, DoubleUnaryOperator inUnit) {
        ReadingCode largest = measured.largestContribution().orElseThrow();
        return new MeasuredValue(number(measured.value(), inUnit), symbol, number(measured.standardUncertainty(), inUnit),
                number(measured.expandedUncertainty(), inUnit), number(low(measured), inUnit),
                number(measured.simulated().high(), inUnit), number(measured.simulated().standardUncertainty(), inUnit),
                measured.agrees(), largest, Rounding.answer(Math.min(100, 100 * measured.varianceShare(largest))));
    }

    /** Low end of the interval; nothing measured here is negative, so that it ends at 0 unless the value itself is below. */
    static double low(Measured<ReadingCode> measured) {
        return measured.value() < 0 ? measured.simulated().low() : Math.max(0, measured.simulated().low());
    }

    private static BigDecimal number(double base, DoubleUnaryOperator inUnit) {
        return Rounding.answer(inUnit.applyAsDouble(base));
    }
}
