// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.savings;

import dev.brinebook.guard.Guard;
import dev.brinebook.measurement.Reading;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What was read of a softener over some days.
 *
 * @param days length
 * @param startedBy what started regenerations
 * @param litresPerDay mean water through the softener, by a meter
 * @param regenerations counted
 * @param dose salt of a regeneration, kg
 * @param books salt used by bags and levels, kg
 * @param hardness of the raw water, mg/L as CaCO3
 */
public record SavingsPeriod(int days, StartedBy startedBy, OptionalDouble litresPerDay, OptionalInt regenerations,
        Optional<Reading> dose, Optional<Reading> books, OptionalDouble hardness) {

    public static final int MIN_DAYS = 7;
    public static final int MAX_DAYS = 1096;
    /** Salt of a regeneration where neither count nor dose is known; it only sets how coarse the count is. */
    public static final double ASSUMED_DOSE_KILOGRAMS = 4;
    /** Standard uncertainty of a dose as a share of it where nothing is said of it: the best that three witnesses reach. */
    public static final double ASSUMED_DOSE_UNCERTAINTY = 0.03;
    /** How far the salt in the tank may be misjudged either way: 10 lb. */
    public static final double ASSUMED_LEVEL_PLUS_MINUS_KILOGRAMS = 4.536;

    public SavingsPeriod {
        Guard.within(days, MIN_DAYS, MAX_DAYS, "days");
        litresPerDay.ifPresent(litres -> Guard.positive(litres, "litresPerDay"));
        regenerations.ifPresent(count -> Guard.within(count, 1, Integer.MAX_VALUE, "regenerations"));
        dose.ifPresent(salt -> Guard.positive(salt.value(), "dose"));
        books.ifPresent(salt -> Guard.positive(salt.value(), "books"));
        hardness.ifPresent(mgPerL -> Guard.positive(mgPerL, "hardness"));
        if (books.isEmpty() && (regenerations.isEmpty() || dose.isEmpty())) {
            throw new IllegalArgumentException("salt must be known by count and dose, or by books");
        }
    }

    /** Salt used by bags added and the salt in the tank at both ends, each level read to {@code levelPlusMinus} kg. */
    public static Reading balance(double addedKilograms, double startKilograms, double endKilograms, double levelPlusMinus) {
        return Reading.difference(addedKilograms + startKilograms - endKilograms, levelPlusMinus);
    }

    /** Salt used by the bags bought alone, where so many kilograms are bought at a time and put in when there is room. */
    public static Reading bagsAlone(double addedKilograms, double boughtAtATime) {
        return Reading.difference(addedKilograms, boughtAtATime / 2);
    }

    /** Regenerations, counted or estimated from the salt. */
    double count() {
        return regenerations.isPresent() ? regenerations.getAsInt()
                : Math.max(1, books.orElseThrow().value() / dose.map(Reading::value).orElse(ASSUMED_DOSE_KILOGRAMS));
    }

    /** Whether so few regenerations were counted that no interval holds: a controller that stopped looks like a saving. */
    public boolean hasTooFewRegenerations() {
        return regenerations.isPresent() && regenerations.getAsInt() < WaitingTime.ASSUMED_FEWEST;
    }

    /** Change of the salt a day with the use of a day, both as logarithms; 0 for a clock. */
    public double response(UseScatter scatter) {
        return SaltRate.response(this, scatter);
    }

    /** Salt used, by count and dose, by bags, or by both. */
    public double kilograms() {
        return SaltUsed.of(this).kilograms();
    }
}
