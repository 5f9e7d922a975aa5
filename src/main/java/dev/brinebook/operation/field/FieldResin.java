// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.field;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.field.FieldQuantity;
import dev.brinebook.field.FieldResults;
import dev.brinebook.quantity.CapacityUnit;
import dev.brinebook.quantity.VolumeUnit;

@SchemaDescription("The resin: its volume in three ways, and its capacity.")
public record FieldResin(
        @Basis(formula = "formula.field.resinByGeometry", source = "CP-FIELD-TESTS")
        @Property(value = "Volume by the tank and the depth of the resin.", optional = FieldFlows.NOT_MEASURED) MeasuredValue byGeometry,
        @Basis(formula = "formula.field.resinByNameplate", source = "CP-NAMEPLATE")
        @Property(value = "Volume by the name plate.", optional = FieldFlows.NOT_MEASURED) MeasuredValue byNameplate,
        @Basis(formula = "formula.field.resinByRun", source = "CP-WORKING-TABLE")
        @Property(value = "Volume of new resin that would take up what the run took up.", optional = FieldFlows.NOT_MEASURED)
        MeasuredValue byRun,
        @Property(value = "Together.", optional = FieldFlows.NOT_MEASURED) CombinedValue combined,
        @Basis(formula = "formula.field.capacity", source = "CP-FIELD-TESTS")
        @Property(value = "Hardness taken up until the outlet ran hard.", optional = FieldFlows.NOT_MEASURED) MeasuredValue capacity,
        @Basis(formula = "formula.field.capacityLeft", source = "CP-WORKING-TABLE")
        @Property(value = "Capacity left, in percent of new resin with the salt really given.", optional = FieldFlows.NOT_MEASURED)
        MeasuredValue capacityLeft,
        @Basis(formula = "formula.field.freeboard", source = "CP-HYDRAULICS")
        @Property(value = "Freeboard in percent of the depth of the resin.", optional = FieldFlows.NOT_MEASURED) MeasuredValue freeboard) {

    static FieldResin of(FieldResults results, AnswerUnits units) {
        VolumeUnit unit = units.resinVolume(1).unit();
        CapacityUnit capacity = units.capacity(1).unit();
        return new FieldResin(MeasuredValue.orNull(results.of(FieldQuantity.RESIN_BY_GEOMETRY), unit),
                MeasuredValue.orNull(results.of(FieldQuantity.RESIN_BY_NAMEPLATE), unit), MeasuredValue.orNull(results.resinByRun(), unit),
                results.resin().map(resin -> CombinedValue.of(resin, unit)).orElse(null),
                MeasuredValue.orNull(results.capacity(), capacity), MeasuredValue.percent(results.capacityLeft()),
                MeasuredValue.percent(results.of(FieldQuantity.FREEBOARD_SHARE)));
    }
}
