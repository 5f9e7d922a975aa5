// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.source.Sources;
import dev.brinebook.text.Message;
import dev.brinebook.water.report.Parameter;
import dev.brinebook.water.report.ReportUnit;
import dev.brinebook.water.report.ResinLimit;
import java.math.BigDecimal;

@SchemaDescription("What a softening resin tolerates beside the result. Sources differ: care begins at the lowest.")
public record ResinLimitAnswer(
        @Property("The parameter.") Parameter parameter,
        @Property(value = "The most.", example = "5") BigDecimal high,
        @Property(value = "The result.", example = "0.5") BigDecimal value,
        @Property("The unit of both.") ReportUnit unit,
        @Property(value = "Whether the result keeps to it.", example = "true") Boolean holds,
        @Property(value = "The source.", example = "\"North Dakota State University Extension, WQ1031 (2017)\"") Message source) {

    static ResinLimitAnswer of(ResinLimit limit, double value) {
        return new ResinLimitAnswer(limit.parameter(), Rounding.answer(limit.high()), Rounding.answer(value), limit.parameter().unit(),
                value <= limit.high(), Sources.get(limit.sourceKey()).inWords());
    }
}
