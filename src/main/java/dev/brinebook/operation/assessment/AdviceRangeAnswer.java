// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.api.OptionalResultAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.assessment.AdviceRange;
import dev.brinebook.assessment.Assessment;
import dev.brinebook.model.Model;
import dev.brinebook.model.ModelChange;
import dev.brinebook.payback.Payback;
import dev.brinebook.payback.Prices;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.text.Message;
import dev.brinebook.verdict.Step;
import dev.brinebook.verdict.Terms;
import java.util.Currency;

@SchemaDescription("Effect of the uncertainty of an input on settings, saving and payback.")
public record AdviceRangeAnswer(
        @Property("At the lower end of the uncertainty.") AdviceEnd low,
        @Property("At the upper end of the uncertainty.") AdviceEnd high,
        @Property(value = "What to do, if the uncertainty decides whether converting saves anything.",
                optional = "when both ends give the same result", example = "\"Retest before you buy.\"") Message advice) {

    @SchemaDescription("The advice at one end of the uncertainty of an input.")
    public record AdviceEnd(
            @Property("Compensated hardness at this end.") HardnessQuantity hardness,
            @Property("Mean softened use per day at this end.") VolumeQuantity dailyUse,
            @Property("Recommended salt dose at this end.") SaltDoseQuantity saltDose,
            @Property("Recommended reserve at this end.") VolumeQuantity reserve,
            @Property("Saving of converting in the first year at this end, over the same step as in the ladder. Negative if "
                    + "converting costs more.") Money savedPerYear,
            @Property(value = "Payback of the conversion at this end, in years.",
                    optional = "when the cost of the conversion is not given") OptionalResultAnswer simplePaybackYears,
            @Property(value = "Resin volume at this end.", optional = AdviceEnd.NOT_MEASURED) VolumeQuantity resinVolume,
            @Property(value = "Present salt per regeneration at this end.", optional = AdviceEnd.NOT_MEASURED) MassQuantity saltAsFound,
            @Property(value = "Recommended salt per regeneration at this end.", optional = AdviceEnd.NOT_MEASURED)
            MassQuantity saltPerRegeneration,
            @Property(value = "Recommended capacity at this end.", optional = AdviceEnd.NOT_MEASURED) CapacityQuantity capacity) {

        private static final String NOT_MEASURED = "in the ranges of the hardness test and of the use";
    }

    /** By the hardness test; null where it is taken as exact. */
    static AdviceRangeAnswer ofTest(Assessment assessment, Model model, Terms terms, Prices prices, Currency currency,
            AnswerUnits units) {
        return AdviceRange.ofTest(assessment, model.has(ModelChange.PAYBACK_OVER_THE_STEP_BELOW), prices)
                .map(range -> of(range, Message.of("adviceRange.testWaterAgainBefore"), terms, currency, units)).orElse(null);
    }

    /** By a use that is uncertain by a {@code share} of its mean; null where it is taken as exact. */
    static AdviceRangeAnswer ofUse(Assessment assessment, double share, Model model, Terms terms, Prices prices,
            Currency currency, AnswerUnits units) {
        return AdviceRange.ofUse(assessment, share, model.has(ModelChange.PAYBACK_OVER_THE_STEP_BELOW), prices)
                .map(range -> of(range, Message.of("adviceRange.readWaterMeterBefore"), terms, currency, units)).orElse(null);
    }

    /** By what was measured of the softener. */
    static AdviceRangeAnswer ofBed(AdviceRange range, Terms terms, Currency currency, AnswerUnits units) {
        return new AdviceRangeAnswer(measured(range.low(), terms, currency, units), measured(range.high(), terms, currency, units),
                range.flips() ? Message.of("adviceRange.measureSoftenerBefore") : null);
    }

    private static AdviceEnd measured(AdviceRange.End at, Terms terms, Currency currency, AnswerUnits units) {
        AdviceEnd end = end(at, terms, currency, units);
        SoftenerSettings found = at.found().setup();
        var dosed = at.option().dosed();
        return new AdviceEnd(end.hardness, end.dailyUse, end.saltDose, end.reserve, end.savedPerYear, end.simplePaybackYears,
                units.resinVolume(found.softener().bed().resinLitres()),
                units.mass(found.softener().saltGrams(found.saltDoseGramsPerLitre()) / 1000),
                units.mass(dosed.softener().saltGrams(dosed.saltDoseGramsPerLitre()) / 1000),
                units.capacity(dosed.softener().capacityGrams(dosed.saltDoseGramsPerLitre())));
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
                terms.outlay(Step.CONVERT).map(outlay -> OptionalResultAnswer.of(Payback.simpleYears(outlay.investment(),
                        end.savedPerYear(),
                        terms.horizonYears()), 1)).orElse(null), null, null, null, null);
    }
}
