package dev.brinebook.operation.water;

import dev.brinebook.answer.water.HardnessClasses;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Operation.QueryParameter;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.wording.Message;
import java.util.Arrays;
import java.util.List;

/** One hardness, or calcium and magnesium, in every unit. */
public final class ConvertHardness {

    public static final Operation<HardnessConversionRequest, HardnessConversionAnswer> OPERATION = new Operation<>(
            "convertHardness", "/v1/hardness-conversion", "Convert a hardness to every unit",
            "Choose this to read a water test: it writes one hardness, given in any unit or as calcium and magnesium, in"
                    + " every unit (mg/L as CaCO3, grains per US and imperial gallon, German and French degrees, mmol/L,"
                    + " meq/L) and says how hard that is on three scales. It does not count iron; for that use"
                    + " compensateHardness.",
            HardnessConversionRequest.class, HardnessConversionAnswer.class, ConvertHardness::answer,
            List.of(QueryParameter.number("value", "/hardness/value", null, "The number of the hardness.", true, "18.5"),
                    QueryParameter.text("unit", "/hardness/unit", "Its unit: one of "
                            + String.join(", ", WireNames.all(HardnessUnit.class)) + ".", true, "gpg")),
            List.of("us", "metric"));

    private ConvertHardness() {
    }

    private static HardnessConversionAnswer answer(HardnessConversionRequest request) {
        double mgPerL = request.hardnessMgPerL();
        Explanation explanation = new Explanation();
        if (request.hardness() == null) {
            explanation.because("/inEveryUnit", Message.of("2.497 times calcium plus 4.118 times magnesium,"
                    + " as CaCO3"), "SM2340B");
        }
        explanation.because("/inEveryUnit", Message.of("grains and gallons by their exact definitions: 1 gpg is"
                + " 64.79891 mg in 3.785411784 L"), "NIST-SP811");
        explanation.because("/inEveryUnit", Message.of("the German degree is 10 mg/L of CaO"), "DIN38409-6");
        explanation.because("/inEveryUnit", Message.of("mmol/L by the molar mass of CaCO3, 100.086 g/mol;"
                + " meq/L is half of it"), "CIAAW");
        explanation.because("/classes/usgs", Message.of("upper ends 60, 120 and 180 mg/L"), "USGS-HARDNESS");
        explanation.because("/classes/german", Message.of("1.5 and 2.5 mmol/L"), "WRMG");
        explanation.because("/classes/trade", Message.of("upper ends 1, 3.5, 7 and 10.5 gpg"), "CP-HARDNESS-CLASSES");
        List<HardnessQuantity> inEveryUnit = Arrays.stream(HardnessUnit.values())
                .map(unit -> new HardnessQuantity(Rounding.answer(unit.fromBase(mgPerL)), unit)).toList();
        HardnessClasses classes = HardnessClasses.of(mgPerL);
        return new HardnessConversionAnswer(summary(mgPerL, classes), inEveryUnit, classes, explanation.cautions(),
                explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static Message summary(double mgPerL, HardnessClasses classes) {
        return Message.of("{0} gpg, or {1} mg/L as CaCO3, or {2} dH: {3} water by the US Geological Survey, {4} by the trade,"
                + " {5} by the German detergents act.", Text.number(HardnessUnit.GPG.fromBase(mgPerL)), Text.number(mgPerL),
                Text.number(HardnessUnit.GERMAN_DEGREE.fromBase(mgPerL)), Message.saying(classes.usgs()),
                Message.saying(classes.trade()), Message.saying(classes.german()));
    }
}
