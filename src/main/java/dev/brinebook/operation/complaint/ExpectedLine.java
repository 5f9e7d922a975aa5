// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.complaint;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.complaint.Cause;
import dev.brinebook.complaint.Diagnosis;
import dev.brinebook.complaint.Sign;
import java.math.BigDecimal;

@SchemaDescription("The answer of a test that a cause predicts for this case.")
public record ExpectedLine(
        @Property("Stable code of the cause.") Cause cause,
        @Property("Stable code of the sign.") Sign sign,
        @Basis(formula = "formula.complaint.predicted", source = "CP-SOFTENER-FAULTS")
        @Property(value = "Low end. Of a look, the probability of yes.", example = "0") BigDecimal low,
        @Basis(formula = "formula.complaint.predicted", source = "CP-SOFTENER-FAULTS")
        @Property(value = "High end.", example = "0.1") BigDecimal high,
        @Property(value = "Unit of both.", example = "\"gpm\"") String unit) {

    static ExpectedLine of(Cause cause, Sign sign, SignValues values) {
        Diagnosis.Balance expected = Diagnosis.expected(cause, sign);
        SignValues.Shown low = values.of(sign, expected.low());
        return new ExpectedLine(cause, sign, low.number(), values.of(sign, expected.high()).number(), low.unit());
    }
}
