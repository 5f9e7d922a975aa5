// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.answer.water.HardnessClasses;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Operation.QueryParameter;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

/** One hardness, or calcium and magnesium, in every unit. */
public final class ConvertHardness {

    public static final Operation<HardnessConversionRequest, HardnessConversionAnswer> OPERATION = new Operation<>(
            "convertHardness", "/v1/hardness-conversion", "Convert a hardness to every unit",
            "Choose this to read a water test. It converts one hardness, given in any unit or as calcium and magnesium, to every unit "
                    + "(mg/L as CaCO3, grains per US and imperial gallon, German and French degrees, mmol/L, meq/L) and gives its class "
                    + "on three scales. It does not include iron. For that use compensateHardness.",
            HardnessConversionRequest.class, HardnessConversionAnswer.class, ConvertHardness::answer,
            List.of(QueryParameter.number("value", "/hardness/value", null, "Number of the hardness.", true, "18.5"),
                    QueryParameter.text("unit", "/hardness/unit", "Its unit: one of "
                            + String.join(", ", WireNames.all(HardnessUnit.class)) + ".", true, "gpg")),
            List.of("us", "metric"));

    private static final double LEAST_WHOLE = 100;

    private ConvertHardness() {
    }

    private static HardnessConversionAnswer answer(HardnessConversionRequest request) {
        double mgPerL = request.hardnessMgPerL();
        HardnessQuantity given = request.hardness();
        Explanation explanation = (given == null || given.unit() == HardnessUnit.GPG ? AnswerUnits.US : AnswerUnits.METRIC).explanation();
        request.questionHighHardness(explanation);
        if (given == null) {
            explanation.because("/inEveryUnit", Message.of("formula.water.of2497Calcium4"), "SM2340B");
        }
        explanation.because("/classes/usgs", Message.of("formula.water.upperEnds60120"), "USGS-HARDNESS");
        explanation.because("/classes/german", Message.of("formula.water.of1525"), "WRMG");
        explanation.because("/classes/trade", Message.of("formula.water.upperEnds13"), "CP-HARDNESS-CLASSES");
        List<HardnessQuantity> inEveryUnit = Arrays.stream(HardnessUnit.values())
                .map(unit -> new HardnessQuantity(Rounding.answer(unit.fromBase(mgPerL)), unit)).toList();
        HardnessClasses classes = HardnessClasses.of(mgPerL);
        return new HardnessConversionAnswer(explanation.behindStops(summary(given, mgPerL, classes)), inEveryUnit, classes,
                explanation.cautions(), explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    /** The hardness in the unit of the test, else in grains; then in the unit of laboratories and in a degree that is not given. */
    private static Message summary(HardnessQuantity given, double mgPerL, HardnessClasses classes) {
        Message first = given != null && given.unit() != HardnessUnit.MG_PER_L ? Text.setting(given)
                : in(HardnessUnit.GPG, mgPerL);
        boolean inGermanDegrees = given != null && given.unit() == HardnessUnit.GERMAN_DEGREE;
        return Message.sentences(Message.of("convertHardness.gpgMgLCaco3", first,
                mgPerL < 10 ? in(HardnessUnit.MG_PER_L, mgPerL) : Text.rounded(new HardnessQuantity(BigDecimal.valueOf(mgPerL),
                        HardnessUnit.MG_PER_L)),
                in(inGermanDegrees ? HardnessUnit.FRENCH_DEGREE : HardnessUnit.GERMAN_DEGREE, mgPerL), WireNames.of(classes.usgs())),
                Message.of("convertHardness.otherClasses", WireNames.of(classes.trade()), WireNames.of(classes.german())));
    }

    /** To a tenth, from a hundred on whole. */
    private static Message in(HardnessUnit unit, double mgPerL) {
        double value = unit.fromBase(mgPerL);
        return Text.measure(value < LEAST_WHOLE ? Text.tenths(value) : Text.digits(value), unit.symbol());
    }
}
