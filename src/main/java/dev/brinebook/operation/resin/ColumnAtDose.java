// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.BedCapacityQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.SaltEfficiencyQuantity;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.resin.ColumnCapacity;
import dev.brinebook.resin.ColumnResult;
import dev.brinebook.resin.EfficiencyLine;
import dev.brinebook.resin.ResinEfficiency;
import dev.brinebook.resin.Salt;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

@SchemaDescription("Results of the column at a salt dose in this water. Has `reason` and `why` instead, if the dose does not keep the "
        + "end point.")
public record ColumnAtDose(
        @Basis(formula = "formula.common.selectivityResinCalciumMagnesium", source = "BONNER-SMITH")
        @Basis(formula = "formula.softener.plugFlowBrineRinse", source = "PHREEQC")
        @Property(value = "Capacity per volume of resin.", optional = ColumnAtDose.NONE) BedCapacityQuantity capacity,
        @Basis(formula = "formula.resin.capacitySaltDose", source = "WQP-2009")
        @Property(value = "Hardness removed per salt used.", optional = ColumnAtDose.NONE)
        SaltEfficiencyQuantity saltEfficiency,
        @Property(value = "Names of the limits whose salt efficiency is met.", optional = ColumnAtDose.NONE,
                example = "[\"productStandard\"]", maxItems = EfficiencyLine.COUNT) List<String> linesReached,
        @Property(value = "Hardness of the first softened water.", optional = ColumnAtDose.NONE)
        HardnessQuantity startLeakage,
        @Basis(formula = "formula.softener.plugFlowBrineRinse", source = "PHREEQC")
        @Property(value = "Mean hardness of the softened water.", optional = ColumnAtDose.NONE)
        HardnessQuantity meanLeakage,
        @Property(value = "Hardness of the last softened water, which is the end point.", optional = ColumnAtDose.NONE)
        HardnessQuantity endLeakage,
        @Property(value = "Water between regenerations, in bed volumes.",
                optional = ColumnAtDose.NONE, min = 0, example = "192.4") BigDecimal serviceBedVolumes,
        @Property(value = "Equivalents of hardness removed, in percent of those of the salt.", optional = ColumnAtDose.NONE,
                min = 0, max = 100, unit = "%", example = "50.1") BigDecimal saltUsedPercent,
        @Basis(formula = "formula.resin.eitherDoseLeavesEnough", source = "HELFFERICH")
        @Property(value = "Stable code of the reason why the dose does not work in this water.", optional = "when capacity is present")
        NoResultReason reason,
        @Property(value = "The reason as a sentence.", optional = "when capacity is present", example = "\"At this salt "
                + "dose, more hardness leaks through than the end point allows.\"") Message why) {

    static final String NONE = "when the dose does not keep the end point";

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
        explanation.because("/points/*/column/capacity", Message.of("formula.resin.hardnessEquilibriumStagesRemove", stages,
                efficiency), "HELFFERICH");
        for (String leakage : List.of("startLeakage", "meanLeakage", "endLeakage")) {
            explanation.because("/points/*/column/" + leakage, Message.of("formula.resin.leakageEquilibriumStagesAlone", stages),
                    "HELFFERICH");
        }
        explanation.because("/points/*/column/serviceBedVolumes", Message.of("formula.resin.waterStagesSoftenUp", efficiency),
                "HELFFERICH");
        explanation.because("/points/*/column/saltUsedPercent", Message.of("formula.resin.capacityGCaco3Each",
                Text.number(salt.ceilingGramsPerGram())), "CIAAW");
    }
}
