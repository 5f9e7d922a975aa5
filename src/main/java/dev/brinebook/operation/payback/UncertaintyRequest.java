// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.Input;
import dev.brinebook.randomness.Sample;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

@SchemaDescription("Uncertain inputs, and the number of cases to simulate.")
public record UncertaintyRequest(
        @Property(value = "The inputs.", maxItems = 10, fallback = "salt, water and sewer prices normal by 15 %, hardness and"
                + " daily use by 10 %, first cost triangular from 0.9 to 1.25") List<UncertainInputRequest> inputs,
        @Property(value = "Maximum number of simulated cases.",
                min = FEWEST_DRAWS, max = Sample.MAX_DRAWS, fallback = "1000", example = "2000")
        Integer draws,
        @Property(value = "Standard error of the mean net present value at which the simulation stops.",
                fallback = "none: all cases are simulated") Money enoughStandardError,
        @Property(value = "Years within which it should pay back.", min = 0, max = 40, unit = "years", fallback = "5",
                example = "3") BigDecimal paybackYears) implements Checked {

    static final int FEWEST_DRAWS = 1_000;
    static final int DEFAULT_DRAWS = FEWEST_DRAWS;
    static final double ASSUMED_PAYBACK_YEARS = 5;

    /** Uncertain inputs of an ordinary case, without a source. */
    static final List<UncertainInputRequest> ASSUMED = List.of(normal(Input.SALT_PRICE, "0.15"),
            normal(Input.WATER_PRICE, "0.15"), normal(Input.SEWER_PRICE, "0.15"), normal(Input.HARDNESS, "0.10"),
            normal(Input.DAILY_USE, "0.10"), new UncertainInputRequest(Input.FIRST_COST,
                    UncertainInputRequest.Shape.TRIANGULAR, new BigDecimal("0.9"), null, new BigDecimal("1.25"), null));

    @Override
    public void check(Violations at) {
        Set<Input> before = EnumSet.noneOf(Input.class);
        for (int i = 0; inputs != null && i < inputs.size(); i++) {
            UncertainInputRequest one = inputs.get(i);
            if (one != null && one.input() != null && !before.add(one.input())) {
                at.at("inputs").at(i).add("input", Code.INCONSISTENT, Message.of("problem.payback.mustNamedTwice"));
            }
        }
        if (enoughStandardError != null && enoughStandardError.value() != null && enoughStandardError.value().signum() < 0) {
            at.add("enoughStandardError", Code.OUT_OF_RANGE, Message.of("problem.common.mustLeast0"));
        }
    }

    private static UncertainInputRequest normal(Input input, String variation) {
        return new UncertainInputRequest(input, UncertainInputRequest.Shape.NORMAL, null, null, null,
                new BigDecimal(variation));
    }
}
