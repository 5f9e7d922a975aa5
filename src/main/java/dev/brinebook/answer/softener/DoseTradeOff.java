package dev.brinebook.answer.softener;

import dev.brinebook.answer.regeneration.HardDaysRange;
import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.FigureAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.SaltStep;
import dev.brinebook.softener.ServiceRemedy;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;

@About("Salt against water against interval: what every dose is to use, each with the smallest reserve that keeps to the service"
        + " standard, and which costs least.")
public record DoseTradeOff(
        @Property("The dose chosen: with its reserve the least costly in the long run that keeps to the limits.")
        SaltDoseQuantity chosen,
        @Property("Salt and regeneration water of a year at it.") Money costPerYear,
        @Property("Mean days between two regenerations at it.") FigureAnswer intervalDays,
        @Property(value = "Hard days to be expected in a year at it.", min = 0, unit = "days a year", example = "0.8")
        BigDecimal expectedHardDaysPerYear,
        @Property("How far single years differ in hard days.") HardDaysRange hardDaysRange,
        @Property(value = "Hard days to be expected where more is used and the bed gives less, as the service standard has it.",
                min = 0, unit = "days a year", example = "2.6") BigDecimal stressedHardDaysPerYear,
        @Property("Limits that the dose chosen does not keep to; empty when it keeps to all.")
        List<DoseChoice.Limit> unmetLimits,
        @Property("Settings that cost as little.") EqualCostBand band,
        @Property("What each limit costs that makes a difference.") List<LimitPrice> limitPrices,
        @Property("What would keep to the service standard where no setting does; empty where one does.")
        List<ServiceRemedyAnswer> remedies,
        @Property(value = "What keeps a cheaper dose out.", optional = "when no dose keeps to the end point, the service standard"
                + " and the salt efficiency") DoseChoice.Bound boundBy,
        @Property(value = "The same in words.", example = "\"a lower dose is not recommended for this water\"") Message why,
        @Property("Every other dose looked at, from the lowest recommended for this water to the highest, and the dose chosen: whole"
                + " pounds per cubic foot, or about as much in the controller's steps of salt.") List<TriedDose> doses) {

    /** The trade-off behind a choice, with its basis told below {@code pointer}. */
    public static DoseTradeOff of(DoseChoice choice, Duty duty, RunningCost cost, Currency currency, AnswerUnits units,
            String pointer, Explanation explanation) {
        DoseChoice.Option best = choice.best();
        explain(choice, duty.controller().saltStep() instanceof SaltStep.PoundsPerCubicFoot, units, pointer, explanation);
        return new DoseTradeOff(units.saltDose(best.dosed().saltDoseGramsPerLitre()), Money.of(best.costPerYear(), currency),
                FigureAnswer.of(best.intervalDays(), 1), Rounding.toThousandth(best.year().hardDays()),
                HardDaysRange.of(duty.hardDays(best.settings().policy(), best.dosed().regeneration())),
                Rounding.toThousandth(duty.standard().stressedHardDays(duty.longRun(), best.settings().policy(),
                        duty.loadMgPerL(), best.dosed().regeneration())),
                choice.unmet(duty), EqualCostBand.of(choice, duty, cost, units),
                choice.prices(duty).stream().map(price -> LimitPrice.of(price, currency)).toList(),
                ServiceRemedy.of(choice, duty, cost).stream().map(remedy -> ServiceRemedyAnswer.of(remedy, currency, units))
                        .toList(),
                choice.bound(duty).orElse(null),
                choice.bound(duty).map(units::saying).orElseGet(() -> whyNone(choice, duty, units)),
                choice.shown().stream().map(option -> TriedDose.of(option, units, currency)).toList());
    }

    private static void explain(DoseChoice choice, boolean inPounds, AnswerUnits units, String pointer, Explanation explanation) {
        explanation.because(pointer, Message.of("regenerations and hard days in the long run: what the household has drawn after"
                + " each number of days of a cycle, by a renewal table; no year is drawn"), "FELLER");
        explanation.because(pointer + "/chosen", inPounds ? Message.of("of every half pound per cubic foot, each with the smallest"
                + " reserve that keeps to the service standard, the one of least salt and water at their prices")
                : Message.of("of doses in the controller's steps of salt, each with the smallest reserve that keeps to the service"
                        + " standard, the one of least salt and water at their prices"), "CP-PRICES");
        explanation.because(pointer + "/costPerYear", Message.of("expected regenerations times salt and water of one at their"
                + " prices"), "CP-PRICES");
        explanation.because(pointer + "/band", Message.of("cost within 2 % of the least, at the same standard"), "CP-PRICES");
        explanation.because(pointer + "/limitPrices", Message.of("least cost with the limit less least cost without it"),
                "CP-PRICES");
        explanation.because(pointer + "/remedies", Message.of("the same choice for a larger bed, for two beds, and for softer"
                + " water"), "CP-TANKS");
        HardDaysRange.explain(pointer + "/hardDaysRange", explanation);
        String each = pointer + "/doses/*";
        explanation.because(pointer + "/doses", Message.of("a metered year to be expected at each dose"), "FELLER");
        explanation.because(each + "/saltDose", inPounds ? Message.of("in steps of {0} from the lowest dose recommended for this"
                + " water to the highest, and the dose chosen", Text.of(units.saltDose(
                SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(1)))) : Message.of("every other dose looked at, from the lowest recommended"
                        + " for this water to the highest, and the dose chosen"), "CP-WORKING-TABLE");
        explanation.because(each + "/capacity", Message.of("as the capacity of the softener, at this dose"),
                choice.best().dosed().softener().capacity().sourceKey());
        explanation.because(each + "/saltEfficiency", Message.of("capacity over salt of a regeneration"), "WQP-2009");
        explanation.because(each + "/reserve", Message.of("the smallest, in steps of the controller, that keeps to the service"
                + " standard, and no more than the meter counts"), "FELLER");
        explanation.because(each + "/costPerYear", Message.of("salt and water of that year at their prices"), "CP-PRICES");
        if (choice.shown().stream().anyMatch(TriedDose::tellsLeakage)) {
            explanation.because(each + "/meanLeakage", Message.of("hardness that the stages let through between two"
                    + " regenerations, over the water of that run; no efficiency is applied to it"), "HELFFERICH");
        }
    }

    private static Message whyNone(DoseChoice choice, Duty duty, AnswerUnits units) {
        Message lowest = Text.of(units.saltDose(choice.options().get(0).dosed().saltDoseGramsPerLitre()));
        return Message.of("no dose from {0} up keeps to all limits: {1}", lowest,
                Message.joined("; ", choice.unmet(duty).stream().map(units::saying).toList()));
    }
}
