// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.field;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.field.FieldFinding;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.OptionalDouble;

@SchemaDescription("A contradiction between measurements, or between one and a setting or rule.")
public record FieldFindingLine(
        @Property(value = "Stable code.", example = "\"waterLeftOver\"") FieldFinding code,
        @Property(value = "The contradiction and what it means, in sentences.", example = "\"The draw takes less brine than the refill "
                + "makes. Check injector, screen and drain.\"") Message message,
        @Basis(formula = "formula.field.deviation", source = "GUM")
        @Property(value = "How far the two numbers lie apart, in standard uncertainties.", unit = "standard uncertainties",
                optional = "if no two numbers are compared", example = "-3.1") BigDecimal deviation) {

    static FieldFindingLine of(FieldFinding finding, OptionalDouble deviation, AnswerUnits units) {
        return new FieldFindingLine(finding, units.saying(finding), deviation.isPresent() ? Rounding.answer(deviation.getAsDouble())
                : null);
    }
}
