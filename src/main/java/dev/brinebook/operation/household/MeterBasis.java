// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.household.Country;
import dev.brinebook.household.Meter.Kind;
import dev.brinebook.text.Message;

/** Why the numbers that readings are made into are what they are. */
final class MeterBasis {

    private MeterBasis() {
    }

    static void explain(Explanation explanation, Kind kind, Integer people, Country country) {
        explanation.assume("estimates.emptyDays", Message.of("assumed.household.dayBelow10L"),
                Origin.DEFAULT);
        explanation.assume("findings.change", Message.of("assumed.household.reportedIfMoreThan"), Origin.DEFAULT);
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
                ? Message.of("formula.household.differenceTwoReadingsSplit")
                : Message.of("formula.household.volumesIntervalsSplitMidnight"), "CP-METER-READING");
        explanation.because("/days/firstDate", Message.of("formula.household.daysMidnightMidnightLocal"), "IANA-TZ");
    }

    private static void coverage(Explanation explanation) {
        Message rows = Message.of("meter.numberRowsKindWhere");
        explanation.because("/coverage/readings", Message.of("formula.household.numberRowsReceived"), "REQUEST");
        explanation.because("/coverage/rowsSkipped", rows, "CP-METER-READING");
        explanation.because("/coverage/rowsRepaired", rows, "CP-METER-READING");
        explanation.because("/coverage/rowsUseLost", rows, "CP-METER-READING");
        explanation.because("/coverage/rowsOmitted", Message.of("formula.household.suchRowsAfterFirst", MeterCoverage.MAX_ROWS),
                "CP-METER-READING");
        explanation.because("/coverage/rows/*/row", Message.of("formula.household.positionRowInput"), "REQUEST");
        explanation.because("/coverage/days", Message.of("formula.household.datesFirstWholeDay"),
                "CP-METER-READING");
        Message missing = Message.of("meter.datesBetweenFirstLast");
        explanation.because("/coverage/missingDays", missing, "CP-METER-READING");
        explanation.because("/coverage/gaps/*/days", missing, "CP-METER-READING");
        explanation.because("/coverage/gaps/*/volume", Message.of("formula.household.volumeBetweenReadingsToo"), "CP-METER-READING");
    }

    private static void level(Explanation explanation) {
        explanation.because("/estimates/mean", Message.of("formula.household.sumKnownDaysTheir"), "CP-METER-READING");
        explanation.because("/estimates/occupiedMean", Message.of("formula.household.meanEachWeekdayMost"),
                "CHOI-WETTE");
        explanation.because("/estimates/weekdayFactors", Message.of("formula.household.meanEachWeekdayMean"),
                "CHOI-WETTE");
        explanation.because("/estimates/weekendRatio", Message.of("formula.household.meanFactorsSaturdaySunday"), "CHOI-WETTE");
        Message empty = Message.of("meter.daysLessThan10");
        explanation.because("/estimates/emptyDays", empty, "DAIAD");
        explanation.because("/estimates/emptyShare", empty, "DAIAD");
        Message followed = Message.of("meter.numberTimesDayOne");
        explanation.because("/estimates/leaveProbability", followed, "ANDERSON-GOODMAN");
        explanation.because("/estimates/returnProbability", followed, "ANDERSON-GOODMAN");
    }

    private static void scatter(Explanation explanation) {
        explanation.because("/highDays/*/use", Message.of("formula.household.daysAboveFourTimes"), "DAIAD");
        explanation.because("/highDays/*/above", Message.of("formula.household.use4Median"), "DAIAD");
        explanation.because("/estimates/gammaShape", Message.of("formula.household.lnPsiLnMean"), "CHOI-WETTE");
        explanation.because("/estimates/dayToDayVariation", Message.of("formula.household.of1ShapeGammaBest"), "DAIAD");
        explanation.because("/estimates/dayToDayVariationError", Message.of("formula.household.informationShapeNumberDays"), "CHOI-WETTE");
        explanation.because("/estimates/fit", Message.of("formula.household.andersonDarlingStatisticCompared"), "STEPHENS-1986");
        explanation.because("/estimates/changeProbability", Message.of("formula.household.largestRankSumP"), "PETTITT-1979");
        explanation.because("/estimates/driftProbability", Message.of("formula.household.pairsDaysRisePairs"), "MANN-KENDALL");
    }

    private static void findings(Explanation explanation) {
        explanation.because("/findings", Message.of("formula.household.driftMedianSlopesAll"), "THEIL-SEN");
        explanation.because("/findings", Message.of("formula.household.flowNeverStopsSmallest"), "CP-NIGHT-FLOW");
        explanation.because("/findings", Message.of("formula.household.levelsBeforeAfterMean"), "PETTITT-1979");
    }

    private static void forecast(Explanation explanation, Integer people) {
        if (people != null) {
            explanation.given("/forecast/people");
        }
        explanation.because("/forecast/weeklyUse", people == null
                ? Message.of("formula.household.meanDaysSomebodyHome")
                : Message.of("formula.household.mWeekdayFactorLn"), "DAIAD");
        explanation.because("/forecast/dayToDayVariation", Message.of("formula.household.lnCvKLn"), "DAIAD");
        explanation.because("/forecast/levelSpread", people == null
                ? Message.of("formula.household.vDistanceMeanN")
                : Message.of("formula.household.wVV1"), "DAIAD");
        explanation.because("/forecast/scatterSpread", Message.of("formula.household.of02371Weight"), "DAIAD");
        explanation.because("/forecast/dayCorrelation", Message.of("formula.household.similarityConsecutiveDaysMeasured"),
                "DAIAD");
        Message presence = Message.of("meter.howOftenSomeoneLeaves");
        explanation.because("/forecast/occupancy", presence, "ANDERSON-GOODMAN");
        explanation.because("/forecast/useUncertainty", Message.of("formula.household.spreadLevelDaysSince"), "DAIAD");
    }

    private static void usual(Explanation explanation, Country country) {
        explanation.because("/usual/perPerson", Message.of("formula.household.meanDaysSomebodyHomeNumber"),
                "CHOI-WETTE");
        explanation.because("/usual/usualPerPerson", country == Country.UNITED_STATES
                ? Message.of("formula.household.indoorUseOnePerson")
                : Message.of("formula.household.useOnePersonPer"), country.sourceKey());
        explanation.because("/usual/usualDayToDayVariation", Message.of("formula.household.scatterMeasuredHomesSame"),
                "DAIAD");
    }
}
