// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.water;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.From;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.text.Message;
import dev.brinebook.water.CompensatedHardness;
import dev.brinebook.water.CompensationFactors;
import dev.brinebook.water.HardnessStep;
import java.util.ArrayList;
import java.util.List;

@SchemaDescription("Compensated hardness, line by line.")
public record HardnessLines(
        @Basis(formula = "formula.water.hardnessGivenOr2", source = "SM2340B")
        @Property("Tested hardness, from calcium and magnesium.") HardnessQuantity tested,
        @Property("Hardness added for iron, by the factor set.") HardnessQuantity iron,
        @Basis(formula = "formula.water.factorManganese", source = "CP-IRON-FACTORS")
        @Property("Hardness added for manganese, by the factor set.") HardnessQuantity manganese,
        @Basis(formula = "formula.water.testedHardnessLinesIron", source = "CP-IRON-FACTORS")
        @From({"tested", "iron", "manganese"})
        @Property("Compensated hardness: the exact sum, to set on a meter.") HardnessQuantity compensated,
        @Basis(formula = "formula.water.testedHardness1792", source = "CIAAW")
        @Property("Hardness with iron and manganese at their chemical equivalents only. It determines bed exhaustion and the sodium "
                + "added.")
        HardnessQuantity real,
        @From("compensated")
        @Property("Hardness to set on the controller, in its unit and step: the sum plus the uncertainty of the test, rounded up.")
        HardnessQuantity controllerSetting,
        @Basis(formula = "formula.water.sameRoundedUpWhole", source = "DIN38409-6")
        @From("compensated")
        @Property(value = "The same for controllers set in whole German or French degrees, if the controller uses another unit.",
                eachOf = HardnessUnit.class)
        List<HardnessQuantity> otherControllerSettings) {

    private static final List<HardnessUnit> DEGREES = List.of(HardnessUnit.GERMAN_DEGREE, HardnessUnit.FRENCH_DEGREE);

    /** The lines in the units of the answer, with the basis that depends on the units recorded below {@code pointer}. */
    public static HardnessLines of(CompensatedHardness sum, double uncertaintyMgPerL, HardnessStep step, AnswerUnits units,
            String pointer, Explanation explanation) {
        explain(step, pointer, explanation);
        return new HardnessLines(units.hardness(sum.hardnessMgPerL()), units.hardness(sum.ironLineMgPerL()),
                units.hardness(sum.manganeseLineMgPerL()), units.hardness(sum.totalMgPerL()),
                units.hardness(sum.realMgPerL()),
                setting(sum, step, uncertaintyMgPerL), otherSettings(sum, step, uncertaintyMgPerL));
    }

    private static void explain(HardnessStep step, String pointer, Explanation explanation) {
        HardnessUnit unit = explanation.hardnessUnit();
        explanation.because(pointer + "/iron", Message.later(() -> Message.of("formula.water.factorDissolvedIronMargin",
                Text.of(HardnessQuantity.of(CompensationFactors.STOICHIOMETRIC.ironMgPerMg(), unit)))), "CP-IRON-FACTORS");
        explanation.because(pointer + "/controllerSetting", Message.later(() -> step.equals(HardnessStep.of(HardnessUnit.GPG))
                ? Message.of("formula.water.sumUncertaintyTestRounded")
                : Message.of("formula.water.sumUncertaintyTestRoundedUp",
                        Text.setting(new HardnessQuantity(Rounding.answer(step.size()), step.unit())))), "CP-IRON-FACTORS");
    }

    private static List<HardnessQuantity> otherSettings(CompensatedHardness sum, HardnessStep step, double uncertaintyMgPerL) {
        List<HardnessQuantity> others = new ArrayList<>();
        for (HardnessUnit degree : DEGREES) {
            if (degree != step.unit()) {
                others.add(setting(sum, HardnessStep.of(degree), uncertaintyMgPerL));
            }
        }
        return List.copyOf(others);
    }

    private static HardnessQuantity setting(CompensatedHardness sum, HardnessStep step, double uncertaintyMgPerL) {
        return new HardnessQuantity(Rounding.answer(sum.setting(step, uncertaintyMgPerL)), step.unit());
    }
}
