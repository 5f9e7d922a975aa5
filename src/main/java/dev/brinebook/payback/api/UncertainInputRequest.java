package dev.brinebook.payback.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
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
        @Property(value = "How the factor is distributed.", required = true, example = "\"triangular\"") Shape shape,
        @Property(value = "Range and triangular: the least.", min = 0, max = Factors.MAX, example = "0.8") BigDecimal least,
        @Property(value = "Triangular: the likeliest.", min = 0, max = Factors.MAX, example = "1", fallback = "1")
        BigDecimal likeliest,
        @Property(value = "Range and triangular: the most.", min = 0, max = Factors.MAX, example = "1.5") BigDecimal most,
        @Property(value = "Normal and lognormal: the standard deviation over the mean; the middle is 1.", min = 0, max = 2,
                example = "0.2") BigDecimal variation) implements Checked {

    /** The shapes. */
    public enum Shape {
        RANGE, TRIANGULAR, NORMAL, LOGNORMAL
    }

    @Override
    public void check(Violations at) {
        boolean bounded = shape == Shape.RANGE || shape == Shape.TRIANGULAR;
        boolean scattered = shape == Shape.NORMAL || shape == Shape.LOGNORMAL;
        needs(bounded, least, "least", at);
        needs(bounded, most, "most", at);
        needs(scattered, variation, "variation", at);
        if (shape != null && shape != Shape.TRIANGULAR && likeliest != null) {
            at.add("likeliest", Code.INCONSISTENT, Message.of("must be left out unless the shape is triangular"));
        }
        if (bounded && least != null && most != null && !at.here()) {
            BigDecimal middle = likeliest == null ? BigDecimal.ONE : likeliest;
            if (least.compareTo(most) > 0) {
                at.add("most", Code.INCONSISTENT, Message.of("must not be less than least"));
            } else if (shape == Shape.TRIANGULAR && (middle.compareTo(least) < 0 || middle.compareTo(most) > 0)) {
                at.add("likeliest", Code.INCONSISTENT, Message.of("must lie from least to most; it is 1 where it is left out"));
            }
        }
    }

    private void needs(boolean wanted, Object value, String name, Violations at) {
        if (wanted && value == null && !at.at(name).here()) {
            at.add(name, Code.MISSING, Message.of("{0} is missing: the shape needs it", name));
        } else if (shape != null && !wanted && value != null) {
            at.add(name, Code.INCONSISTENT, Message.of("must be left out with this shape"));
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
