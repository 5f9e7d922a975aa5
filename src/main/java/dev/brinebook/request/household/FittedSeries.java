// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.household;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.HouseholdFit;
import dev.brinebook.household.MeteredDays;
import dev.brinebook.household.Occupancy;
import dev.brinebook.request.household.OccupancyRequest.Pattern;
import dev.brinebook.text.Message;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Says what was made of a measured series. */
final class FittedSeries {

    private static final String HIGH_DAYS = "highDays";
    private static final String OCCUPANCY = "/household/occupancy";

    private FittedSeries() {
    }

    static void explain(HouseholdFit fit, MeteredDays latest, OptionalDouble litresOfPeople, Explanation explanation) {
        AnswerUnits units = AnswerUnits.of(explanation);
        explanation.assume(Resolved.ofCode("estimatedFrom", latest.firstDate().toString()).estimated("PETTITT-1979")
                .noting(Message.of("assumed.household.days")));
        explanation.assume(Resolved.of("/household/dailyUse", units.volume(fit.meanLitres())).estimated("DAIAD")
                .noting(mean(fit, litresOfPeople, units)));
        explanation.assume(Resolved.of("/household/dayToDayVariation", Math.min(DayVariation.MAX_CV, fit.cv()), null)
                .estimated("DAIAD").noting(scatter(fit)));
        occupancy(fit, explanation);
        highDays(fit, explanation);
    }

    private static void occupancy(HouseholdFit fit, Explanation explanation) {
        if (!(fit.model().occupancy() instanceof Occupancy.Chain chain)) {
            explanation.assume(Resolved.of(OCCUPANCY + "/pattern", Pattern.ALWAYS).estimated("ANDERSON-GOODMAN"));
            return;
        }
        explanation.assume(Resolved.of(OCCUPANCY + "/pattern", Pattern.CHAIN).estimated("ANDERSON-GOODMAN").noting(Message.of(
                "assumed.household.somebodyHomeDaysProbability", Text.digits(100 * (1 - fit.presence().emptyShare())))));
        explanation.assume(Resolved.of(OCCUPANCY + "/leavePerDay", chain.leavePerDay(), null).estimated("ANDERSON-GOODMAN"));
        explanation.assume(Resolved.of(OCCUPANCY + "/returnPerDay", chain.returnPerDay(), null).estimated("ANDERSON-GOODMAN"));
    }

    private static void highDays(HouseholdFit fit, Explanation explanation) {
        if (!fit.highDays().isEmpty()) {
            explanation.assume(Resolved.ofCode(HIGH_DAYS, fit.highDays().stream().map(day -> day.date().toString())
                    .collect(Collectors.joining(", "))).estimated("DAIAD")
                    .noting(Message.of("assumed.household.leaksOrFillingsLimited")));
        } else if (fit.daysAboveCap() > 0) {
            explanation.assume(Resolved.of(HIGH_DAYS, fit.daysAboveCap(), "days").estimated("DAIAD")
                    .noting(Message.of("assumed.household.daysAboveFourTimes")));
        }
    }

    static void explainSpread(String pointer, double spread, HouseholdFit fit, Explanation explanation) {
        explanation.assume(Resolved.of(pointer, spread, null).estimated("DAIAD")
                .noting(Message.of("assumed.household.daysSomebodyHome", fit.presence().occupiedDays())));
    }

    private static Message mean(HouseholdFit fit, OptionalDouble litresOfPeople, AnswerUnits units) {
        if (fit.presence().occupiedDays() == 0) {
            return litresOfPeople.isPresent() ? Message.of("fittedSeries.daySomeoneHomeNumber")
                    : Message.of("fittedSeries.becauseNoDayShows");
        }
        return litresOfPeople.isPresent()
                ? Message.of("fittedSeries.daySomeoneHomeDays", Text.of(units.volume(fit.ownMeanLitres())),
                        Text.digits(100 * fit.weightOfOwnMean()), Text.of(units.volume(litresOfPeople.getAsDouble())))
                : Message.of("fittedSeries.daySomeoneHomeDaysAlone");
    }

    private static Message scatter(HouseholdFit fit) {
        if (fit.cv() > DayVariation.MAX_CV) {
            return Message.of("household.limitedHighestValueUsed", Text.digits(fit.cv()));
        }
        return fit.weightOfOwnCv() == 0 ? Message.of("fittedSeries.usualScatterBecauseThere")
                : Message.of("fittedSeries.daysSomeoneHomeWeight", Text.digits(fit.ownCv()), fit.presence().occupiedDays(),
                        Text.digits(100 * fit.weightOfOwnCv()));
    }
}
