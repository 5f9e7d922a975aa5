// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.Input;
import dev.brinebook.payback.Retrofit;
import dev.brinebook.randomness.Sample;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

@SchemaDescription("Uncertain inputs, and the number of cases to simulate.")
public record UncertaintyRequest(
        @Property(value = "The inputs.", maxItems = 10, fallback = "salt, water and sewer prices normal by "
                + PRICE_PERCENT + " %, hardness and daily use by " + USE_PERCENT + " %, first cost triangular from " + LEAST_COST + " to "
                + MOST_COST) List<UncertainInputRequest> inputs,
        @Property(value = "Maximum number of simulated cases.",
                min = FEWEST_DRAWS, max = Sample.MAX_DRAWS, byDefault = DEFAULT_DRAWS, example = "2000")
        Integer draws,
        @Property(value = "Standard error of the mean net present value at which the simulation stops.",
                min = 0, max = Retrofit.MAX_COST, fallback = "none: all cases are simulated") Money enoughStandardError,
        @Property(value = "Years within which it should pay back.", min = 0, max = 40, unit = "years", byDefault = ASSUMED_PAYBACK_YEARS,
                example = "3") BigDecimal paybackYears) implements Checked {

    static final int FEWEST_DRAWS = 1_000;
    static final int DEFAULT_DRAWS = FEWEST_DRAWS;
    static final double ASSUMED_PAYBACK_YEARS = 5;

    private static final int PRICE_PERCENT = 15;
    private static final int USE_PERCENT = 10;
    private static final String LEAST_COST = "0.9";
    private static final String MOST_COST = "1.25";

    /** Uncertain inputs of an ordinary case, without a source. */
    static final List<UncertainInputRequest> ASSUMED = List.of(normal(Input.SALT_PRICE, PRICE_PERCENT),
            normal(Input.WATER_PRICE, PRICE_PERCENT), normal(Input.SEWER_PRICE, PRICE_PERCENT), normal(Input.HARDNESS, USE_PERCENT),
            normal(Input.DAILY_USE, USE_PERCENT), new UncertainInputRequest(Input.FIRST_COST,
                    UncertainInputRequest.Shape.TRIANGULAR, new BigDecimal(LEAST_COST), null, new BigDecimal(MOST_COST), null));

    /** Their factors. */
    static final Message ASSUMED_IN_WORDS = Message.of("assumed.payback.pricesNormalHardness", PRICE_PERCENT, USE_PERCENT,
            new BigDecimal(LEAST_COST), new BigDecimal(MOST_COST));

    @Override
    public void check(Violations at) {
        Set<Input> before = EnumSet.noneOf(Input.class);
        for (int i = 0; inputs != null && i < inputs.size(); i++) {
            UncertainInputRequest one = inputs.get(i);
            if (one != null && one.input() != null && !before.add(one.input())) {
                at.at("inputs").at(i).add("input", Code.INCONSISTENT, Message.of("problem.payback.mustNamedTwice"));
            }
        }
    }

    private static UncertainInputRequest normal(Input input, int percent) {
        return new UncertainInputRequest(input, UncertainInputRequest.Shape.NORMAL, null, null, null,
                BigDecimal.valueOf(percent, 2));
    }
}
