// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.field;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.field.FieldQuestion;
import dev.brinebook.field.NextMeasurement;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("A further measurement, and how much more certain it makes the result.")
public record NextMeasurementLine(
        @Property(value = "Stable code.", example = "\"hardnessTests\"") NextMeasurement code,
        @Property(value = "What to measure, in a sentence.", example = "\"Test the hardness of raw water, outlet and tap.\"")
        Message message,
        @Property(value = "The question that it answers.", example = "\"rawWater\"") FieldQuestion settles,
        @Basis(formula = "formula.field.minutesOfTest", source = "CP-FIELD-TESTS")
        @Property(value = "Minutes that it takes on site.", min = 0, unit = "minutes", example = "5") BigDecimal minutes,
        @Basis(formula = "formula.field.spread", source = "OWN-ASSUMPTION")
        @Property(value = "Standard uncertainty of the answer now, in percent.", min = 0, unit = "%", example = "50")
        BigDecimal uncertaintyNowPercent,
        @Basis(formula = "formula.field.spread", source = "OWN-ASSUMPTION")
        @Property(value = "The same afterwards, to expect.", min = 0, unit = "%", example = "2") BigDecimal uncertaintyAfterPercent) {

    static NextMeasurementLine of(NextMeasurement.Advice advice, AnswerUnits units) {
        return new NextMeasurementLine(advice.measurement(), units.saying(advice.measurement()), advice.settles(),
                Rounding.answer(advice.minutes()), Rounding.answer(100 * advice.spreadNow()), Rounding.answer(100 * advice.spreadAfter()));
    }
}
