// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.answer.payback.MoneyLines;
import dev.brinebook.answer.resin.EfficiencyLineAnswer;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.payback.AgainstBaseline;
import dev.brinebook.payback.Alternative;
import dev.brinebook.payback.AlternativePlan;
import dev.brinebook.payback.BreakEven;
import dev.brinebook.payback.Comparison;
import dev.brinebook.payback.Factors;
import dev.brinebook.payback.Input;
import dev.brinebook.payback.LifeCycleCost;
import dev.brinebook.payback.Prices;
import dev.brinebook.payback.YearlyUse;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DosedSoftener;
import dev.brinebook.softener.Fit;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;

/** Converts an option to the units of the answer. */
final class AlternativeLines {

    private AlternativeLines() {
    }

    static AlternativeAnswer of(Comparison comparison, int index, AlternativeRequest.Kind kind,
            UncertainWorthAnswer uncertain, Integer people, Currency currency, AnswerUnits units, Explanation explanation) {
        AlternativePlan way = comparison.ways().get(index);
        Prices prices = comparison.bills().prices();
        Alternative alternative = comparison.expected(way, Factors.AS_GIVEN);
        double cost = comparison.lifeCycleCost(way);
        boolean isBaseline = index == comparison.baselineIndex();
        AgainstBaseline worth = isBaseline ? null : comparison.against(way);
        YearlyUse use = comparison.use(way, Factors.AS_GIVEN);
        SoftenerSettings setup = comparison.setup(way).orElse(null);
        return new AlternativeAnswer(way.name(), kind,
                setup == null ? null : units.saltDose(setup.saltDoseGramsPerLitre()),
                setup != null && setup.policy().everyDays().isPresent() ? setup.policy().everyDays().getAsInt() : null,
                setup == null || setup.policy().byClock() ? null : units.volume(setup.policy().meterVolumeLitres()),
                YearlyUseAnswer.of(use, setup == null ? null : setup.year(comparison.duty()), units),
                MoneyLines.of(alternative.yearly(), currency), Money.of(cost, currency),
                Money.of(LifeCycleCost.annualEquivalent(cost, comparison.horizonYears(), prices.discountSharePerYear()),
                        currency),
                worth == null ? null : WorthAnswer.of(worth, prices, currency), uncertain,
                worth == null ? List.of() : breakEvens(comparison, way, people, currency, explanation),
                DischargeAnswer.of(comparison, way, units),
                setup == null ? List.of() : EfficiencyLineAnswer.of(fit(setup, comparison.duty()).lines(), units,
                        "/alternatives/" + index + "/efficiencyLines", explanation));
    }

    private static Fit fit(SoftenerSettings setup, DesignConditions duty) {
        return Fit.of(new DosedSoftener(setup.softener(), setup.countedDoseGramsPerLitre(),
                setup.cycle(duty.water().temperatureCelsius())), duty, !setup.policy().byClock(), Fit.Datasheet.TANK_ALONE,
                setup.year(duty).totals());
    }

    private static List<BreakEvenAnswer> breakEvens(Comparison comparison, AlternativePlan way, Integer people, Currency currency,
            Explanation explanation) {
        AnswerUnits units = AnswerUnits.of(explanation);
        DesignConditions duty = comparison.duty();
        Prices prices = comparison.bills().prices();
        List<BreakEvenAnswer> answers = new ArrayList<>();
        answers.add(factor(comparison, way, currency, Input.HARDNESS, BreakEvenAnswer.Of.HARDNESS, 0,
                factor -> Text.rounded(HardnessQuantity.forReader(duty.with(factor, 1).hardness().totalMgPerL(), explanation)),
                amount -> Message.of("alternative.compensatedHardness", amount)));
        answers.add(factor(comparison, way, currency, Input.DAILY_USE, BreakEvenAnswer.Of.DAILY_USE, people == null ? 0 : people,
                factor -> Text.rounded(units.volume(factor * duty.meanLitres())), amount -> Message.of("alternative.day", amount)));
        answers.add(factor(comparison, way, currency, Input.SALT_PRICE, BreakEvenAnswer.Of.SALT_PRICE, 0,
                factor -> Text.unitPrice(factor * prices.saltPerKilogram(), currency),
                amount -> Message.of("alternative.perKgSalt", amount)));
        if (way.outlay().firstCost() > 0) {
            answers.add(factor(comparison, way, currency, Input.FIRST_COST, BreakEvenAnswer.Of.FIRST_COST, 0,
                    factor -> Text.rounded(factor * way.outlay().firstCost(), currency),
                    amount -> Message.of("alternative.firstCost", amount)));
        }
        if (comparison.setup(comparison.baseline()).filter(setup -> setup.policy().byClock()).isPresent()) {
            answers.add(clock(comparison, way, currency));
        }
        return answers;
    }

    /** @param people how many use the daily use as it is; 0 where that is not known, or the input is another */
    private static BreakEvenAnswer factor(Comparison comparison, AlternativePlan way, Currency currency, Input input, BreakEvenAnswer.Of of,
            int people, DoubleFunction<Message> amount, UnaryOperator<Message> inWords) {
        BreakEven.Place place = BreakEven.factor(comparison, way, input);
        OptionalResult at = place.at();
        Message here = amount.apply(1);
        if (!at.exists()) {
            return new BreakEvenAnswer(of, null, null, null, Rounding.answer(BreakEven.LEAST_FACTOR),
                    Rounding.answer(BreakEven.MOST_FACTOR), at.reason(), always(comparison, way, of, amount.apply(BreakEven.LEAST_FACTOR),
                            amount.apply(BreakEven.MOST_FACTOR), here));
        }
        Message there = amount.apply(at.value());
        BigDecimal users = Text.whole(at.value() * people);
        return new BreakEvenAnswer(of, Rounding.answer(at.value()), inWords.apply(there), Money.of(place.within(), currency),
                Rounding.answer(BreakEven.LEAST_FACTOR), Rounding.answer(BreakEven.MOST_FACTOR), null, withJump(place, place.paysAbove()
                        ? Message.of("alternative.optionPaysAboveCompensated", WireNames.of(of), there, here, users)
                        : Message.of("alternative.optionPaysBelowCompensated", WireNames.of(of), there, here, users)));
    }

    private static Message withJump(BreakEven.Place place, Message sentence) {
        return place.jumps() ? Message.sentences(sentence, Message.of("alternative.settingsBagsSaltGo")) : sentence;
    }

    private static BreakEvenAnswer clock(Comparison comparison, AlternativePlan way, Currency currency) {
        BreakEven.Place place = BreakEven.clockDays(comparison, way);
        OptionalResult at = place.at();
        if (!at.exists()) {
            return new BreakEvenAnswer(BreakEvenAnswer.Of.CLOCK_INTERVAL, null, null, null, Rounding.answer(BreakEven.LEAST_CLOCK_DAYS),
                    Rounding.answer(BreakEven.MOST_CLOCK_DAYS), at.reason(), always(comparison, way, BreakEvenAnswer.Of.CLOCK_INTERVAL,
                            Message.of("pattern.value", Text.number(BreakEven.LEAST_CLOCK_DAYS)),
                            Message.of("pattern.value", Text.number(BreakEven.MOST_CLOCK_DAYS)), Message.verbatim("")));
        }
        BigDecimal days = Text.tenths(at.value());
        return new BreakEvenAnswer(BreakEvenAnswer.Of.CLOCK_INTERVAL, Rounding.answer(at.value()), Message.of("alternative.days", days),
                Money.of(place.within(), currency), Rounding.answer(BreakEven.LEAST_CLOCK_DAYS),
                Rounding.answer(BreakEven.MOST_CLOCK_DAYS), null, withJump(place, Message.of("alternative.optionPaysIfClock", days)));
    }

    private static Message always(Comparison comparison, AlternativePlan way, BreakEvenAnswer.Of of, Message low, Message high,
            Message here) {
        boolean runsHard = comparison.setup(way).map(setup -> setup.policy().byClock()).orElse(true);
        Message verdict = comparison.expectedNetPresentValue(way, Factors.AS_GIVEN) > 0
                ? Message.of("alternative.optionPaysEveryCompensated", WireNames.of(of), low, high, here)
                : Message.of("alternative.optionDoesPayAny", WireNames.of(of), low, high, here);
        return runsHard ? Message.sentences(verdict, Message.of("alternative.damageHardWaterPriced")) : verdict;
    }
}
