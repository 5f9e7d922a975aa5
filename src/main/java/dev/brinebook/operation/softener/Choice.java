package dev.brinebook.operation.softener;

import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.softener.Sizing;
import dev.brinebook.softener.Sizing.Ranked;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/** Puts a ranking into sentences. */
final class Choice {

    private Choice() {
    }

    /** Why the first beat the second. */
    static Message why(List<Ranked> ranked, AnswerUnits units) {
        return Message.joined(" ", List.of(fits(ranked.get(0)), against(ranked, units)));
    }

    /** Why none fits. */
    static Message whyNone(List<Ranked> ranked, AnswerUnits units) {
        Ranked nearest = ranked.get(0);
        return Message.of("None of the candidates fits. {0} is the nearest: {1}.", nearest.candidate().name(),
                Message.joined("; ", nearest.fit().shortcomings().stream().map(units::saying).toList()));
    }

    private static Message fits(Ranked best) {
        if (!best.fit().intervalDays().exists()) {
            return Message.of("It fits: nothing is used.");
        }
        BigDecimal days = BigDecimal.valueOf(best.fit().intervalDays().value()).round(new MathContext(2, RoundingMode.HALF_EVEN));
        return Message.counted("It fits: about {0} day between regenerations.", "It fits: about {0} days between regenerations.", days);
    }

    private static Message against(List<Ranked> ranked, AnswerUnits units) {
        if (ranked.size() == 1) {
            return Message.of("No other was named.");
        }
        Ranked best = ranked.get(0);
        Ranked next = ranked.get(1);
        String name = next.candidate().name();
        if (!next.fit().fits()) {
            return Message.of("{0} does not fit: {1}.", name, units.saying(next.fit().shortcomings().get(0)));
        }
        if (ranked.stream().allMatch(one -> one.candidate().price().isPresent())) {
            return Message.of("With its price it costs {0} a year against {1} of {2}.", Text.number(best.costPerYear()),
                    Text.number(next.costPerYear()), name);
        }
        return Message.of("Over {0} years salt, water and a usual price of the resin add up to less than with {1}, which would fit too.",
                Text.number(Sizing.ASSUMED_LIFE_YEARS), name);
    }
}
