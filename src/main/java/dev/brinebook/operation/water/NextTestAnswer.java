// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.text.Message;
import dev.brinebook.water.report.NextTest;
import dev.brinebook.water.report.Parameter;
import java.math.BigDecimal;

@SchemaDescription("A test to order, how to sample for it, and how likely its result changes the advice.")
public record NextTestAnswer(
        @Property("What to test.") Parameter parameter,
        @Property(value = "Probability that its result changes the advice.", min = 0, max = 100, unit = "%", example = "62.5")
        BigDecimal changesPercent,
        @Property(value = "Whether it was tested already, and a better test is meant.", example = "false") Boolean tested,
        @Property(value = "Whether it answers a reason that was given and was not made yet. Such tests come first.", example = "false")
        Boolean asked,
        @Property(value = "Class of its cost: 1 for a kit or a meter, 2 for a laboratory, 3 for trace metals.", min = 1, max = 3,
                example = "1") Integer costClass,
        @Property("What the sample is taken in.") NextTest.Bottle bottle,
        @Property(value = "Within how many hours it must be tested.", min = 0, unit = "hours", example = "48") BigDecimal hours,
        @Property(value = "How to sample, in a sentence.", example = "\"Test at the tap, at once.\"") Message sampling) {

    static NextTestAnswer of(NextTest test) {
        return new NextTestAnswer(test.parameter(), Rounding.answer(100 * test.changesShare()), test.tested(), test.asked(),
                test.order().costClass(),
                test.order().bottle(), Rounding.answer(test.order().hours()), Message.of(test.order().bottle()));
    }
}
