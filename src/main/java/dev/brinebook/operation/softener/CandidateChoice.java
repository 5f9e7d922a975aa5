// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.softener;

import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.softener.Sizing;
import dev.brinebook.softener.Sizing.Ranked;
import dev.brinebook.text.Message;
import java.util.Currency;
import java.util.List;
import java.util.stream.Stream;

/** Puts a ranking into sentences. */
final class CandidateChoice {

    /** Half a hundredth of the money of the prices: what no answer shows. */
    private static final double LEAST_DIFFERENCE = 0.005;

    private CandidateChoice() {
    }

    /** Why the first beat the second, in the currency of the prices. */
    static Message why(List<Ranked> ranked, Currency currency, AnswerUnits units) {
        return Message.sentences(fits(ranked.get(0), units), against(ranked, currency, units));
    }

    /** Why none fits. */
    static Message whyNone(List<Ranked> ranked, AnswerUnits units) {
        Ranked nearest = ranked.get(0);
        return Message.sentences(Stream.concat(Stream.of(Message.of("choice.noneSoftenersFitsClosest", name(nearest))),
                nearest.fit().shortcomings().stream().map(units::saying)).toList());
    }

    private static Message fits(Ranked best, AnswerUnits units) {
        Message name = name(best);
        return best.fit().intervalDays().exists() ? Message.of("choice.softenerFitsAboutDays", name,
                Text.days(best.fit().intervalDays().value()), Text.rounded(units.mass(best.option().year().saltGrams() / 1000)))
                : Message.of("choice.softenerFitsNoWater", name);
    }

    /** The size of a standard tank, or the name that the caller gave. */
    private static Message name(Ranked one) {
        return Message.named(one.candidate().name());
    }

    private static Message against(List<Ranked> ranked, Currency currency, AnswerUnits units) {
        if (ranked.size() == 1) {
            return Message.of("choice.noOtherSoftenerGiven");
        }
        Ranked best = ranked.get(0);
        Ranked next = ranked.get(1);
        Message name = name(next);
        if (!next.fit().fits()) {
            return Message.sentences(Message.of("choice.softenerDoesFit", name), units.saying(next.fit().shortcomings().get(0)));
        }
        if (Math.abs(next.costPerYear() - best.costPerYear()) < LEAST_DIFFERENCE) {
            return Message.of("choice.costsTheSame", name);
        }
        return ranked.stream().allMatch(one -> one.candidate().price().isPresent())
                ? Message.of("choice.priceSoftenerCostsYear", name(best), Text.rounded(best.costPerYear(), currency), name,
                        Text.rounded(next.costPerYear(), currency))
                : Message.of("choice.overYearsSaltWater", Text.number(Sizing.ASSUMED_LIFE_YEARS), name);
    }
}
