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
import dev.brinebook.wording.Message;
import java.util.OptionalDouble;

/** Says what was made of a measured series. */
final class FittedSeries {

    private FittedSeries() {
    }

    static void explain(HouseholdFit fit, MeteredDays latest, OptionalDouble litresOfPeople, VolumeUnit unit, Explanation explanation) {
        explanation.assume("household.dailySeries.from", Message.of("the days from {0} on", latest.firstDate()), Origin.DERIVED);
        explanation.assume("household.dailyUse", mean(fit, litresOfPeople, unit), Origin.DERIVED);
        explanation.assume("household.dayToDayVariation", scatter(fit), Origin.DERIVED);
        explanation.assume("household.occupancy", fit.model().occupancy() instanceof Occupancy.Chain chain
                ? Message.of("somebody at home on {0} % of the days; left for the next day with a probability of {1}, returned"
                        + " to with {2}", Text.number(100 * (1 - fit.presence().emptyShare())),
                        Text.number(chain.leavePerDay()), Text.number(chain.returnPerDay()))
                : Message.of("always at home"), Origin.DERIVED);
        if (!fit.highDays().isEmpty()) {
            explanation.assume("household.dailySeries.highDays", Message.of("leaks or fillings, counted up to four times the"
                    + " median day: {0}", Message.joined(", ", fit.highDays().stream().map(day -> highDay(day, unit)).toList())),
                    Origin.DERIVED);
        } else if (fit.daysAboveCap() > 0) {
            explanation.assume("household.dailySeries.highDays", Message.of("{0} days are above four times the median day: too many"
                    + " for leaks or fillings, so they count in full", fit.daysAboveCap()), Origin.DERIVED);
        }
    }

    static void explainSpread(String name, double spread, HouseholdFit fit, Explanation explanation) {
        explanation.assume(name, Message.counted("{1}, by {0} day with somebody at home", "{1}, by {0} days with somebody at home",
                fit.presence().occupiedDays(), Text.number(spread)), Origin.DERIVED);
    }

    private static Message highDay(HighDay day, VolumeUnit unit) {
        return Message.of("{0}: {1}", day.date(), volume(day.litres(), unit));
    }

    private static Message mean(HouseholdFit fit, OptionalDouble litresOfPeople, VolumeUnit unit) {
        Message mean = volume(fit.meanLitres(), unit);
        if (fit.presence().occupiedDays() == 0) {
            return litresOfPeople.isPresent()
                    ? Message.of("{0} on a day with somebody at home, what people alone say: no day shows anybody there", mean)
                    : Message.of("{0}: no day shows anybody there", mean);
        }
        return litresOfPeople.isPresent()
                ? Message.of("{0} on a day with somebody at home: {1} by the days, which count {2} %, {3} by people", mean,
                        volume(fit.ownMeanLitres(), unit), Text.number(100 * fit.weightOfOwnMean()),
                        volume(litresOfPeople.getAsDouble(), unit))
                : Message.of("{0} on a day with somebody at home, by the days alone", mean);
    }

    private static Message scatter(HouseholdFit fit) {
        Message cv = Message.of("{0}", Text.number(fit.cv()));
        if (fit.cv() > DayVariation.MAX_CV) {
            return Message.of("{0}, held to the highest that is taken, {1}", cv, Text.number(DayVariation.MAX_CV));
        }
        return fit.weightOfOwnCv() == 0
                ? Message.of("{0}, the usual scatter: there are too few days to tell their own", cv)
                : Message.of("{0}, from {1} by {2} days with somebody at home, which count {3} %, and what is usual", cv,
                        Text.number(fit.ownCv()), fit.presence().occupiedDays(), Text.number(100 * fit.weightOfOwnCv()));
    }

    private static Message volume(double litres, VolumeUnit unit) {
        return Message.of("{0} {1}", Text.number(unit.fromBase(litres)), unit.symbol());
    }
}
