// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.answer.household.HighDayAnswer;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.Basis;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.household.Days;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.household.SeriesRequest;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("Daily use from a meter, and the estimates for the household.")
public record MeterReadingsAnswer(
        @Property(value = "Summary in one sentence, to quote.", example = "\"360 of 365 days are known. The mean use is 410 L a day.\"")
        Message summary,
        @Property("Use of each day, in the form of household.dailySeries.") SeriesRequest days,
        @Property("Period covered by the readings, and the repairs made to them.") MeterCoverage coverage,
        @Property("Mean, scatter, weekdays and absence.") UseEstimates estimates,
        @Property(value = "Days whose use indicates a leak or a filling, in order.", maxItems = Days.MAX_DAYS) List<HighDayAnswer> highDays,
        @Property(value = "The household compared with usual values.", optional = "when people is") UsualUse usual,
        @Property(value = "Forecast: the household to send to other operations, for a typical year like these days, or like "
                + "the days since the last change of level.",
                optional = "when the mean of a weekday is above 15,000 L or a day above 45,000 L")
        HouseholdRequest forecast,
        @Basis(formula = "formula.household.driftMedianSlopesAll", source = "THEIL-SEN")
        @Basis(formula = "formula.household.flowNeverStopsSmallest", source = "CP-NIGHT-FLOW")
        @Basis(formula = "formula.household.levelsBeforeAfterMean", source = "PETTITT-1979")
        @Property(value = "Findings to check.", eachOf = MeterFinding.Code.class) List<MeterFinding> findings,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
