// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Discriminator;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.payback.Factors;
import dev.brinebook.payback.Input;
import dev.brinebook.randomness.Uncertain;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("Uncertainty of an input, as a factor on its given value (1 = unchanged).")
public record UncertainInputRequest(
        @Property(value = "The input.", required = true, example = "\"saltPrice\"") Input input,
        @Property(value = "Distribution of the factor.", required = true, example = "\"triangular\"") @Discriminator
        Shape shape,
        @Property(value = "Minimum of the factor.", kinds = {"range", "triangular"}, required = true, min = 0, max = Factors.MAX,
                example = "0.8") BigDecimal least,
        @Property(value = "Most likely value of the factor.", kinds = "triangular", min = 0, max = Factors.MAX, example = "1",
                byDefault = DEFAULT_LIKELIEST) BigDecimal likeliest,
        @Property(value = "Maximum of the factor.", kinds = {"range", "triangular"}, required = true, min = 0, max = Factors.MAX,
                example = "1.5") BigDecimal most,
        @Property(value = "Standard deviation divided by the mean. The median is 1.", kinds = {"normal", "lognormal"},
                required = true, min = 0, max = 2, example = "0.2") BigDecimal variation) implements Checked {

    /** The value as given. */
    private static final int DEFAULT_LIKELIEST = 1;

    /** The shapes. */
    public enum Shape {
        RANGE, TRIANGULAR, NORMAL, LOGNORMAL
    }

    @Override
    public void check(Violations at) {
        if (least != null && most != null && !at.here()) {
            BigDecimal middle = likeliest == null ? BigDecimal.valueOf(DEFAULT_LIKELIEST) : likeliest;
            if (least.compareTo(most) > 0) {
                at.add("most", Code.INCONSISTENT, Message.of("problem.payback.mustLeastLeast"));
            } else if (shape == Shape.TRIANGULAR && (middle.compareTo(least) < 0 || middle.compareTo(most) > 0)) {
                at.add("likeliest", Code.INCONSISTENT, Message.of("problem.payback.mustLeastMost1"));
            }
        }
    }

    Uncertain factor() {
        return switch (shape) {
            case RANGE -> new Uncertain.Range(least.doubleValue(), most.doubleValue());
            case TRIANGULAR -> new Uncertain.Triangular(least.doubleValue(),
                    likeliest == null ? DEFAULT_LIKELIEST : likeliest.doubleValue(), most.doubleValue());
            case NORMAL -> new Uncertain.Normal(1, variation.doubleValue());
            case LOGNORMAL -> new Uncertain.Lognormal(1, variation.doubleValue());
        };
    }
}
