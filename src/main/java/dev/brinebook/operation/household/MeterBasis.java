// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.household.ChangePoint;
import dev.brinebook.household.Country;
import dev.brinebook.household.Meter.Kind;
import dev.brinebook.household.Presence;
import dev.brinebook.text.Message;

/** What readings are judged by, and the basis that depends on the kind of reading, the people and the country. */
final class MeterBasis {

    private MeterBasis() {
    }

    static void explain(Explanation explanation, Kind kind, boolean rowsOmitted, Integer people, Country country) {
        assume(explanation);
        explanation.because("/days", kind == Kind.REGISTER ? Message.of("formula.household.differenceTwoReadingsSplit")
                : Message.of("formula.household.volumesIntervalsSplitMidnight"), "CP-METER-READING");
        if (rowsOmitted) {
            explanation.because("/coverage/rowsOmitted", Message.of("formula.household.suchRowsAfterFirst", MeterCoverage.MAX_ROWS),
                    "CP-METER-READING");
        }
        explanation.because("/forecast/weeklyUse", people == null ? Message.of("formula.household.meanDaysSomebodyHome")
                : Message.of("formula.household.mWeekdayFactorLn"), "DAIAD");
        explanation.because("/forecast/levelSpread", people == null ? Message.of("formula.household.vDistanceMeanN")
                : Message.of("formula.household.wVV1"), "DAIAD");
        if (people != null) {
            explanation.because("/usual/usualPerPerson", country == Country.UNITED_STATES
                    ? Message.of("formula.household.indoorUseOnePerson") : Message.of("formula.household.useOnePersonPer"),
                    country.sourceKey());
        }
    }

    private static void assume(Explanation explanation) {
        explanation.assume(Resolved.of("vacantDayBelow", AnswerUnits.of(explanation).volume(Presence.EMPTY_LITRES)).byDefault("DAIAD"));
        explanation.assume(Resolved.of("vacantDayBelowShare", 100 * Presence.EMPTY_SHARE_OF_MEDIAN, "%").byDefault("DAIAD")
                .noting(Message.of("assumed.household.ofMedianDayWithUse")));
        explanation.assume(Resolved.of("idleWeekdayBelowShare", 100 * Presence.ASSUMED_IDLE_SHARE_OF_BUSIEST, "%")
                .byDefault("OWN-ASSUMPTION").noting(Message.of("assumed.household.ofBusiestWeekday")));
        explanation.assume(Resolved.of("changeReportedAboveShare", 100 * ChangePoint.ASSUMED_LEAST_CHANGE_SHARE, "%")
                .byDefault("OWN-ASSUMPTION").noting(Message.of("assumed.household.ofLevelOfUse")));
        explanation.assume(Resolved.of("changeReportedBelowProbability", 100 * ChangePoint.ASSUMED_SIGNIFICANCE, "%")
                .byDefault("OWN-ASSUMPTION").noting(Message.of("assumed.household.byChanceAlone")));
    }
}
