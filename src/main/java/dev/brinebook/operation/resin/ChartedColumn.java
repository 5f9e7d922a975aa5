package dev.brinebook.operation.resin;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.guard.NoAnswer;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.resin.ColumnCapacity;
import dev.brinebook.resin.CyclicColumn;
import dev.brinebook.resin.ResinEfficiency;
import dev.brinebook.resin.Salt;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.Optional;

@About("What the column counts with; reason and why instead, where the water is too soft for it.")
public record ChartedColumn(
        @Property("Hardness of the softened water at which it counts a bed as exhausted.") HardnessQuantity endPoint,
        @Property(value = "What a real bed gives of its capacity.", optional = "when the water is too soft", min = 0, max = 1,
                example = "0.79") BigDecimal resinEfficiency,
        @Property(value = "The least dose that holds the end point, of those that the tables cover.",
                optional = "when the water is too soft") SaltDoseFigure leastSaltDose,
        @Property(value = "Stable code of why there is no column.", optional = "when there is one") NoAnswer reason,
        @Property(value = "The same as a sentence.", optional = "when there is one", example = "\"the water is less than twice"
                + " as hard as the end point, so there is hardly anything to soften\"") Message why) {

    static ChartedColumn of(Optional<ColumnCapacity> column, double endPointMgPerL, Salt salt, AnswerUnits units) {
        HardnessQuantity end = units.hardness(endPointMgPerL);
        return column.map(of -> new ChartedColumn(end, Rounding.answer(of.efficiency()),
                SaltDoseFigure.of(of.leastSaltDoseGramsPerLitre(salt), units), null, null)).orElseGet(() ->
                new ChartedColumn(end, null, null, NoAnswer.NOTHING_TO_SOFTEN, units.saying(NoAnswer.NOTHING_TO_SOFTEN)));
    }

    static void explain(Optional<ColumnCapacity> column, AnswerUnits units, Explanation explanation) {
        explanation.because("/column/endPoint", Message.of("{0}, where softened water ceases to be called soft, unless another"
                + " is given", Text.of(units.hardness(CyclicColumn.DEFAULT_END_POINT_MG_PER_L))), "NSF-ANSI-44");
        if (column.isPresent()) {
            explanation.because("/column/resinEfficiency", Message.of("one number for all doses, {0}, makes the column give"
                    + " this table within 3 % in water of {1}, Ca:Mg 2:1, with 1 meq/L of sodium",
                    Text.number(ResinEfficiency.WORKING), Text.of(units.hardness(300))), "CP-WORKING-TABLE");
            explanation.because("/column/resinEfficiency", Message.of("and {0} this one within 2 % in water of {1}",
                    Text.number(ResinEfficiency.NEW_RESIN), Text.of(units.hardness(500))), "RESIN-DATA-SHEET");
            explanation.because("/column/leastSaltDose", Message.of("the least dose after which the first softened water is"
                    + " below the end point, found by halving the range"), "HELFFERICH");
        }
    }
}
