// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Operation.QueryParameter;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.request.water.FactorSet;
import dev.brinebook.text.Message;
import dev.brinebook.water.CompensatedHardness;
import dev.brinebook.water.HardnessStep;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterCautions;
import java.util.ArrayList;
import java.util.List;

/** How hard a water is once iron and manganese count. */
public final class CompensateHardness {

    public static final Operation<CompensatedHardnessRequest, CompensatedHardnessAnswer> OPERATION = new Operation<>(
            "compensateHardness", "/v1/compensated-hardness", "Compensate hardness for iron and manganese",
            "Choose this to find the hardness to set on a softener. It adds iron and manganese as hardness, line by line, by the chosen "
                    + "factor set, rounds up to the unit and step of the controller, shows the result of the other sets, and warns of "
                    + "what a softener does not treat. To convert a hardness to other units, without iron, choose convertHardness. To "
                    + "check the hardness set on a softener choose reviewSettings.",
            CompensatedHardnessRequest.class, CompensatedHardnessAnswer.class, CompensateHardness::answer,
            List.of(QueryParameter.number("value", "/water/hardness/value", null, "Number of the hardness.", true, "25"),
                    QueryParameter.text("unit", "/water/hardness/unit", "Its unit: one of "
                            + String.join(", ", WireNames.all(HardnessUnit.class)) + ".", true, "gpg"),
                    QueryParameter.number("iron", "/water/iron/value", "mg/L", "Dissolved iron in mg/L.", false, "2"),
                    QueryParameter.number("manganese", "/water/manganese/value", "mg/L", "Manganese in mg/L.", false, "0.5"),
                    QueryParameter.text("set", "/water/compensation/set", "The factor set: stoichiometric, light,"
                            + " moderate, standard or conservative.", false, "standard"),
                    QueryParameter.text("units", "/units", "The units of the answer: us or metric.", false, "us")),
            List.of("well-family", "apartment"));

    /** A number below it would be shown as none. */
    private static final double LEAST_TENTH = 0.05;
    /** From here on nobody reads tenths. */
    private static final double LEAST_WHOLE = 100;
    private static final String HARDNESS_STEP = "/hardnessStep";

    private CompensateHardness() {
    }

    private static CompensatedHardnessAnswer answer(CompensatedHardnessRequest request) {
        AnswerUnits units = HomeCountry.units(request.units(), request.country());
        Explanation explanation = HomeCountry.explanation(units, request.country());
        HomeCountry.of(request.country(), explanation);
        WaterAnalysis water = request.water().toDomain(explanation);
        CompensatedHardness sum = water.compensated(request.water().factors(explanation));
        explanation.cautions(WaterCautions.of(water));
        HardnessLines lines = HardnessLines.of(sum, water.hardnessUncertaintyMgPerL(), step(request, units, explanation), units,
                "/hardness", explanation);
        List<FactorSetTotal> bySet = new ArrayList<>();
        for (FactorSet set : FactorSet.NAMED) {
            bySet.add(new FactorSetTotal(set, units.hardness(water.compensated(set.factors()).totalMgPerL())));
        }
        return new CompensatedHardnessAnswer(explanation.behindStops(Message.later(() -> summary(lines, sum, water, explanation))),
                lines, List.copyOf(bySet), explanation.cautions(), explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static HardnessStep step(CompensatedHardnessRequest request, AnswerUnits units, Explanation explanation) {
        HardnessStep usual = HardnessStep.of(units == AnswerUnits.METRIC ? HardnessUnit.GERMAN_DEGREE : HardnessUnit.GPG);
        HardnessQuantity given = request.hardnessStep();
        explanation.assume(given == null ? Resolved.of(HARDNESS_STEP, usual.size(), usual.unit().symbol()).byDefault("OWN-ASSUMPTION")
                : Resolved.of(HARDNESS_STEP, given));
        return given == null ? usual : new HardnessStep(given.unit(), given.value().doubleValue());
    }

    private static Message summary(HardnessLines lines, CompensatedHardness sum, WaterAnalysis water, Explanation explanation) {
        boolean dissolved = water.ironForm() == WaterAnalysis.IronForm.DISSOLVED;
        boolean iron = dissolved && water.ironMgPerL().isPresent();
        boolean manganese = water.manganeseMgPerL().isPresent();
        List<Message> sentences = new ArrayList<>();
        sentences.add(Message.of("compensateHardness.setHardnessTestIron", setting(lines.controllerSetting(), explanation),
                line(sum.hardnessMgPerL(), explanation), iron ? manganese ? "both" : "iron" : manganese ? "manganese" : "none",
                line(sum.ironLineMgPerL(), explanation), line(sum.manganeseLineMgPerL(), explanation),
                line(sum.totalMgPerL(), explanation),
                isRoundedUp(lines, sum, water) ? "rounded" : "exact"));
        if (!dissolved) {
            sentences.add(Message.of("compensateHardness.ironDissolvedTreatedFirst"));
        } else if (!iron) {
            sentences.add(Message.of("compensateHardness.ironTestedSoNothing"));
        }
        if (!manganese) {
            sentences.add(Message.of("compensateHardness.manganeseTestedSoNothing"));
        }
        if (water.hardnessUncertaintyMgPerL() > 0) {
            sentences.add(Message.of("compensateHardness.settingAlsoCoversUncertainty"));
        }
        return Message.sentences(sentences);
    }

    /** The setting in the unit of the controller, and in that of the test if it is another. */
    private static Message setting(HardnessQuantity setting, Explanation explanation) {
        Message set = Text.setting(setting);
        return setting.unit() == explanation.hardnessUnit() ? set
                : Message.of("pattern.inBrackets", set, Text.rounded(HardnessQuantity.forReader(setting.inBase(), explanation)));
    }

    /** A line of the sum: to a tenth, so that the lines add up; whole in mg/L, where ten and more. */
    private static Message line(double mgPerL, Explanation explanation) {
        HardnessQuantity line = HardnessQuantity.forReader(mgPerL, explanation);
        double value = line.value().doubleValue();
        return line.unit() == HardnessUnit.MG_PER_L || value < LEAST_TENTH || value >= LEAST_WHOLE ? Text.rounded(line)
                : Text.measure(Text.tenths(value), line.unit().symbol());
    }

    /** Whether the step of the controller makes the setting higher than the sum and the uncertainty of the test. */
    private static boolean isRoundedUp(HardnessLines lines, CompensatedHardness sum, WaterAnalysis water) {
        HardnessQuantity setting = lines.controllerSetting();
        double exact = setting.unit().fromBase(sum.totalMgPerL() + water.hardnessUncertaintyMgPerL());
        return Text.number(setting.value().doubleValue()).compareTo(Text.number(exact)) > 0;
    }
}
