// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.field;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.field.FieldQuantity;
import dev.brinebook.field.FieldResults;
import dev.brinebook.field.SaltDissolving;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.SaltPerVolumeUnit;
import java.math.BigDecimal;
import java.util.function.DoubleUnaryOperator;

@SchemaDescription("The brine.")
public record FieldBrine(
        @Basis(formula = "formula.field.correctedDegrees", source = "LALIBERTE-2004")
        @Property("Strength in degrees at 60 F. 100 is saturated.") MeasuredValue degrees,
        @Basis(formula = "formula.field.saltPerWater", source = "LALIBERTE-2004")
        @Property("Salt that a volume of refilled water takes up.") MeasuredValue saltPerWater,
        @Basis(formula = "formula.field.saltPerBrine", source = "LALIBERTE-2004")
        @Property("Salt in a volume of brine.") MeasuredValue saltPerBrine,
        @Basis(formula = "formula.field.dissolving", source = "OWN-ASSUMPTION")
        @Property(value = "Shortest time until refilled water is saturated, where salt stands above it.", min = 0, unit = "minutes",
                example = "14") BigDecimal fastestMinutes,
        @Basis(formula = "formula.field.dissolving", source = "OWN-ASSUMPTION")
        @Property(value = "Longest time.", min = 0, unit = "minutes", example = "46") BigDecimal slowestMinutes,
        @Basis(formula = "formula.field.wait", source = "CP-FIELD-TESTS")
        @Property(value = "Wait before the brine is drawn or tested.", min = 0, unit = "minutes", example = "120") BigDecimal waitMinutes) {

    static FieldBrine of(FieldResults results, double voidShare, AnswerUnits units) {
        SaltPerVolumeUnit unit = units.saltPerVolume(1).unit();
        return new FieldBrine(MeasuredValue.of(results.of(FieldQuantity.BRINE_DEGREES_AT_SCALE).orElseThrow(), "degrees",
                DoubleUnaryOperator.identity()), MeasuredValue.orNull(results.of(FieldQuantity.SALT_PER_WATER), unit),
                MeasuredValue.orNull(results.of(FieldQuantity.SALT_PER_BRINE), unit),
                minutes(SaltDissolving.ASSUMED_FAST_METRES_PER_SECOND, voidShare),
                minutes(SaltDissolving.ASSUMED_SLOW_METRES_PER_SECOND, voidShare), Rounding.answer(SaltDissolving.WAIT_MINUTES));
    }

    private static BigDecimal minutes(double transfer, double voidShare) {
        return Rounding.answer(SaltDissolving.minutes(transfer, voidShare, SaltDissolving.ASSUMED_PIECE_METRES));
    }
}
