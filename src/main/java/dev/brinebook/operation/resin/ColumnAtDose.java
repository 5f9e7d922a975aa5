package dev.brinebook.operation.resin;

import dev.brinebook.answer.resin.CapacityBasis;
import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.BedCapacityQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.SaltEfficiencyQuantity;
import dev.brinebook.guard.NoAnswer;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.resin.ColumnCapacity;
import dev.brinebook.resin.ColumnResult;
import dev.brinebook.resin.ResinEfficiency;
import dev.brinebook.resin.Salt;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

@About("What the column gives at a salt dose in this water; reason and why instead, where the dose does not hold the end"
        + " point.")
public record ColumnAtDose(
        @Property(value = "Capacity per volume of resin.", optional = ColumnAtDose.NONE) BedCapacityQuantity capacity,
        @Property(value = "Hardness removed per salt used.", optional = ColumnAtDose.NONE)
        SaltEfficiencyQuantity saltEfficiency,
        @Property(value = "Names of the lines whose salt efficiency that is.", optional = ColumnAtDose.NONE,
                example = "[\"productStandard\"]") List<String> linesReached,
        @Property(value = "Hardness of the first softened water.", optional = ColumnAtDose.NONE)
        HardnessQuantity startLeakage,
        @Property(value = "Hardness of all the softened water mixed.", optional = ColumnAtDose.NONE)
        HardnessQuantity meanLeakage,
        @Property(value = "Hardness of the last softened water: the end point.", optional = ColumnAtDose.NONE)
        HardnessQuantity endLeakage,
        @Property(value = "Water softened from one regeneration to the next, in volumes of resin.",
                optional = ColumnAtDose.NONE, min = 0, example = "192.4") BigDecimal serviceBedVolumes,
        @Property(value = "Equivalents of hardness removed, in percent of those of the salt.", optional = ColumnAtDose.NONE,
                min = 0, max = 100, unit = "%", example = "50.1") BigDecimal saltUsedPercent,
        @Property(value = "Stable code of why the dose is of no use in this water.", optional = "when capacity is there")
        NoAnswer reason,
        @Property(value = "The same as a sentence.", optional = "when capacity is there", example = "\"at this salt dose more"
                + " hardness leaks through than the end point allows, from the first litre on\"") Message why) {

    static final String NONE = "when the dose does not hold the end point";

    static ColumnAtDose of(ColumnCapacity column, Salt salt, double gramsPerLitre, AnswerUnits units) {
        ColumnResult result = column.column(salt, gramsPerLitre);
        if (result instanceof ColumnResult.NotSettled none) {
            return new ColumnAtDose(null, null, null, null, null, null, null, null, none.reason(),
                    units.saying(none.reason()));
        }
        ColumnResult.Settled cycle = (ColumnResult.Settled) result;
        double capacity = ResinEfficiency.capacityGramsPerLitre(cycle, column.efficiency());
        return new ColumnAtDose(units.bedCapacity(capacity), units.saltEfficiency(capacity / gramsPerLitre),
                TableAtDose.linesReached(capacity / gramsPerLitre), units.hardness(cycle.startLeakageMgPerL()),
                units.hardness(cycle.meanLeakageMgPerL()), units.hardness(cycle.endLeakageMgPerL()),
                Rounding.answer(column.efficiency() * cycle.serviceBedVolumes()),
                Rounding.answer(100 * column.efficiency() * cycle.saltUsedShare()), null, null);
    }

    static void explain(Optional<ColumnCapacity> column, Salt salt, Explanation explanation) {
        if (column.isEmpty()) {
            return;
        }
        int stages = column.get().resin().stages();
        BigDecimal efficiency = Text.number(column.get().efficiency());
        explanation.because("/points/*/column/capacity", Message.of("what {0} stages in exchange equilibrium take from this"
                + " water up to the end point, cycle after cycle at this salt dose, times the efficiency of a real bed, {1}", stages,
                efficiency), "HELFFERICH");
        explanation.because("/points/*/column/capacity", Message.of("how firmly the resin holds calcium, magnesium and"
                + " potassium over sodium"), "BONNER-SMITH");
        CapacityBasis.explainScheme("/points/*/column/capacity", explanation);
        CapacityBasis.explainScheme("/points/*/column/meanLeakage", explanation);
        explanation.because("/points/*/column/saltEfficiency", Message.of("capacity over salt dose"), "WQP-2009");
        for (String leakage : List.of("startLeakage", "meanLeakage", "endLeakage")) {
            explanation.because("/points/*/column/" + leakage, Message.of("of the {0} stages in exchange equilibrium themselves,"
                    + " no efficiency applied: where water finds channels, more leaks through", stages), "HELFFERICH");
        }
        explanation.because("/points/*/column/serviceBedVolumes", Message.of("water that the stages soften up to the end point,"
                + " times {0}, as the capacity", efficiency), "HELFFERICH");
        explanation.because("/points/*/column/saltUsedPercent", Message.of("capacity over {0} g of CaCO3 for each gram of salt",
                Text.number(salt.ceilingGramsPerGram())), "CIAAW");
        explanation.because("/points/*/column/reason", Message.of("the dose leaves so much hardness in the bed that the first"
                + " softened water is above the end point; else one cycle never becomes like the next"), "HELFFERICH");
    }
}
