// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.softener;

import dev.brinebook.answer.softener.DoseTradeOff;
import dev.brinebook.answer.verdict.VerdictAnswer;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.Basis;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("The candidates, ranked, and the choice.")
public record SizingAnswer(
        @Property(value = "Summary in one sentence, to quote.", example = "\"Take the 10 x 54 in.\"") Message summary,
        @Property("Whether a softener is needed, and what to do first.") VerdictAnswer verdict,
        @Property("Compensated hardness.") HardnessLines hardness,
        @Basis(formula = "formula.common.indoorUseSoftenedShare", source = "REU-2016")
        @Property("Mean softened use per day.") VolumeQuantity dailyUse,
        @Basis(formula = "formula.common.meanSoftenedUseHardness", source = "WQP-2009")
        @Property("Hardness load on the resin per mean day.") CapacityQuantity dailyLoad,
        @Property(value = "Name of the chosen candidate.", optional = "when none fits", example = "\"10 x 54 in\"")
        String choice,
        @Property(value = "Reason why it is better than the next, or why none fits.", example = "\"It is the smallest that fits.\"")
        Message why,
        @Property(value = "All candidates, best first.", maxItems = SizingRequest.MAX_CANDIDATES) List<SizedSoftener> candidates,
        @Property(value = "Trade-off behind the salt dose of the first candidate.", optional = "when a salt dose is given")
        DoseTradeOff tradeOff,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
