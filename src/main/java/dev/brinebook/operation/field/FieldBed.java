// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.field;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.field.FieldQuantity;
import dev.brinebook.field.FieldResults;
import dev.brinebook.quantity.PressureUnit;

@SchemaDescription("Effects of the flows on bed, water and meter.")
public record FieldBed(
        @Basis(formula = "formula.field.rawShare", source = "CP-FIELD-TESTS")
        @Property(value = "Raw water in the tap water, in percent.", optional = FieldFlows.NOT_MEASURED) MeasuredValue rawWater,
        @Basis(formula = "formula.field.meterShare", source = "CP-FIELD-TESTS")
        @Property(value = "What the meter counts, in percent of the water caught.", optional = FieldFlows.NOT_MEASURED)
        MeasuredValue meterCounts,
        @Basis(formula = "formula.field.lift", source = "RICHARDSON-ZAKI")
        @Property(value = "Bed expansion by the measured drain flow, in percent of its depth.",
                optional = "if the readings do not suffice for it, if the bed is not lifted, or if resin is carried out")
        MeasuredValue lift,
        @Basis(formula = "formula.field.pressureLoss", source = "CP-FIELD-TESTS")
        @Property(value = "Pressure lost in the softener at the flow of the test.", optional = FieldFlows.NOT_MEASURED)
        MeasuredValue pressureLoss,
        @Basis(formula = "formula.field.cleanBedLoss", source = "ERGUN-1952")
        @Property(value = "Pressure that the clean bed loses at the measured service flow. Valve and distributors add to it.",
                optional = FieldFlows.NOT_MEASURED) MeasuredValue cleanBedLoss) {

    static FieldBed of(FieldResults results, AnswerUnits units) {
        PressureUnit unit = units.pressure(1).unit();
        return new FieldBed(MeasuredValue.percent(results.of(FieldQuantity.RAW_SHARE)),
                MeasuredValue.percent(results.of(FieldQuantity.METER_SHARE)), MeasuredValue.percent(results.of(FieldQuantity.LIFT)),
                MeasuredValue.orNull(results.of(FieldQuantity.PRESSURE_LOSS), unit),
                MeasuredValue.orNull(results.of(FieldQuantity.CLEAN_BED_LOSS), unit));
    }
}
