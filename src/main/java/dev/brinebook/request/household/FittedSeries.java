// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.household;

import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Text;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.HighDay;
import dev.brinebook.household.HouseholdFit;
import dev.brinebook.household.MeteredDays;
import dev.brinebook.household.Occupancy;
import dev.brinebook.quantity.VolumeUnit;
import dev.brinebook.text.Joint;
import dev.brinebook.text.Message;
import java.util.OptionalDouble;

/** Says what was made of a measured series. */
final class FittedSeries {

    private FittedSeries() {
    }

    static void explain(HouseholdFit fit, MeteredDays latest, OptionalDouble litresOfPeople, VolumeUnit unit, Explanation explanation) {
        explanation.assume("household.dailySeries.from", Message.of("assumed.household.days", latest.firstDate()), Origin.DERIVED);
        explanation.assume("household.dailyUse", mean(fit, litresOfPeople, unit), Origin.DERIVED);
        explanation.assume("household.dayToDayVariation", scatter(fit), Origin.DERIVED);
        explanation.assume("household.occupancy", fit.model().occupancy() instanceof Occupancy.Chain chain
                ? Message.of("assumed.household.somebodyHomeDaysProbability", Text.number(100 * (1 - fit.presence().emptyShare())),
                        Text.number(chain.leavePerDay()), Text.number(chain.returnPerDay()))
                : Message.of("assumed.household.alwaysHome"), Origin.DERIVED);
        if (!fit.highDays().isEmpty()) {
            explanation.assume("household.dailySeries.highDays", Message.of("assumed.household.leaksOrFillingsLimited",
                    Message.joined(Joint.SEMICOLON, fit.highDays().stream().map(day -> highDay(day, unit)).toList())),
                    Origin.DERIVED);
        } else if (fit.daysAboveCap() > 0) {
            explanation.assume("household.dailySeries.highDays", Message.of("assumed.household.daysAboveFourTimes", fit.daysAboveCap()),
                    Origin.DERIVED);
        }
    }

    static void explainSpread(String name, double spread, HouseholdFit fit, Explanation explanation) {
        explanation.assume(name, Message.of("assumed.household.daysSomebodyHome",
                fit.presence().occupiedDays(), Text.number(spread)), Origin.DERIVED);
    }

    private static Message highDay(HighDay day, VolumeUnit unit) {
        return Message.of("pattern.colon", day.date(), volume(day.litres(), unit));
    }

    private static Message mean(HouseholdFit fit, OptionalDouble litresOfPeople, VolumeUnit unit) {
        Message mean = volume(fit.meanLitres(), unit);
        if (fit.presence().occupiedDays() == 0) {
            return litresOfPeople.isPresent()
                    ? Message.of("fittedSeries.daySomeoneHomeNumber", mean)
                    : Message.of("fittedSeries.becauseNoDayShows", mean);
        }
        return litresOfPeople.isPresent()
                ? Message.of("fittedSeries.daySomeoneHomeDays", mean,
                        volume(fit.ownMeanLitres(), unit), Text.number(100 * fit.weightOfOwnMean()),
                        volume(litresOfPeople.getAsDouble(), unit))
                : Message.of("fittedSeries.daySomeoneHomeDaysAlone", mean);
    }

    private static Message scatter(HouseholdFit fit) {
        Message cv = Message.of("pattern.value", Text.number(fit.cv()));
        if (fit.cv() > DayVariation.MAX_CV) {
            return Message.of("household.limitedHighestValueUsed", cv, Text.number(DayVariation.MAX_CV));
        }
        return fit.weightOfOwnCv() == 0
                ? Message.of("fittedSeries.usualScatterBecauseThere", cv)
                : Message.of("fittedSeries.daysSomeoneHomeWeight", cv,
                        Text.number(fit.ownCv()), fit.presence().occupiedDays(), Text.number(100 * fit.weightOfOwnCv()));
    }

    private static Message volume(double litres, VolumeUnit unit) {
        return Text.measure(Text.number(unit.fromBase(litres)), unit.symbol());
    }
}
