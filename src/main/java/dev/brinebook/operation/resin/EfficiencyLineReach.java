package dev.brinebook.operation.resin;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.SaltEfficiencyQuantity;
import dev.brinebook.resin.CapacityModel;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.ColumnCapacity;
import dev.brinebook.resin.EfficiencyLine;
import dev.brinebook.resin.EfficientDose;
import dev.brinebook.resin.Salt;
import dev.brinebook.wording.Message;
import java.util.List;
import java.util.Optional;

@About("A published line between efficient and wasteful softening, and the highest salt dose that still reaches its salt"
        + " efficiency. What else it asks for, such as little water, is not looked at here.")
public record EfficiencyLineReach(
        @Property(value = "Name of the line.", example = "\"california2002\"") String line,
        @Property("Least salt efficiency that it asks for.") SaltEfficiencyQuantity leastSaltEfficiency,
        @Property("What must start the regenerations for it to apply.") EfficiencyLine.StartedBy startedBy,
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
                explanation.because("/efficiencyLines", Message.of("the highest dose whose computed salt efficiency is that of"
                        + " the line: an estimate, never a certification"), key));
    }
}
