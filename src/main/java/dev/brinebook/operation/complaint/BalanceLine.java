// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.complaint;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.complaint.Diagnosis;
import dev.brinebook.complaint.Observation;
import dev.brinebook.complaint.Sign;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("What a cause predicts of a sign for this case, against what was seen or measured.")
public record BalanceLine(
        @Property("Stable code of the sign.") Sign sign,
        @Property(value = "The sign in words.", example = "\"Raw water at the tap\"") Message message,
        @Basis(formula = "formula.complaint.predicted", source = "CP-SOFTENER-FAULTS")
        @Property(value = "Low end of what the cause predicts. Of a look, the probability of yes.", example = "4") BigDecimal predictedLow,
        @Basis(formula = "formula.complaint.predicted", source = "CP-SOFTENER-FAULTS")
        @Property(value = "High end of it.", example = "100") BigDecimal predictedHigh,
        @Property(value = "Unit of the prediction and of what was measured.", example = "\"%\"") String unit,
        @Basis(formula = "formula.complaint.measured", source = "GUM")
        @Property(value = "What was measured.", optional = BalanceLine.NOT_MEASURED, example = "23.1") BigDecimal measured,
        @Basis
        @Property(value = "What was seen.", optional = "unless it was looked at", example = "true") Boolean seen,
        @Basis(formula = "formula.complaint.deviation", source = "GUM")
        @Property(value = "How far the number lies outside of the prediction.", min = 0, unit = "standard uncertainties",
                optional = BalanceLine.NOT_MEASURED, example = "0") BigDecimal deviation,
        @Property(value = "Whether it agrees. Absent for the proof of the cause that nobody has looked at or measured.",
                optional = "if it is not known yet", example = "true") Boolean met) {

    static final String NOT_MEASURED = "unless it was measured";

    static BalanceLine of(Diagnosis.Balance balance, SignValues values) {
        SignValues.Shown low = values.of(balance.sign(), balance.low());
        boolean look = balance.sign().isLook();
        Observation found = balance.observed().orElse(null);
        boolean number = found != null && !look;
        return new BalanceLine(balance.sign(), Message.of(balance.sign()), low.number(), values.of(balance.sign(), balance.high()).number(),
                low.unit(), number ? values.of(balance.sign(), found.value()).number() : null, found != null && look ? found.yes() : null,
                number ? Rounding.answer(balance.deviation()) : null, found == null ? null : balance.met());
    }
}
