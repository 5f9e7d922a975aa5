// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.water.report.Estimate;
import dev.brinebook.water.report.SoftenedSample;

@SchemaDescription("Whether the sample looks as if it was taken behind a softener.")
public record SoftenedSampleAnswer(
        @Property("What the signs say. They never make it certain: ask for the tap before the softener.") SoftenedSample.Verdict verdict,
        @Property(value = "Hardness of the raw water, from the salt that softening left.", optional = "unless the sample looks softened")
        HardnessQuantity rawHardness,
        @Property(value = "Expanded uncertainty (k = 2) of it.", optional = "unless the sample looks softened")
        HardnessQuantity rawUncertainty) {

    static SoftenedSampleAnswer of(SoftenedSample sample, AnswerUnits units) {
        Estimate raw = sample.raw().orElse(null);
        return new SoftenedSampleAnswer(sample.verdict(), raw == null ? null : units.hardness(raw.value()),
                raw == null ? null : units.hardness(2 * raw.standardUncertainty()));
    }
}
