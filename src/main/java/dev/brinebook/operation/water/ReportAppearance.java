// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.water.report.MetalForm;
import dev.brinebook.water.report.MetalForm.AfterStanding;
import dev.brinebook.water.report.MetalForm.AtTap;

@SchemaDescription("What the water looks like, which tells the form of iron and manganese.")
public record ReportAppearance(
        @Property(value = "At the tap.", defaultCode = "unknown", example = "\"clear\"") AtTap atTap,
        @Property(value = "After standing in a glass for a day.", defaultCode = "unknown", example = "\"redGrains\"")
        AfterStanding afterStanding,
        @Property(value = "Whether there is slime in the toilet tank.", defaultCode = "false", example = "false") Boolean slime) {

    static final ReportAppearance NONE = new ReportAppearance(null, null, null);

    MetalForm toDomain() {
        return MetalForm.seen(atTap == null ? AtTap.UNKNOWN : atTap, afterStanding == null ? AfterStanding.UNKNOWN : afterStanding,
                Boolean.TRUE.equals(slime));
    }
}
