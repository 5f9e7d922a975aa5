package dev.brinebook.operation.payback;

import dev.brinebook.api.About;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.TellsKind;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.payback.Factors;
import dev.brinebook.payback.Input;
import dev.brinebook.randomness.Uncertain;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("An input that is not known exactly, as a factor on the value that was told: 1 is that value.")
public record UncertainInputRequest(
        @Property(value = "The input.", required = true, example = "\"saltPrice\"") Input input,
        @Property(value = "How the factor is distributed.", required = true, example = "\"triangular\"") @TellsKind
        Shape shape,
        @Property(value = "The least.", kinds = {"range", "triangular"}, required = true, min = 0, max = Factors.MAX,
                example = "0.8") BigDecimal least,
        @Property(value = "The likeliest.", kinds = "triangular", min = 0, max = Factors.MAX, example = "1",
                fallback = "1") BigDecimal likeliest,
        @Property(value = "The most.", kinds = {"range", "triangular"}, required = true, min = 0, max = Factors.MAX,
                example = "1.5") BigDecimal most,
        @Property(value = "The standard deviation over the mean; the middle is 1.", kinds = {"normal", "lognormal"},
                required = true, min = 0, max = 2, example = "0.2") BigDecimal variation) implements Checked {

    /** The shapes. */
    public enum Shape {
        RANGE, TRIANGULAR, NORMAL, LOGNORMAL
    }

    @Override
    public void check(Violations at) {
        if (least != null && most != null && !at.here()) {
            BigDecimal middle = likeliest == null ? BigDecimal.ONE : likeliest;
            if (least.compareTo(most) > 0) {
                at.add("most", Code.INCONSISTENT, Message.of("must not be less than least"));
            } else if (shape == Shape.TRIANGULAR && (middle.compareTo(least) < 0 || middle.compareTo(most) > 0)) {
                at.add("likeliest", Code.INCONSISTENT, Message.of("must lie from least to most; it is 1 where it is left out"));
            }
        }
    }

    Uncertain factor() {
        return switch (shape) {
            case RANGE -> new Uncertain.Range(least.doubleValue(), most.doubleValue());
            case TRIANGULAR -> new Uncertain.Triangular(least.doubleValue(),
                    likeliest == null ? 1 : likeliest.doubleValue(), most.doubleValue());
            case NORMAL -> new Uncertain.Normal(1, variation.doubleValue());
            case LOGNORMAL -> new Uncertain.Lognormal(1, variation.doubleValue());
        };
    }
}
