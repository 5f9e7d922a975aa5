// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.comparison;

import dev.brinebook.api.AnswerValues.Value;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import java.math.BigDecimal;

@SchemaDescription("A value of an answer: a number, with its unit if it is a quantity, a code, or true or false.")
public record ComparedValue(
        @Property(value = "The number.", optional = "for a code or flag", example = "6.5") BigDecimal value,
        @Property(value = "Unit of a quantity.", optional = "without a number, and for a number without a unit", example = "\"lb/ft3\"")
        String unit,
        @Property(value = "The code, name or date.", optional = "for a number or flag", example = "\"setRight\"") String code,
        @Property(value = "Whether it is true.", optional = "for a number or code", example = "true") Boolean flag) {

    static ComparedValue of(Value value) {
        return value == null ? null : new ComparedValue(value.number(), value.unit(), value.code(), value.flag());
    }
}
