// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.complaint;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.complaint.SymptomTable.Weights;
import java.math.BigDecimal;

@SchemaDescription("Weights of the classes in which causes show symptoms. No frequencies of faults are published, so these are yours to "
        + "change.")
public record SymptomWeightsRequest(
        @Property(value = "Of a symptom that the cause often shows, out of 10.", min = Weights.ASSUMED_NOT, max = Weights.MAX,
                byDefault = Weights.ASSUMED_OFTEN, example = "6") BigDecimal often,
        @Property(value = "Of one that it sometimes shows.", min = Weights.ASSUMED_NOT, max = Weights.MAX,
                byDefault = Weights.ASSUMED_SOMETIMES, example = "2") BigDecimal sometimes,
        @Property(value = "Of one that it rarely shows.", min = Weights.ASSUMED_NOT, max = Weights.MAX,
                byDefault = Weights.ASSUMED_RARELY, example = "0.5") BigDecimal rarely) {

    /** The weights, with defaults recorded. */
    static Weights resolved(SymptomWeightsRequest given, Explanation explanation) {
        SymptomWeightsRequest weights = given == null ? new SymptomWeightsRequest(null, null, null) : given;
        return new Weights(of("often", weights.often, Weights.ASSUMED_OFTEN, explanation),
                of("sometimes", weights.sometimes, Weights.ASSUMED_SOMETIMES, explanation),
                of("rarely", weights.rarely, Weights.ASSUMED_RARELY, explanation));
    }

    private static double of(String name, BigDecimal given, double usual, Explanation explanation) {
        return explanation.resolve(given, Resolved.of("/weights/" + name, usual, null).byDefault("CP-SOFTENER-FAULTS"));
    }
}
