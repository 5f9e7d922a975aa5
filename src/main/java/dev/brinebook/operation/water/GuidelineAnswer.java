// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.source.Sources;
import dev.brinebook.text.Message;
import dev.brinebook.water.report.Guideline;
import dev.brinebook.water.report.Parameter;
import dev.brinebook.water.report.ReportUnit;
import java.math.BigDecimal;
import java.util.OptionalDouble;

@SchemaDescription("A value of a public authority beside the result.")
public record GuidelineAnswer(
        @Property("The parameter.") Parameter parameter,
        @Property("The authority.") Guideline.Authority authority,
        @Property("What the value protects. With health the health authority decides.") Guideline.Kind kind,
        @Property(value = "The least.", optional = "when there is none", example = "6.5") BigDecimal low,
        @Property(value = "The most.", optional = "when there is none", example = "0.3") BigDecimal high,
        @Property(value = "The result.", example = "0.5") BigDecimal value,
        @Property("The unit of all three.") ReportUnit unit,
        @Property(value = "Whether the result keeps to it.", example = "false") Boolean holds,
        @Property(value = "The source.", example = "\"40 CFR 143.3 (2023)\"") Message source) {

    static GuidelineAnswer of(Guideline guideline, double value) {
        return new GuidelineAnswer(guideline.parameter(), guideline.authority(), guideline.kind(), rounded(guideline.low()),
                rounded(guideline.high()), Rounding.answer(value), guideline.parameter().unit(), guideline.holds(value),
                Sources.get(guideline.sourceKey()).inWords());
    }

    private static BigDecimal rounded(OptionalDouble limit) {
        return limit.isPresent() ? Rounding.answer(limit.getAsDouble()) : null;
    }
}
