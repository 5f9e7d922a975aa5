// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.answer.payback.MeteringWorthAnswer;
import dev.brinebook.answer.verdict.VerdictAnswer;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.Basis;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.payback.Comparison;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("Comparison of options.")
public record AlternativesAnswer(
        @Property(value = "Summary in one sentence, to quote.", example = "\"The metered controller costs least.\"") Message summary,
        @Property("Recommended action for the existing softener, step by step.") VerdictAnswer verdict,
        @Property("Compensated hardness.") HardnessLines hardness,
        @Basis
        @Property("Mean softened use per day.") VolumeQuantity dailyUse,
        @Property(value = "Name of the alternative that the others are compared with.", example = "\"as it is\"")
        String baseline,
        @Property(value = "Name of the alternative with softening that costs least over the horizon.",
                example = "\"metered controller\"")
        String cheapest,
        @Basis
        @Property(value = "Horizon in years.", unit = "years", example = "10") Integer horizonYears,
        @Property(value = "The alternatives, in the order of the request.", maxItems = Comparison.MAX_WAYS)
        List<AlternativeAnswer> alternatives,
        @Basis(formula = "formula.softener.clockMeterSameBed", source = "FELLER")
        @Basis(formula = "formula.softener.evidenceMeteredHomes24", source = "DAIAD")
        @Property("Saving of a meter over a clock with correct settings, on the existing softener, as a range.")
        MeteringWorthAnswer meterOverClockSetRight,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
