package dev.brinebook.operation.water;

import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Operation.QueryParameter;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.request.water.FactorSet;
import dev.brinebook.water.CompensatedHardness;
import dev.brinebook.water.HardnessStep;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterCautions;
import dev.brinebook.wording.Message;
import java.util.Arrays;
import java.util.List;

/** How hard a water is once iron and manganese count. */
public final class CompensateHardness {

    public static final Operation<CompensatedHardnessRequest, CompensatedHardnessAnswer> OPERATION = new Operation<>(
            "compensateHardness", "/v1/compensated-hardness", "Count iron and manganese as hardness",
            "Choose this to find the hardness number to set on a softener: it adds what iron and manganese count for,"
                    + " line by line, under the factor set chosen, rounds up to the unit and step that a"
                    + " controller takes, shows what the other sets would give, and warns of what a softener does not"
                    + " treat. To have a hardness in other units, without iron, choose convertHardness; to hold a"
                    + " setting found on a softener against it reviewSettings.",
            CompensatedHardnessRequest.class, CompensatedHardnessAnswer.class, CompensateHardness::answer,
            List.of(QueryParameter.number("value", "/water/hardness/value", null, "The number of the hardness.", true, "25"),
                    QueryParameter.text("unit", "/water/hardness/unit", "Its unit: one of "
                            + String.join(", ", WireNames.all(HardnessUnit.class)) + ".", true, "gpg"),
                    QueryParameter.number("iron", "/water/iron/value", "mg/L", "Dissolved iron in mg/L.", false, "2"),
                    QueryParameter.number("manganese", "/water/manganese/value", "mg/L", "Manganese in mg/L.", false, "0.5"),
                    QueryParameter.text("set", "/water/compensation/set", "The factor set: stoichiometric, light,"
                            + " moderate, standard or conservative.", false, "standard"),
                    QueryParameter.text("units", "/units", "The units of the answer: us or metric.", false, "us")),
            List.of("well-family", "apartment"));

    private CompensateHardness() {
    }

    private static CompensatedHardnessAnswer answer(CompensatedHardnessRequest request) {
        AnswerUnits units = HomeCountry.units(request.units(), request.country());
        Explanation explanation = units.explanation();
        HomeCountry.of(request.country(), explanation);
        WaterAnalysis water = request.water().toDomain(explanation);
        CompensatedHardness sum = water.compensated(request.water().factors(explanation));
        explanation.cautions(WaterCautions.of(water));
        explanation.because("/bySet", Message.of("the same sum under each named set; no allowed source settles"
                + " which is right"), "CP-IRON-FACTORS");
        HardnessLines lines = HardnessLines.of(sum, water.hardnessUncertaintyMgPerL(), step(request, units, explanation), units,
                "/hardness", explanation);
        List<FactorSetTotal> bySet = Arrays.stream(FactorSet.values()).filter(set -> set != FactorSet.OWN)
                .map(set -> new FactorSetTotal(set, units.hardness(water.compensated(set.factors()).totalMgPerL())))
                .toList();
        return new CompensatedHardnessAnswer(explanation.behindStops(summary(lines, water)), lines, bySet,
                explanation.cautions(), explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static HardnessStep step(CompensatedHardnessRequest request, AnswerUnits units, Explanation explanation) {
        HardnessStep usual = HardnessStep.of(units == AnswerUnits.METRIC ? HardnessUnit.GERMAN_DEGREE : HardnessUnit.GPG);
        HardnessQuantity given = request.hardnessStep();
        explanation.orDefault("hardnessStep", given, 0, Message.of("{0} {1}", Rounding.answer(usual.size()), usual.unit().symbol()));
        return given == null ? usual : new HardnessStep(given.unit(), given.value().doubleValue());
    }

    private static Message summary(HardnessLines lines, WaterAnalysis water) {
        Message iron = water.ironForm() != WaterAnalysis.IronForm.DISSOLVED
                ? Message.of("none for iron, which is not dissolved and is treated first,")
                : water.ironMgPerL().isPresent() ? Message.of("{0} for iron", Text.of(lines.iron()))
                : Message.of("none for iron, which was not tested,");
        Message manganese = water.manganeseMgPerL().isPresent() ? Message.of("{0} for manganese", Text.of(lines.manganese()))
                : Message.of("none for manganese, which was not tested,");
        Message sum = Message.of("Set {0}: {1} tested, {2} and {3} make {4}.", Message.of("{0} {1}",
                lines.controllerSetting().value(), lines.controllerSetting().unit().symbol()),
                Text.of(lines.tested()), iron, manganese, Text.of(lines.compensated()));
        return water.hardnessUncertaintyMgPerL() == 0 ? sum
                : Message.joined(" ", List.of(sum, Message.of("The setting covers the uncertainty of the test too.")));
    }
}
