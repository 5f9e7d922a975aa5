package dev.brinebook.operation.household;

import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.household.Country;
import dev.brinebook.household.Meter.Kind;
import dev.brinebook.wording.Message;

/** Why the numbers that readings are made into are what they are. */
final class MeterBasis {

    private MeterBasis() {
    }

    static void explain(Explanation explanation, Kind kind, Integer people, Country country) {
        explanation.assume("estimates.emptyDays", Message.of("a day of less than 10 L, or of less than 10 % of the median of the days"
                + " with use, each over the mean of its weekday; weekdays of less than 5 % of the busiest are a pattern of the week"
                + " and not counted"),
                Origin.DEFAULT);
        explanation.assume("findings.change", Message.of("told when chance makes it less often than once in a hundred and it is"
                + " more than 10 %"), Origin.DEFAULT);
        days(explanation, kind);
        coverage(explanation);
        level(explanation);
        scatter(explanation);
        findings(explanation);
        forecast(explanation, people);
        if (people != null) {
            usual(explanation, country);
        }
    }

    private static void days(Explanation explanation, Kind kind) {
        explanation.because("/days", kind == Kind.REGISTER
                ? Message.of("the difference of two readings, parted at midnight in proportion to time")
                : Message.of("the volumes of the intervals, parted at midnight in proportion to time"), "CP-METER-READING");
        explanation.because("/days/firstDate", Message.of("days begin at midnight on the clock of the place, and have 23 or 25"
                + " hours where it changes"), "IANA-TZ");
    }

    private static void coverage(Explanation explanation) {
        Message rows = Message.of("how many rows were so; a row with two faults counts for each");
        explanation.because("/coverage/readings", Message.of("how many rows came"), "REQUEST");
        explanation.because("/coverage/rowsSkipped", rows, "CP-METER-READING");
        explanation.because("/coverage/rowsRepaired", rows, "CP-METER-READING");
        explanation.because("/coverage/rowsUseLost", rows, "CP-METER-READING");
        explanation.because("/coverage/rowsOmitted", Message.of("such rows beyond the first {0}", MeterCoverage.MAX_ROWS),
                "CP-METER-READING");
        explanation.because("/coverage/rows/*/row", Message.of("where the row stands in what came"), "REQUEST");
        explanation.because("/coverage/days", Message.of("dates from the first whole day to the last, both counted"),
                "CP-METER-READING");
        Message missing = Message.of("dates between them that readings do not fill from midnight to midnight");
        explanation.because("/coverage/missingDays", missing, "CP-METER-READING");
        explanation.because("/coverage/gaps/*/days", missing, "CP-METER-READING");
        explanation.because("/coverage/gaps/*/volume", Message.of("what passed between readings that are too far apart to be"
                + " parted into days, where they fill the gap"), "CP-METER-READING");
    }

    private static void level(Explanation explanation) {
        explanation.because("/estimates/mean", Message.of("sum of the known days over how many there are"), "CP-METER-READING");
        explanation.because("/estimates/occupiedMean", Message.of("the mean of each weekday is its most likely value"),
                "CHOI-WETTE");
        explanation.because("/estimates/weekdayFactors", Message.of("the mean of each weekday over the mean of the seven"),
                "CHOI-WETTE");
        explanation.because("/estimates/weekendRatio", Message.of("mean of the factors of Saturday and Sunday over the mean of"
                + " the other five"), "CHOI-WETTE");
        Message empty = Message.of("days of less than 10 L, or of less than 10 % of the median of the days with use, each over"
                + " the mean of its weekday, and their share of the known days; idle weekdays are left out");
        explanation.because("/estimates/emptyDays", empty, "DAIAD");
        explanation.because("/estimates/emptyShare", empty, "DAIAD");
        Message followed = Message.of("how often a day of the one kind is followed by one of the other, over how often it is"
                + " followed by a known day");
        explanation.because("/estimates/leaveProbability", followed, "ANDERSON-GOODMAN");
        explanation.because("/estimates/returnProbability", followed, "ANDERSON-GOODMAN");
    }

    private static void scatter(Explanation explanation) {
        explanation.because("/highDays/*/use", Message.of("days of more than four times the median of the days with somebody"
                + " there, unless they are a tenth of the days or more, or the habit of their weekday"), "DAIAD");
        explanation.because("/highDays/*/above", Message.of("the use less four times that median"), "DAIAD");
        explanation.because("/estimates/gammaShape", Message.of("ln a - psi(a) = ln of the mean less mean of the ln, of the days"
                + " over their weekday's mean"), "CHOI-WETTE");
        explanation.because("/estimates/dayToDayVariation", Message.of("1 over the root of the shape; gamma is the best family"
                + " for days"), "DAIAD");
        explanation.because("/estimates/dayToDayVariationError", Message.of("from the information that so many days hold on the"
                + " shape"), "CHOI-WETTE");
        explanation.because("/estimates/fit", Message.of("the Anderson-Darling statistic against its points for fitted"
                + " parameters"), "STEPHENS-1986");
        explanation.because("/estimates/changeProbability", Message.of("the largest sum of ranks, p = 2 exp(-6 K² / (n³ + n²));"
                + " days are taken as independent"), "PETTITT-1979");
        explanation.because("/estimates/driftProbability", Message.of("pairs of days that rise less pairs that fall; days are"
                + " taken as independent"), "MANN-KENDALL");
    }

    private static void findings(Explanation explanation) {
        explanation.because("/findings", Message.of("a drift is the median of the slopes of all pairs of days"), "THEIL-SEN");
        explanation.because("/findings", Message.of("a flow that never stops is the least flow of hours from 02:00 to 04:00, over"
                + " at least 7 nights on end"), "CP-NIGHT-FLOW");
        explanation.because("/findings", Message.of("a level before and after is the mean of the days with somebody there on"
                + " either side of the change"), "PETTITT-1979");
    }

    private static void forecast(Explanation explanation, Integer people) {
        if (people != null) {
            explanation.given("/forecast/people");
        }
        explanation.because("/forecast/weeklyUse", people == null
                ? Message.of("the mean of the days with somebody there since the level last changed, times the factor of the"
                        + " weekday: its own and the usual one, the own the more the more such days there are")
                : Message.of("ln m = w ln m(days) + (1 - w) ln m(people), w = 0.377² / (0.377² + v), v the variance of the mean of"
                        + " the days since the level last changed; times the factor of the weekday, its own and the usual one, the"
                        + " own the more the more such days there are"), "DAIAD");
        explanation.because("/forecast/dayToDayVariation", Message.of("ln CV = k ln CV(days) + (1 - k) ln CV(usual),"
                + " k = 0.237² / (0.237² + 2.93 / n) for n days with somebody there"), "DAIAD");
        explanation.because("/forecast/levelSpread", people == null
                ? Message.of("the root of v = 1.27 CV² / n + 0.030 + 0.015 x 60 / (60 + n): how far the mean of n days is from that"
                        + " of the 120 days that follow")
                : Message.of("the root of w v, v = 1.27 CV² / n + 0.030 + 0.015 x 60 / (60 + n): how far the mean of n days is from"
                        + " that of the 120 days that follow, with w the weight of the days beside people"), "DAIAD");
        explanation.because("/forecast/scatterSpread", Message.of("0.237 times the root of 1 less the weight of the scatter of the"
                + " days"), "DAIAD");
        explanation.because("/forecast/dayCorrelation", Message.of("how alike days that follow each other are in measured homes"),
                "DAIAD");
        Message presence = Message.of("how often somebody leaves and returns from one day to the next, held to the share of days"
                + " with somebody there");
        explanation.because("/forecast/occupancy", presence, "ANDERSON-GOODMAN");
        explanation.because("/forecast/useUncertainty", Message.of("the spread of the level, of the days since the level last"
                + " changed"), "DAIAD");
    }

    private static void usual(Explanation explanation, Country country) {
        explanation.because("/usual/perPerson", Message.of("the mean of the days with somebody there over the people"),
                "CHOI-WETTE");
        explanation.because("/usual/usualPerPerson", country == Country.UNITED_STATES
                ? Message.of("what a person uses indoors on a day, by measurement of homes in the United States")
                : Message.of("what a person uses on a day in that country"), country.sourceKey());
        explanation.because("/usual/usualDayToDayVariation", Message.of("the scatter of measured homes of so many people"),
                "DAIAD");
    }
}
