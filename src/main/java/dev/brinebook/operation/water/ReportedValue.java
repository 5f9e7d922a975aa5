// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.water.report.Measured;
import dev.brinebook.water.report.Parameter;
import dev.brinebook.water.report.PrintedResult.Tap;
import dev.brinebook.water.report.ReportForm;
import dev.brinebook.water.report.ReportUnit;
import java.math.BigDecimal;
import java.time.LocalDate;

@SchemaDescription("A result of the report, in the unit and form that is calculated with.")
public record ReportedValue(
        @Property("The parameter. Solids of a pocket meter are a conductivity.") Parameter parameter,
        @Property("Where the sample was taken.") Tap tap,
        @Property(value = "Date of the sample.", optional = "when it is not known", example = "\"2026-03-01\"") LocalDate sampledOn,
        @Property(value = "The value, 0 where nothing was found.", example = "2.2") BigDecimal value,
        @Property("The unit of the value.") ReportUnit unit,
        @Property(value = "Expanded uncertainty (k = 2), in the same unit.", min = 0, example = "0.2") BigDecimal uncertainty,
        @Property(value = "The detection limit, or the end of a scale.", optional = "for a plain value", example = "0.05") BigDecimal limit,
        @Property("The form that the printed value was read in.") ReportForm form,
        @Property(value = "Whether the report does not name the form and more than one is usual in print. Then ask the laboratory.",
                example = "true") Boolean formAssumed) {

    static ReportedValue of(Measured result) {
        return new ReportedValue(result.parameter(), result.printed().sampling().tap(),
                result.printed().sampling().origin().date().orElse(null), Rounding.answer(result.estimate().value()),
                result.parameter().unit(), Rounding.answer(2 * result.estimate().standardUncertainty()),
                result.limit().isPresent() ? Rounding.answer(result.limit().getAsDouble()) : null, result.form().form(),
                result.isFormAssumed());
    }
}
