// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.comparison;

import dev.brinebook.api.AnswerValues.Value;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import java.math.BigDecimal;

@SchemaDescription("A value of an answer: a number, with its unit if it is a quantity, or a code.")
public record ComparedValue(
        @Property(value = "The number.", optional = "for a code", example = "6.5") BigDecimal value,
        @Property(value = "Unit of a quantity.", optional = "for a code, and for a number without a unit", example = "\"lb/ft3\"")
        String unit,
        @Property(value = "The code, name or date, true or false.", optional = "for a number", example = "\"setRight\"") String code) {

    static ComparedValue of(Value value) {
        return value == null ? null : new ComparedValue(value.number(), value.unit(), value.code());
    }
}
