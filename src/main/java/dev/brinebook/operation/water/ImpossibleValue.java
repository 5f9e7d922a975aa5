// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.text.Message;
import dev.brinebook.water.report.Measured;
import dev.brinebook.water.report.Parameter;
import dev.brinebook.water.report.ReportUnit;
import java.math.BigDecimal;

@SchemaDescription("A result that no water has. It is left out of the calculation.")
public record ImpossibleValue(
        @Property("The parameter.") Parameter parameter,
        @Property(value = "The value as it was read.", example = "9000") BigDecimal value,
        @Property("The unit of the value and of the range.") ReportUnit unit,
        @Property(value = "Lower end of the usual range.", example = "0") BigDecimal usualLow,
        @Property(value = "Upper end of the usual range.", example = "300") BigDecimal usualHigh,
        @Property(value = "The value and the usual range, in a sentence.",
                example = "\"Calcium 9,000 mg/L is not possible. Usual are 0 to 300 mg/L. Check the unit and the digits.\"")
        Message message) {

    static ImpossibleValue of(Measured result) {
        Parameter parameter = result.parameter();
        double value = result.limit().orElse(result.estimate().value());
        String unit = parameter.unit().symbol();
        return new ImpossibleValue(parameter, Rounding.answer(value), parameter.unit(), Rounding.answer(parameter.usualLow()),
                Rounding.answer(parameter.usualHigh()), Message.of("readWaterReport.notPossible", Message.of(parameter),
                        Text.measure(Text.digits(value), unit), Text.digits(parameter.usualLow()),
                        Text.measure(Text.digits(parameter.usualHigh()), unit)));
    }
}
