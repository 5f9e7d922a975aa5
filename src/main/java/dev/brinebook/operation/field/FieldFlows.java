// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.field;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.field.FieldQuantity;
import dev.brinebook.field.FieldResults;
import dev.brinebook.quantity.FlowUnit;

@SchemaDescription("Flows measured.")
public record FieldFlows(
        @Basis(formula = "formula.field.bucketFlow", source = "CP-FIELD-TESTS")
        @Property(value = "Drain.", optional = FieldFlows.NOT_MEASURED) MeasuredValue drain,
        @Basis(formula = "formula.field.bucketFlow", source = "CP-FIELD-TESTS")
        @Property(value = "Brine refill.", optional = FieldFlows.NOT_MEASURED) MeasuredValue refill,
        @Basis(formula = "formula.field.drawFlow", source = "CP-FIELD-TESTS")
        @Property(value = "Brine draw.", optional = FieldFlows.NOT_MEASURED) MeasuredValue brineDraw,
        @Basis(formula = "formula.field.bucketFlow", source = "CP-FIELD-TESTS")
        @Property(value = "Service flow.", optional = FieldFlows.NOT_MEASURED) MeasuredValue service) {

    static final String NOT_MEASURED = "if the readings do not suffice for it";

    static FieldFlows of(FieldResults results, AnswerUnits units) {
        FlowUnit unit = units.flow(1).unit();
        return new FieldFlows(MeasuredValue.orNull(results.of(FieldQuantity.DRAIN_FLOW), unit),
                MeasuredValue.orNull(results.of(FieldQuantity.REFILL_FLOW), unit),
                MeasuredValue.orNull(results.of(FieldQuantity.BRINE_DRAW_FLOW), unit),
                MeasuredValue.orNull(results.of(FieldQuantity.SERVICE_FLOW), unit));
    }
}
