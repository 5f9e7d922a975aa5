// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.complaint;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.complaint.Cause;
import dev.brinebook.complaint.Sign;
import dev.brinebook.complaint.SiteTest;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;

@SchemaDescription("A test on site, and what it is expected to show.")
public record TestLine(
        @Property("Stable code.") SiteTest test,
        @Property(value = "What to do, in a sentence.", example = "\"Next, test the hardness of raw water, outlet and tap.\"")
        Message message,
        @Basis(formula = "formula.field.minutesOfTest", source = "CP-SOFTENER-FAULTS")
        @Property(value = "Minutes on site.", min = 0, unit = "minutes", example = "5") BigDecimal minutes,
        @Basis(formula = "formula.complaint.gain", source = "CP-SOFTENER-FAULTS")
        @Property(value = "Expected information: fall of the entropy of the causes.", min = 0, unit = "bit", example = "0.54")
        BigDecimal gainBits,
        @Basis(formula = "formula.complaint.gainPerMinute", source = "OWN-ASSUMPTION")
        @Property(value = "The same for each minute, with 5 minutes for every further test.", min = 0, unit = "bit/min",
                example = "0.054") BigDecimal gainBitsPerMinute,
        @Property(value = "Signs that it shows.", eachOf = Sign.class) List<Sign> signs,
        @Property(value = "The answer that each of the first three causes predicts for each of these signs.",
                maxItems = TestLine.MOST_EXPECTED)
        List<ExpectedLine> expected) {

    static final int CAUSES = 3;
    static final int MOST_EXPECTED = 18;

    static TestLine of(SiteTest.Advice advice, List<Cause> first, SignValues values) {
        AnswerUnits units = values.units();
        return new TestLine(advice.test(), units.saying(advice.test()), Rounding.answer(advice.minutes()),
                Rounding.toThousandth(advice.gainBits()), Rounding.answer(advice.gainBitsPerMinute()), advice.test().signs(),
                first.stream().limit(CAUSES).flatMap(cause -> advice.test().signs().stream().map(sign -> ExpectedLine.of(cause, sign,
                values))).toList());
    }
}
