// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.SaltEfficiencyQuantity;
import dev.brinebook.resin.CapacityModel;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.ColumnCapacity;
import dev.brinebook.resin.EfficiencyLine;
import dev.brinebook.resin.EfficientDose;
import dev.brinebook.resin.Salt;
import dev.brinebook.text.Message;
import java.util.List;
import java.util.Optional;

@SchemaDescription("A published efficiency limit, and the highest salt dose that meets its salt efficiency. Its other criteria, such as "
        + "water, are not checked here.")
public record EfficiencyLineReach(
        @Property(value = "Name of the limit.", example = "\"california2002\"") String line,
        @Property("Minimum salt efficiency required.") SaltEfficiencyQuantity leastSaltEfficiency,
        @Property("Control type to which it applies.") EfficiencyLine.StartedBy startedBy,
        @Property("Highest dose by the table of resin in use.") SaltDoseFigure workingTable,
        @Property("Highest dose by the table of new resin.") SaltDoseFigure newResinTable,
        @Property(value = "Highest dose by the column, in this water.", optional = "when the water is too soft for the end"
                + " point") SaltDoseFigure column) {

    static List<EfficiencyLineReach> all(Salt salt, double sitesLeft, Optional<ColumnCapacity> column, AnswerUnits units) {
        return EfficiencyLine.all().stream().map(line -> new EfficiencyLineReach(line.code(),
                units.saltEfficiency(line.minSaltEfficiencyGramsPerGram()), line.startedBy(),
                highest(CapacityTable.WORKING.withSitesLeft(sitesLeft), salt, line, units),
                highest(CapacityTable.NEW_RESIN.withSitesLeft(sitesLeft), salt, line, units),
                column.map(model -> highest(model, salt, line, units)).orElse(null))).toList();
    }

    private static SaltDoseFigure highest(CapacityModel model, Salt salt, EfficiencyLine line, AnswerUnits units) {
        return SaltDoseFigure.of(EfficientDose.highestGramsPerLitre(model, salt, line.minSaltEfficiencyGramsPerGram()),
                units);
    }

    static void explain(Explanation explanation) {
        EfficiencyLine.all().stream().map(EfficiencyLine::sourceKey).distinct().forEach(key ->
                explanation.because("/efficiencyLines", Message.of("formula.resin.highestDoseWhoseCalculated"), key));
    }
}
