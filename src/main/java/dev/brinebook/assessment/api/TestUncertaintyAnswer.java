package dev.brinebook.assessment.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.FigureAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.assessment.Assessment;
import dev.brinebook.assessment.TestUncertainty;
import dev.brinebook.payback.Payback;
import dev.brinebook.payback.Prices;
import dev.brinebook.payback.api.ConversionRequest;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.HardnessQuantity;
import dev.brinebook.quantity.api.Money;
import dev.brinebook.quantity.api.SaltDoseQuantity;
import dev.brinebook.quantity.api.VolumeQuantity;
import dev.brinebook.wording.Message;
import java.util.Currency;

@About("What the uncertainty of the hardness test does to settings, saving and payback.")
public record TestUncertaintyAnswer(
        @Property("Where the water is as soft as the test allows.") TestEnd low,
        @Property("Where it is as hard as the test allows.") TestEnd high,
        @Property(value = "What to do, where the uncertainty decides whether converting saves anything.",
                optional = "when it saves, or does not, at both ends", example = "\"Retest before you buy.\"") Message advice) {

    @About("The advice at one end of the test's uncertainty.")
    public record TestEnd(
            @Property("Compensated hardness there.") HardnessQuantity hardness,
            @Property("Salt dose to set there.") SaltDoseQuantity saltDose,
            @Property("Reserve to set there.") VolumeQuantity reserve,
            @Property("Saving of the first year there; negative where converting costs more.") Money savedPerYear,
            @Property(value = "Years until the conversion has paid for itself there.",
                    optional = "when the cost of the conversion is not given") FigureAnswer simplePaybackYears) {
    }

    /** The ends of an assessment; null where the test is taken as exact. */
    static TestUncertaintyAnswer of(Assessment assessment, ConversionRequest conversion, Prices prices, Currency currency,
            AnswerUnits units, Explanation explanation) {
        return TestUncertainty.of(assessment, prices).map(ends -> {
            explanation.because("/testUncertainty", Message.of("the whole choice at either end of the uncertainty given for the"
                    + " test, the softener as found unchanged"), "CP-PRICES");
            return new TestUncertaintyAnswer(end(ends.low(), conversion, currency, units),
                    end(ends.high(), conversion, currency, units), ends.flips() ? Message.of("Retest before you buy: within the"
                            + " uncertainty of the hardness test converting may save or not.") : null);
        }).orElse(null);
    }

    private static TestEnd end(TestUncertainty.End end, ConversionRequest conversion, Currency currency, AnswerUnits units) {
        var settings = end.option().settings();
        return new TestEnd(units.hardness(end.hardnessMgPerL()), units.saltDose(end.option().dosed().saltDoseGramsPerLitre()),
                units.volume(Math.min(settings.reserveLitres(), settings.meterLitres())), Money.of(end.savedPerYear(), currency),
                conversion == null ? null : FigureAnswer.of(Payback.simpleYears(conversion.netCost(), end.savedPerYear(),
                        conversion.yearsOrAssumed()), 1));
    }
}
