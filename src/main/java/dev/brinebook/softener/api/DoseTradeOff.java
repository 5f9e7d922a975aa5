package dev.brinebook.softener.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.Money;
import dev.brinebook.quantity.api.SaltDoseQuantity;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.LeastCostDose;
import dev.brinebook.softener.RunningCost;
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
                + " for this water\"") String why,
        @Property("Every whole pound per cubic foot (16.02 g/L) from the lowest dose recommended for this water to the highest,"
                + " and the dose chosen.") List<TriedDose> doses) {

    /** The trade-off behind a choice, with its basis told below {@code pointer}. */
    public static DoseTradeOff of(DoseChoice choice, Duty duty, RunningCost cost, Currency currency, AnswerUnits units,
            String pointer, Explanation explanation) {
        Optional<LeastCostDose> least = LeastCostDose.of(choice.best().dosed().softener(), duty, cost);
        explanation.because(pointer + "/doses", "a metered year on the household's days at each dose", "DAIAD");
        explanation.because(pointer + "/leastCostDose", "the least of 365 over the mean interval times the salt and water of a"
                + " regeneration at their prices, between the limits of leakage, interval and salt efficiency", "CP-PRICES");
        explanation.because(pointer + "/leastCostIntervalDays", "one and the chances to be still waiting after 1, 2, 3 ..."
                + " nights, of gamma distributed days", "DAIAD");
        explanation.because(pointer + "/chosen", "the trade books low doses as the efficient ones, as far as they hold",
                "TRADE-EFFICIENT");
        return new DoseTradeOff(units.saltDose(choice.best().dosed().saltDoseGramsPerLitre()), choice.unmet(duty),
                least.map(dose -> units.saltDose(dose.saltDoseGramsPerLitre())).orElse(null),
                least.map(dose -> Money.of(dose.costPerYear(), currency)).orElse(null),
                least.map(dose -> Rounding.answer(dose.intervalDays())).orElse(null),
                least.map(LeastCostDose::boundBy).orElse(null),
                least.map(dose -> dose.boundBy().sentence()).orElseGet(() -> "no dose from "
                        + Text.of(units.saltDose(choice.options().get(0).dosed().saltDoseGramsPerLitre()))
                        + " up keeps to all limits: " + words(choice.unmet(duty))),
                choice.shown().stream().map(option -> TriedDose.of(option, units, currency)).toList());
    }

    private static String words(List<DoseChoice.Limit> limits) {
        return limits.isEmpty() ? "on the mean of many years the limits exclude each other"
                : String.join(" and ", limits.stream().map(DoseChoice.Limit::words).toList());
    }
}
