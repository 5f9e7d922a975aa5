// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.field;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.field.FieldQuantity;
import dev.brinebook.field.FieldResults;
import dev.brinebook.quantity.MassUnit;

@SchemaDescription("Salt really given in each regeneration.")
public record FieldSalt(
        @Basis(formula = "formula.field.saltByRefill", source = "CP-FIELD-TESTS")
        @Property(value = "By the refill: its water and the strength of the brine.", optional = FieldFlows.NOT_MEASURED)
        MeasuredValue byRefill,
        @Basis(formula = "formula.field.saltByDraw", source = "CP-FIELD-TESTS")
        @Property(value = "By the draw: the fall of the level and the strength of the brine.", optional = FieldFlows.NOT_MEASURED)
        MeasuredValue byDraw,
        @Basis(formula = "formula.field.saltByBooks", source = "CP-FIELD-TESTS")
        @Property(value = "By the books: salt bought over regenerations counted.", optional = FieldFlows.NOT_MEASURED)
        MeasuredValue byBooks,
        @Property(value = "Together.", optional = FieldFlows.NOT_MEASURED) CombinedValue combined) {

    static FieldSalt of(FieldResults results, AnswerUnits units) {
        MassUnit unit = units.mass(1).unit();
        return new FieldSalt(MeasuredValue.orNull(results.of(FieldQuantity.SALT_BY_REFILL), unit),
                MeasuredValue.orNull(results.of(FieldQuantity.SALT_BY_DRAW), unit),
                MeasuredValue.orNull(results.of(FieldQuantity.SALT_BY_BOOKS), unit),
                results.salt().map(salt -> CombinedValue.of(salt, unit)).orElse(null));
    }
}
