package dev.brinebook.operation.assessment;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.FigureAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.assessment.AdviceRange;
import dev.brinebook.assessment.Assessment;
import dev.brinebook.payback.Payback;
import dev.brinebook.payback.Prices;
import dev.brinebook.verdict.Step;
import dev.brinebook.verdict.Terms;
import dev.brinebook.wording.Message;
import java.util.Currency;

@About("What the uncertainty of an input does to settings, saving and payback.")
public record AdviceRangeAnswer(
        @Property("Where the input is as low as it may be.") AdviceEnd low,
        @Property("Where the input is as high as it may be.") AdviceEnd high,
        @Property(value = "What to do, where the uncertainty decides whether converting saves anything.",
                optional = "when it saves, or does not, at both ends", example = "\"Retest before you buy.\"") Message advice) {

    @About("The advice at one end of what an input may be.")
    public record AdviceEnd(
            @Property("Compensated hardness there.") HardnessQuantity hardness,
            @Property("Mean softened use of a day there.") VolumeQuantity dailyUse,
            @Property("Salt dose to set there.") SaltDoseQuantity saltDose,
            @Property("Reserve to set there.") VolumeQuantity reserve,
            @Property("Saving of the first year there; negative where converting costs more.") Money savedPerYear,
            @Property(value = "Years until the conversion has paid for itself there.",
                    optional = "when the cost of the conversion is not given") FigureAnswer simplePaybackYears) {
    }

    /** By the hardness test; null where it is taken as exact. */
    static AdviceRangeAnswer ofTest(Assessment assessment, Terms terms, Prices prices, Currency currency,
            AnswerUnits units, Explanation explanation) {
        return AdviceRange.ofTest(assessment, prices).map(range -> {
            explanation.because("/testUncertainty", Message.of("the whole choice at either end of the uncertainty given for the"
                    + " test, the softener as found unchanged"), "CP-PRICES");
            return of(range, Message.of("Retest before you buy: within the uncertainty of the hardness test converting may save"
                    + " or not."), terms, currency, units);
        }).orElse(null);
    }

    /** By a use that is uncertain by a {@code share} of its mean; null where it is taken as exact. */
    static AdviceRangeAnswer ofUse(Assessment assessment, double share, Terms terms, Prices prices,
            Currency currency, AnswerUnits units, Explanation explanation) {
        return AdviceRange.ofUse(assessment, share, prices).map(range -> {
            explanation.because("/useUncertainty", Message.of("the whole choice at either end of the uncertainty of the use, the"
                    + " softener as found unchanged"), "CP-PRICES");
            return of(range, Message.of("Read the water meter before you buy: within the uncertainty of the use converting may"
                    + " save or not."), terms, currency, units);
        }).orElse(null);
    }

    private static AdviceRangeAnswer of(AdviceRange range, Message advice, Terms terms, Currency currency,
            AnswerUnits units) {
        return new AdviceRangeAnswer(end(range.low(), terms, currency, units), end(range.high(), terms, currency, units),
                range.flips() ? advice : null);
    }

    private static AdviceEnd end(AdviceRange.End end, Terms terms, Currency currency, AnswerUnits units) {
        var settings = end.option().settings();
        return new AdviceEnd(units.hardness(end.hardnessMgPerL()), units.volume(end.dailyUseLitres()),
                units.saltDose(end.option().dosed().saltDoseGramsPerLitre()),
                units.volume(Math.min(settings.reserveLitres(), settings.meterLitres())), Money.of(end.savedPerYear(), currency),
                terms.outlay(Step.CONVERT).map(outlay -> FigureAnswer.of(Payback.simpleYears(outlay.investment(), end.savedPerYear(),
                        terms.horizonYears()), 1)).orElse(null));
    }
}
