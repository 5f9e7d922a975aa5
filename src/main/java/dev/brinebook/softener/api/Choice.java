package dev.brinebook.softener.api;

import dev.brinebook.api.Text;
import dev.brinebook.softener.Fit;
import dev.brinebook.softener.Sizing.Ranked;
import java.util.List;
import java.util.stream.Collectors;

/** Puts a ranking into a sentence. */
final class Choice {

    private Choice() {
    }

    /** Why the first beat the second. */
    static String why(List<Ranked> ranked) {
        Ranked best = ranked.get(0);
        String lasts = best.fit().intervalDays().exists()
                ? "its capacity lasts " + Text.number(best.fit().intervalDays().value()) + " days of mean use"
                : "nothing is used";
        String fits = "it fits, " + lasts;
        if (ranked.size() == 1) {
            return fits + ", and no other was named.";
        }
        Ranked next = ranked.get(1);
        if (!next.fit().fits()) {
            return fits + ", and of " + next.candidate().name() + " " + first(next) + ".";
        }
        boolean priced = ranked.stream().allMatch(one -> one.candidate().price().isPresent());
        return priced
                ? fits + ", and with its price it costs " + Text.number(best.costPerYear()) + " a year against "
                        + Text.number(next.costPerYear()) + " of " + next.candidate().name() + "."
                : fits + ", and it is smaller than " + next.candidate().name() + ", which would fit too.";
    }

    /** Why none fits. */
    static String whyNone(List<Ranked> ranked) {
        return "None of the candidates fits: of the nearest, " + ranked.get(0).candidate().name() + ", "
                + ranked.get(0).fit().shortcomings().stream().map(Fit.Shortcoming::sentence)
                        .collect(Collectors.joining("; ")) + ".";
    }

    private static String first(Ranked ranked) {
        return ranked.fit().shortcomings().get(0).sentence();
    }
}
