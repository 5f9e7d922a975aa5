// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.softener;

import dev.brinebook.answer.regeneration.HardDaysRange;
import dev.brinebook.answer.resin.CapacityBasis;
import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.From;
import dev.brinebook.api.OptionalResultAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.SaltStep;
import dev.brinebook.softener.ServiceRemedy;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;

@SchemaDescription("Trade-off of salt, water and interval: expected consumption of each dose, with the smallest reserve that meets the "
        + "service standard, and the cheapest dose.")
public record DoseTradeOff(
        @From({"boundBy", "doses/*/saltDose", "doses/*/costPerYear"})
        @Property("Chosen dose. With its reserve, it is the cheapest in the long run that meets the limits.")
        SaltDoseQuantity chosen,
        @Basis(formula = "formula.softener.expectedRegenerationsCostSalt", source = "CP-PRICES")
        @Property("Cost of salt and regeneration water per year at this dose.") Money costPerYear,
        @Basis(formula = "formula.softener.regenerationsHardDaysLong", source = "FELLER")
        @Property("Mean days between regenerations at this dose.") OptionalResultAnswer intervalDays,
        @Basis(formula = "formula.softener.regenerationsHardDaysLong", source = "FELLER")
        @Property(value = "Expected hard days per year at this dose.", min = 0, unit = "days a year", example = "0.8")
        BigDecimal expectedHardDaysPerYear,
        @Basis(formula = "formula.softener.probabilityEachNumberHard", source = "FELLER")
        @Basis(formula = "formula.softener.oneLevelUseEach", source = "DAIAD")
        @Property("Range of hard days in single years.") HardDaysRange hardDaysRange,
        @Basis(formula = "formula.softener.regenerationsHardDaysLong", source = "FELLER")
        @Property(value = "Expected hard days per year with more use and less capacity, by the test of the service standard.",
                min = 0, unit = "days a year", example = "2.6") BigDecimal stressedHardDaysPerYear,
        @Property("Limits that the chosen dose does not meet. Empty when it meets all.")
        List<DoseChoice.Limit> unmetLimits,
        @Basis(formula = "formula.softener.costWithin2Least", source = "CP-PRICES")
        @Property("Settings with nearly the same cost.") EqualCostBand band,
        @Basis(formula = "formula.softener.leastCostLimitLeast", source = "CP-PRICES")
        @Property(value = "Cost of each limit that changes the result.", eachOf = DoseChoice.Limit.class) List<LimitPrice> limitPrices,
        @Basis(formula = "formula.softener.sameChoiceLargerBed", source = "CP-TANKS")
        @Property(value = "Remedies that would meet the service standard, if no setting does. Empty if one does.",
                eachOf = ServiceRemedy.Kind.class)
        List<ServiceRemedyAnswer> remedies,
        @Property(value = "Limit that excludes a cheaper dose.", optional = "when no dose meets the end point, the "
                + "service standard and the salt efficiency") DoseChoice.Bound boundBy,
        @Property(value = "The same in words.", example = "\"A lower dose is not recommended for this water.\"") Message why,
        @Basis(formula = "formula.softener.expectedMeteredYearEach", source = "FELLER")
        @Property(value = "Doses compared: every other dose from the lowest recommended for this water to the "
                + "highest, and the chosen dose. In whole pounds per cubic foot, or about that in the "
                + "controller's steps of salt.", maxItems = DoseChoice.MOST_SHOWN) List<DoseResult> doses) {

    /** The trade-off behind a choice, with its basis recorded below {@code pointer}. */
    public static DoseTradeOff of(DoseChoice choice, DesignConditions duty, RunningCost cost, Currency currency, AnswerUnits units,
            String pointer, Explanation explanation) {
        DoseChoice.Option best = choice.best();
        explain(choice, duty.controller().saltStep() instanceof SaltStep.PoundsPerCubicFoot, units, pointer, explanation);
        return new DoseTradeOff(units.saltDose(best.dosed().saltDoseGramsPerLitre()), Money.of(best.costPerYear(), currency),
                OptionalResultAnswer.of(best.intervalDays(), 1), Rounding.toThousandth(best.year().hardDays()),
                HardDaysRange.of(duty.hardDays(best.settings().policy(), best.dosed().regeneration())),
                Rounding.toThousandth(duty.standard().stressedHardDays(duty.longRun(), best.settings().policy(),
                        duty.loadMgPerL(), best.dosed().regeneration())),
                choice.unmet(duty), EqualCostBand.of(choice, duty, cost, units),
                choice.prices(duty).stream().map(price -> LimitPrice.of(price, currency)).toList(),
                ServiceRemedy.of(choice, duty, cost).stream().map(remedy -> ServiceRemedyAnswer.of(remedy, currency, units))
                        .toList(),
                choice.bound(duty).orElse(null),
                choice.bound(duty).map(units::saying).orElseGet(() -> whyNone(choice, duty, units)),
                choice.shown().stream().map(option -> DoseResult.of(option, units, currency)).toList());
    }

    private static void explain(DoseChoice choice, boolean inPounds, AnswerUnits units, String pointer, Explanation explanation) {
        explanation.because(pointer + "/chosen", inPounds ? Message.of("formula.softener.everyHalfPoundPer")
                : Message.of("formula.softener.dosesControllersSaltSteps"), "CP-PRICES");
        String each = pointer + "/doses/*";
        explanation.because(each + "/saltDose", inPounds ? Message.of("formula.softener.stepsLowestDoseRecommended", Text.of(units.saltDose(
                SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(1)))) : Message.of("formula.softener.everySecondDoseTried"), "CP-WORKING-TABLE");
        explanation.because(each + "/capacity", Message.of("formula.softener.capacitySoftenerDose",
                Text.rounded(units.resinVolume(choice.best().dosed().softener().bed().resinLitres()))),
                choice.best().dosed().softener().capacity().sourceKey());
        CapacityBasis.explain(each + "/capacity", choice.best().dosed().softener().capacity(), units, explanation);
    }

    private static Message whyNone(DoseChoice choice, DesignConditions duty, AnswerUnits units) {
        Message lowest = Text.of(units.saltDose(choice.options().get(0).dosed().saltDoseGramsPerLitre()));
        return Message.of("doseTradeOff.noDoseUpKeeps", lowest,
                Message.sentences(choice.unmet(duty).stream().map(units::saying).toList()));
    }
}
