// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.water.report.CombinedHardness;
import java.math.BigDecimal;

@SchemaDescription("All tests of hardness joined to one.")
public record CombinedHardnessAnswer(
        @Property("The hardness.") HardnessQuantity hardness,
        @Property("Its expanded uncertainty (k = 2).") HardnessQuantity uncertainty,
        @Property("Lower end of its interval.") HardnessQuantity low,
        @Property("Upper end of its interval.") HardnessQuantity high,
        @Property(value = "Number of independent tests: drop tests of one bottle are one, a sum of calcium and magnesium is one.", min = 1,
                example = "2") Integer tests,
        @Property(value = "How much the tests scatter, against how much they should.", min = 0, example = "1.288")
        BigDecimal scatterRatio,
        @Property(value = "Whether the tests contradict each other. Then repeat one of them.", example = "false") Boolean conflict) {

    static CombinedHardnessAnswer of(CombinedHardness combined, AnswerUnits units) {
        double value = combined.estimate().value();
        double expanded = combined.expandedUncertaintyMgPerL();
        return new CombinedHardnessAnswer(units.hardness(value), units.hardness(expanded), units.hardness(Math.max(0, value - expanded)),
                units.hardness(value + expanded), combined.tests().size(), Rounding.answer(combined.mean().ratio()),
                combined.isConflict());
    }
}
