// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.Basis;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.household.FixtureSchedule;
import dev.brinebook.request.household.FixtureLine;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;

@SchemaDescription("Peak flow of the same fixtures by every method, why the methods differ, and which to size a softener for.")
public record PeakFlowAnswer(
        @Property(value = "Summary in one sentence or more, to quote.", example = "\"Size the softener for a peak flow of 5.7 gpm "
                + "and a continuous flow of 2 gpm.\"") Message summary,
        @Property("The flows to size a softener for.") PeakForSizing sizing,
        @Property("By every combination of fixtures.") ExactPeak exact,
        @Property("By the normal fit.") FittedPeak fitted,
        @Property("By the plumbing code.") CodePeak code,
        @Property("By the German standard.") DesignPeak design,
        @Basis
        @Property(value = "Percentile of the exact and the fitted flow.", unit = "%", min = 0, example = "99")
        BigDecimal percentile,
        @Property(value = "Reasons why the methods differ, in a sentence or two each.", maxItems = PeakDifferences.MOST)
        List<Message> differences,
        @Property(value = "The fixtures, with the values used for one of each kind.", maxItems = FixtureSchedule.MAX_KINDS)
        List<FixtureLine> fixtures,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
