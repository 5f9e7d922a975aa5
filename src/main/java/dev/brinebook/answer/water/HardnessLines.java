package dev.brinebook.answer.water;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.water.CompensatedHardness;
import dev.brinebook.water.CompensationFactors;
import dev.brinebook.water.HardnessStep;
import dev.brinebook.wording.Message;
import java.util.List;
import java.util.stream.Stream;

@About("Compensated hardness, line by line.")
public record HardnessLines(
        @Property("Hardness of calcium and magnesium, as tested.") HardnessQuantity tested,
        @Property("What iron adds by the factor set.") HardnessQuantity iron,
        @Property("What manganese adds by the factor set.") HardnessQuantity manganese,
        @Property("The exact sum: what a meter is set to.") HardnessQuantity compensated,
        @Property("Hardness with iron and manganese at their chemical equivalents only: what exhausts the bed and sets the sodium"
                + " added.")
        HardnessQuantity real,
        @Property("What to set on the controller, in its unit and step: the sum plus the uncertainty of the test, rounded up.")
        HardnessQuantity controllerSetting,
        @Property("The same for controllers that are set in whole German or French degrees, where it is not set in these.")
        List<HardnessQuantity> otherControllerSettings) {

    /** The lines in the units of the answer, with their basis told below {@code pointer}. */
    public static HardnessLines of(CompensatedHardness sum, double uncertaintyMgPerL, HardnessStep step, AnswerUnits units,
            String pointer, Explanation explanation) {
        explain(step, units, pointer, explanation);
        return new HardnessLines(units.hardness(sum.hardnessMgPerL()), units.hardness(sum.ironLineMgPerL()),
                units.hardness(sum.manganeseLineMgPerL()), units.hardness(sum.totalMgPerL()),
                units.hardness(sum.realMgPerL()),
                setting(sum, step, uncertaintyMgPerL), Stream.of(HardnessUnit.GERMAN_DEGREE, HardnessUnit.FRENCH_DEGREE)
                        .filter(degree -> degree != step.unit())
                        .map(degree -> setting(sum, HardnessStep.of(degree), uncertaintyMgPerL)).toList());
    }

    private static void explain(HardnessStep step, AnswerUnits units, String pointer, Explanation explanation) {
        explanation.because(pointer + "/tested", Message.of("the hardness of the request, or 2.497 times its calcium plus 4.118"
                + " times its magnesium"), "SM2340B");
        explanation.because(pointer + "/iron", Message.of("factor times dissolved iron; a margin far above the {0} of the"
                + " chemistry, so that the resin regenerates before iron builds up",
                Text.of(units.hardness(CompensationFactors.STOICHIOMETRIC.ironMgPerMg()))), "CP-IRON-FACTORS");
        explanation.because(pointer + "/manganese", Message.of("factor times manganese"), "CP-IRON-FACTORS");
        explanation.because(pointer + "/compensated", Message.of("tested hardness plus the lines of iron and manganese"),
                "CP-IRON-FACTORS");
        explanation.because(pointer + "/real", Message.of("tested hardness plus 1.792 times dissolved iron and 1.822 times manganese,"
                + " from the atomic weights"), "CIAAW");
        explanation.because(pointer + "/controllerSetting", step.equals(HardnessStep.of(HardnessUnit.GPG))
                ? Message.of("the sum and the uncertainty of the test, rounded up to whole grains per gallon, never down")
                : Message.of("the sum and the uncertainty of the test, rounded up to steps of {0} {1}, never down",
                        Rounding.answer(step.size()), step.unit().symbol()), "CP-IRON-FACTORS");
        explanation.because(pointer + "/otherControllerSettings", Message.of("the same, rounded up to whole degrees"),
                "DIN38409-6");
    }

    private static HardnessQuantity setting(CompensatedHardness sum, HardnessStep step, double uncertaintyMgPerL) {
        return new HardnessQuantity(Rounding.answer(sum.setting(step, uncertaintyMgPerL)), step.unit());
    }
}
