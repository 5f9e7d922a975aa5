// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.resin;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.resin.CapacityModel;
import dev.brinebook.resin.ColumnCapacity;
import dev.brinebook.resin.WornTable;
import dev.brinebook.softener.Softener;
import dev.brinebook.text.Message;

/** Says where a capacity comes from. */
public final class CapacityBasis {

    private CapacityBasis() {
    }

    /** The basis of the capacity at {@code pointer}. */
    public static void explain(String pointer, CapacityModel model, AnswerUnits units, Explanation explanation) {
        if (!(model instanceof ColumnCapacity column)) {
            explanation.because(pointer, Message.of("formula.softener.resinVolumeCapacitySalt"),
                    model.sourceKey());
            if (model instanceof WornTable worn) {
                explainWear(pointer, worn.sitesLeft(), explanation);
            }
            return;
        }
        explanation.because(pointer, Message.of("formula.softener.resinVolumeHardnessEquilibrium",
                column.resin().stages(), Text.of(HardnessQuantity.forReader(column.endPointMgPerL(), explanation)),
                Text.number(column.efficiency())),
                column.sourceKey());
        explanation.because(pointer, Message.of("formula.common.selectivityResinCalciumMagnesium"),
                "BONNER-SMITH");
        explainScheme(pointer, explanation);
        explanation.because(pointer, Message.of("formula.softener.efficiencyEquilibriumColumnGives"),
                "CP-WORKING-TABLE");
    }

    /** The same of a setting at {@code pointer} that is rounded, with the capacity before. */
    public static void explain(String pointer, Softener softener, double gramsPerLitre, AnswerUnits units, Explanation explanation) {
        explanation.because(pointer, Message.of("formula.softener.capacityBeforeRounding", Text.rounded(units.resinVolume(
                softener.bed().resinLitres())), Text.rounded(units.saltDose(gramsPerLitre)), Text.of(units.capacity(
                softener.capacityGrams(gramsPerLitre)))), softener.capacity().sourceKey());
        explain(pointer, softener.capacity(), units, explanation);
    }

    /** How a table is read for resin with a share of its sites left. */
    public static void explainWear(String pointer, double sitesLeft, Explanation explanation) {
        explanation.because(pointer, Message.of("formula.softener.exchangeSitesLeftTables",
                Text.number(100 * sitesLeft)), "HELFFERICH");
    }

    /** Which scheme the stages follow, and how far it is from the reference, for the figure of a column at {@code pointer}. */
    public static void explainScheme(String pointer, Explanation explanation) {
        explanation.because(pointer, Message.of("formula.softener.plugFlowBrineRinse"), "PHREEQC");
    }

    /** The basis of the actual dose of an existing softener, at {@code pointer}. */
    public static void explainFoundDose(String pointer, Explanation explanation) {
        explanation.because(pointer, Message.of("formula.softener.refillWaterSaltLitre"), "SALT-INSTITUTE");
    }
}
