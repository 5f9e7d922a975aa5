// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.guard.Guard;
import java.util.Arrays;
import java.util.Map;

/** Factors on the inputs of a comparison; 1 for every input that is not named. Immutable. */
public final class Factors {

    private static final int INPUTS = Input.values().length;

    /** Holds every factor that a break-even looks at. */
    public static final double MAX = 100;
    /** Nothing differs from the given values. */
    public static final Factors AS_GIVEN = new Factors(Map.of());

    private final double[] byInput = new double[INPUTS];

    /** Factors by input. */
    public Factors(Map<Input, Double> of) {
        Arrays.fill(byInput, 1);
        of.forEach((input, factor) -> byInput[input.ordinal()] = Guard.within(factor, 0, MAX, input.name()));
    }

    /** Factors that lie in the range, in the order of their inputs. */
    Factors(Input[] inputs, double[] factors) {
        Arrays.fill(byInput, 1);
        for (int i = 0; i < inputs.length; i++) {
            byInput[inputs[i].ordinal()] = Guard.within(factors[i], 0, MAX, "factor");
        }
    }

    double on(Input input) {
        return byInput[input.ordinal()];
    }

    /** Hardness and capacity are divisors: a factor of zero is treated as the smallest number above it. */
    AlternativePlan.Circumstances circumstances() {
        return new AlternativePlan.Circumstances(Math.max(Double.MIN_NORMAL, on(Input.HARDNESS)), on(Input.DAILY_USE),
                Math.max(Double.MIN_NORMAL, on(Input.CAPACITY)));
    }

    YearlyCost on(YearlyCost cost) {
        return new YearlyCost(on(Input.SALT_PRICE) * cost.salt(), on(Input.WATER_PRICE) * cost.water(),
                on(Input.SEWER_PRICE) * cost.sewer(), on(Input.SERVICE_PRICE) * cost.service());
    }

    /** The outlay with its purchase changed, up to the highest cost that is allowed. */
    Outlay on(Outlay outlay) {
        double factor = on(Input.FIRST_COST);
        return new Outlay(Math.min(Retrofit.MAX_COST, factor * outlay.firstCost()),
                Math.min(Retrofit.MAX_COST, factor * outlay.rebate()), outlay.lifeYears(), outlay.financedShare(),
                outlay.loanYears(), outlay.loanSharePerYear());
    }

    /** The prices with growth and discount changed, kept in the range that is allowed for them. */
    Prices on(Prices prices) {
        double growth = Math.max(Prices.MIN_GROWTH_SHARE_PER_YEAR, Math.min(Prices.MAX_GROWTH_SHARE_PER_YEAR,
                on(Input.GROWTH) * prices.growthSharePerYear()));
        double discount = Math.min(Prices.MAX_DISCOUNT_SHARE_PER_YEAR, on(Input.DISCOUNT) * prices.discountSharePerYear());
        return growth == prices.growthSharePerYear() && discount == prices.discountSharePerYear() ? prices
                : new Prices(prices.saltPerKilogram(), prices.waterPerCubicMetre(), prices.sewerPerCubicMetre(),
                prices.perServiceVisit(), growth, discount);
    }
}
