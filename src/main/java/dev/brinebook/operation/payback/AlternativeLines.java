package dev.brinebook.operation.payback;

import dev.brinebook.answer.payback.MoneyLines;
import dev.brinebook.answer.resin.EfficiencyLineAnswer;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.guard.Figure;
import dev.brinebook.payback.AgainstBaseline;
import dev.brinebook.payback.Alternative;
import dev.brinebook.payback.BreakEven;
import dev.brinebook.payback.Comparison;
import dev.brinebook.payback.Factors;
import dev.brinebook.payback.Input;
import dev.brinebook.payback.LifeCycleCost;
import dev.brinebook.payback.Prices;
import dev.brinebook.payback.Way;
import dev.brinebook.payback.YearlyUse;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.softener.DosedSoftener;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.Fit;
import dev.brinebook.softener.Setup;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.function.DoubleFunction;

/** Puts a way of going on into the units of the answer. */
final class AlternativeLines {

    private AlternativeLines() {
    }

    static AlternativeAnswer of(Comparison comparison, int index, AlternativeRequest.Kind kind,
            UncertainWorthAnswer uncertain, Integer people, Currency currency, AnswerUnits units, Explanation explanation) {
        Way way = comparison.ways().get(index);
        Prices prices = comparison.bills().prices();
        Alternative alternative = comparison.expected(way, Factors.AS_TOLD);
        double cost = comparison.lifeCycleCost(way);
        boolean isBaseline = index == comparison.baselineIndex();
        AgainstBaseline worth = isBaseline ? null : comparison.against(way);
        YearlyUse use = comparison.use(way, Factors.AS_TOLD);
        Setup setup = comparison.setup(way).orElse(null);
        return new AlternativeAnswer(way.name(), kind,
                setup == null ? null : units.saltDose(setup.saltDoseGramsPerLitre()),
                setup != null && setup.policy() instanceof ClockEveryDays clock ? clock.days() : null,
                setup == null || setup.policy().byClock() ? null : units.volume(setup.policy().meterVolumeLitres()),
                YearlyUseAnswer.of(use, setup == null ? null : setup.year(comparison.duty()), units),
                MoneyLines.of(alternative.yearly(), currency), Money.of(cost, currency),
                Money.of(LifeCycleCost.annualEquivalent(cost, comparison.horizonYears(), prices.discountSharePerYear()),
                        currency),
                worth == null ? null : WorthAnswer.of(worth, prices, currency), uncertain,
                worth == null ? List.of() : breakEvens(comparison, way, people, currency, units),
                DischargeAnswer.of(comparison, way, units),
                setup == null ? List.of() : EfficiencyLineAnswer.of(fit(setup, comparison.duty()).lines(), units,
                        "/alternatives/" + index + "/efficiencyLines", explanation));
    }

    private static Fit fit(Setup setup, Duty duty) {
        return Fit.of(new DosedSoftener(setup.softener(), setup.countedDoseGramsPerLitre(),
                setup.cycle(duty.water().temperatureCelsius())), duty, !setup.policy().byClock(), Fit.Ratings.UNKNOWN,
                setup.year(duty).totals());
    }

    private static List<BreakEvenAnswer> breakEvens(Comparison comparison, Way way, Integer people, Currency currency,
            AnswerUnits units) {
        Duty duty = comparison.duty();
        Prices prices = comparison.bills().prices();
        List<BreakEvenAnswer> answers = new ArrayList<>();
        answers.add(factor(comparison, way, currency, Input.HARDNESS, BreakEvenAnswer.Of.HARDNESS,
                factor -> Message.of("{0} of compensated hardness",
                        Text.of(units.hardness(duty.with(factor, 1).hardness().totalMgPerL())))));
        answers.add(factor(comparison, way, currency, Input.DAILY_USE, BreakEvenAnswer.Of.DAILY_USE,
                factor -> dailyUse(factor * duty.meanLitres(), people == null ? null : Text.number(factor * people),
                        units)));
        answers.add(factor(comparison, way, currency, Input.SALT_PRICE, BreakEvenAnswer.Of.SALT_PRICE,
                factor -> Message.of("{0} {1} per kg of salt", Text.number(factor * prices.saltPerKilogram()),
                        currency.getCurrencyCode())));
        if (way.outlay().firstCost() > 0) {
            answers.add(factor(comparison, way, currency, Input.FIRST_COST, BreakEvenAnswer.Of.FIRST_COST,
                    factor -> Message.of("{0} of first cost", Money.of(factor * way.outlay().firstCost(), currency)
                            .inWords())));
        }
        if (comparison.setup(comparison.baseline()).filter(setup -> setup.policy().byClock()).isPresent()) {
            answers.add(clock(comparison, way, currency));
        }
        return answers;
    }

    private static BreakEvenAnswer factor(Comparison comparison, Way way, Currency currency, Input input, BreakEvenAnswer.Of of,
            DoubleFunction<Message> value) {
        BreakEven.Place place = BreakEven.factor(comparison, way, input);
        Figure at = place.at();
        Message here = value.apply(1);
        Message there = at.exists() ? value.apply(at.value()) : null;
        return new BreakEvenAnswer(of, at.exists() ? Rounding.answer(at.value()) : null,
                there, at.exists() ? Money.of(place.within(), currency) : null, Rounding.answer(BreakEven.LEAST_FACTOR),
                Rounding.answer(BreakEven.MOST_FACTOR), at.exists() ? null : at.reason(),
                !at.exists() ? Message.of("{0}; here it is {1}.", always(comparison, way, comparison.expectedNetPresentValue(way,
                        Factors.AS_TOLD), Message.of("from {0} to {1}", value.apply(BreakEven.LEAST_FACTOR),
                        value.apply(BreakEven.MOST_FACTOR))), here)
                        : withJump(place, place.paysAbove() ? Message.of("It pays above {0}; here it is {1}.", there, here)
                        : Message.of("It pays below {0}; here it is {1}.", there, here)));
    }

    private static Message withJump(BreakEven.Place place, Message sentence) {
        return place.jumps() ? Message.of("{0} The worth jumps over zero there, as settings and bags of salt go in steps.", sentence)
                : sentence;
    }

    private static BreakEvenAnswer clock(Comparison comparison, Way way, Currency currency) {
        BreakEven.Place place = BreakEven.clockDays(comparison, way);
        Figure at = place.at();
        Message days = at.exists() ? Message.counted("{0} day", "{0} days", Text.number(at.value())) : null;
        Message sentence = at.exists() ? withJump(place,
                Message.of("It pays where the clock regenerates more often than every {0}.", days))
                : Message.of("{0}.", always(comparison, way, comparison.expectedNetPresentValue(way, Factors.AS_TOLD),
                        Message.of("for a clock of {0} to {1} days", Text.number(BreakEven.LEAST_CLOCK_DAYS),
                                Text.number(BreakEven.MOST_CLOCK_DAYS))));
        return new BreakEvenAnswer(BreakEvenAnswer.Of.CLOCK_INTERVAL, at.exists() ? Rounding.answer(at.value()) : null,
                days, at.exists() ? Money.of(place.within(), currency) : null, Rounding.answer(BreakEven.LEAST_CLOCK_DAYS),
                Rounding.answer(BreakEven.MOST_CLOCK_DAYS), at.exists() ? null : at.reason(), sentence);
    }

    private static Message always(Comparison comparison, Way way, double worth, Message range) {
        boolean runsHard = comparison.setup(way).map(setup -> setup.policy().byClock()).orElse(true);
        Message verdict = worth > 0 ? Message.of("It pays anywhere {0}", range) : Message.of("It does not pay anywhere {0}", range);
        return runsHard ? Message.of("{0}, because the hard water that it lets pass has no price here", verdict) : verdict;
    }

    private static Message dailyUse(double litres, BigDecimal people, AnswerUnits units) {
        Message use = Message.of("{0} a day", Text.of(units.volume(litres)));
        return people == null ? use : Message.of("{0}, what {1}", use,
                Message.counted("{0} person uses", "{0} people use", people));
    }
}
