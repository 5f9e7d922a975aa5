package dev.brinebook.softener.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.Money;
import dev.brinebook.quantity.api.SaltDoseQuantity;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.LeastCostDose;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

@About("Salt against water against interval: what every dose would use, and which costs least.")
public record DoseTradeOff(
        @Property("The dose chosen: the lowest settable one that costs as little, within 2 %, as the cheapest that keeps to the"
                + " limits on the days tried.") SaltDoseQuantity chosen,
        @Property("Limits that the dose chosen does not keep to, because none does; empty when it keeps to all.")
        List<DoseChoice.Limit> unmetLimits,
        @Property(value = "The dose that costs least on the mean of endless years, not in settable steps.",
                optional = "when no dose keeps to all limits") SaltDoseQuantity leastCostDose,
        @Property(value = "What a mean year costs at it.", optional = "when no dose keeps to all limits")
        Money leastCostPerYear,
        @Property(value = "Mean days between two regenerations at it.", optional = "when no dose keeps to all limits",
                example = "4.8", unit = "days") BigDecimal leastCostIntervalDays,
        @Property(value = "What keeps a cheaper dose out.", optional = "when no dose keeps to all limits")
        LeastCostDose.Bound boundBy,
        @Property(value = "The same in words.", example = "\"a lower dose would cost less, but is lower than is recommended"
                + " for this water\"") Message why,
        @Property("Every whole pound per cubic foot (16.02 g/L) from the lowest dose recommended for this water to the highest,"
                + " and the dose chosen.") List<TriedDose> doses) {

    /** The trade-off behind a choice, with its basis told below {@code pointer}. */
    public static DoseTradeOff of(DoseChoice choice, Duty duty, RunningCost cost, Currency currency, AnswerUnits units,
            String pointer, Explanation explanation) {
        Optional<LeastCostDose> least = LeastCostDose.of(choice.best().dosed().softener(), duty, cost);
        explain(choice, units, pointer, explanation);
        return new DoseTradeOff(units.saltDose(choice.best().dosed().saltDoseGramsPerLitre()), choice.unmet(duty),
                least.map(dose -> units.saltDose(dose.saltDoseGramsPerLitre())).orElse(null),
                least.map(dose -> Money.of(dose.costPerYear(), currency)).orElse(null),
                least.map(dose -> Rounding.answer(dose.intervalDays())).orElse(null),
                least.map(LeastCostDose::boundBy).orElse(null),
                least.map(dose -> units.saying(dose.boundBy())).orElseGet(() -> whyNone(choice, duty, units)),
                choice.shown().stream().map(option -> TriedDose.of(option, units, currency)).toList());
    }

    private static void explain(DoseChoice choice, AnswerUnits units, String pointer, Explanation explanation) {
        Message least = Message.of("the least of 365 over the mean interval times the salt and water of a regeneration at their"
                + " prices, between the limits of leakage, interval and salt efficiency");
        explanation.because(pointer + "/leastCostDose", least, "CP-PRICES");
        explanation.because(pointer + "/leastCostPerYear", least, "CP-PRICES");
        explanation.because(pointer + "/leastCostIntervalDays", Message.of("one and the chances to be still waiting after 1, 2,"
                + " 3 ... nights, of gamma distributed days"), "DAIAD");
        explanation.because(pointer + "/chosen", Message.of("the trade books low doses as the efficient ones, as far as they"
                + " hold"), "TRADE-EFFICIENT");
        String each = pointer + "/doses/*";
        explanation.because(pointer + "/doses", Message.of("a metered year on the household's days at each dose"), "DAIAD");
        explanation.because(each + "/saltDose", Message.of("in steps of {0} from the lowest dose recommended for this water"
                + " to the highest, and the dose chosen", Text.of(units.saltDose(
                SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(1)))), "CP-WORKING-TABLE");
        explanation.because(each + "/capacity", Message.of("as the capacity of the softener, at this dose"),
                choice.best().dosed().softener().capacity().sourceKey());
        explanation.because(each + "/saltEfficiency", Message.of("capacity over salt of a regeneration"), "WQP-2009");
        explanation.because(each + "/reserve", Message.of("what a day of the busiest weekday stays below with the probability"
                + " asked for, and no more than the meter counts"), "DAIAD");
        explanation.because(each + "/costPerYear", Message.of("salt and water of that year at their prices"), "CP-PRICES");
        if (choice.shown().stream().anyMatch(TriedDose::tellsLeakage)) {
            explanation.because(each + "/meanLeakage", Message.of("hardness that the stages let through between two"
                    + " regenerations, over the water of that run; no efficiency is applied to it"), "HELFFERICH");
        }
    }

    private static Message whyNone(DoseChoice choice, Duty duty, AnswerUnits units) {
        Message lowest = Text.of(units.saltDose(choice.options().get(0).dosed().saltDoseGramsPerLitre()));
        List<DoseChoice.Limit> unmet = choice.unmet(duty);
        return unmet.isEmpty()
                ? Message.of("no dose from {0} up keeps to all limits: on the mean of many years the limits exclude each other",
                        lowest)
                : Message.of("no dose from {0} up keeps to all limits: {1}", lowest,
                        Message.joined("; ", unmet.stream().map(units::saying).toList()));
    }
}
