// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.resin.ColumnCapacity;
import dev.brinebook.resin.CyclicColumn;
import dev.brinebook.resin.ResinEfficiency;
import dev.brinebook.resin.Salt;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.Optional;

@SchemaDescription("Parameters of the column. Has `reason` and `why` instead, if the water is too soft.")
public record ChartedColumn(
        @Property("Hardness of the softened water at which it treats the bed as exhausted.") HardnessQuantity endPoint,
        @Property(value = "Efficiency of a real bed, as a share of the column's capacity.", optional = "when the water is too soft",
                min = 0, max = 1,
                example = "0.79") BigDecimal resinEfficiency,
        @Basis(formula = "formula.resin.lowestDoseAfterFirst", source = "HELFFERICH")
        @Property(value = "Lowest dose of the tables that keeps the end point.",
                optional = "when the water is too soft") SaltDoseFigure leastSaltDose,
        @Property(value = "Stable code of the reason why there is no column.", optional = "when there is one") NoResultReason reason,
        @Property(value = "The reason as a sentence.", optional = "when there is one", example = "\"The water is less "
                + "than twice as hard as the end point, so there is hardly anything to soften.\"") Message why) {

    static ChartedColumn of(Optional<ColumnCapacity> column, double endPointMgPerL, Salt salt, AnswerUnits units) {
        HardnessQuantity end = units.hardness(endPointMgPerL);
        return column.map(of -> new ChartedColumn(end, Rounding.answer(of.efficiency()),
                SaltDoseFigure.of(of.leastSaltDoseGramsPerLitre(salt), units), null, null)).orElseGet(() ->
                new ChartedColumn(end, null, null, NoResultReason.NOTHING_TO_SOFTEN, units.saying(NoResultReason.NOTHING_TO_SOFTEN)));
    }

    static void explain(Optional<ColumnCapacity> column, Explanation explanation) {
        explanation.because("/column/endPoint", Message.of("formula.resin.aboveSoftenedWaterNo",
                Text.of(HardnessQuantity.forReader(CyclicColumn.DEFAULT_END_POINT_MG_PER_L, explanation))), "NSF-ANSI-44");
        if (column.isPresent()) {
            explanation.because("/column/resinEfficiency", Message.of("formula.resin.allDosesEquilibriumColumn",
                    Text.number(ResinEfficiency.WORKING), Text.of(HardnessQuantity.forReader(300, explanation))), "CP-WORKING-TABLE");
            explanation.because("/column/resinEfficiency", Message.of("formula.resin.tableWithin2Water",
                    Text.number(ResinEfficiency.NEW_RESIN), Text.of(HardnessQuantity.forReader(500, explanation))), "RESIN-DATA-SHEET");
        }
    }
}
