// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.savings;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Salt a day in a period, at a use and hardness to compare at, and how far it may lie from the long run.
 *
 * @param kilogramsPerDay salt a day
 * @param regenerationsPerDay likewise
 * @param variances of the logarithm of the salt a day, by what causes them; one at least is above 0
 * @param agrees whether the ways to measure the salt agree
 */
record SaltRate(double kilogramsPerDay, double regenerationsPerDay, Map<SavingsError, Double> variances, boolean agrees) {

    /** Least of a run at another use, as a share of the run that was seen. */
    private static final double LEAST_RUN = 0.5;
    /** Least response of a meter to the use: with runs of a day or two the formula ends. */
    private static final double LEAST_RESPONSE = 0.2;
    /** Standard uncertainty of an overshoot as a share of it: scatter and likeness of days of a home are its own. */
    private static final double ASSUMED_OVERSHOOT_UNCERTAINTY = 0.25;

    /**
     * The rate of a period.
     *
     * <pre>
     * clock:                  r = S / T,                     u² = 1/(6 N²)
     * meter, water read:      r = S / T · q0 / (q f) · H0 / H,   u² = 1/(6 N²) + σ² / (D² N) + (k (f − 1) / f)²
     * meter, water not read:  r = S / T · H0 / H,            u² = 1/(6 N²) + e² (v / T + s²)
     * </pre>
     *
     * <p>D = T / N days of a run; f = 1 + o (q0 / q − 1) / D, its length at the other use over that seen; e {@link #response}; k
     * {@value #ASSUMED_OVERSHOOT_UNCERTAINTY}; S salt; T days; N regenerations; q mean use of a day and q0 that to compare at; H hardness
     * and H0 that to compare at; 1/(6 N²) of the phase at both ends, triangular; o {@link UseScatter#overshoot} and
     * σ {@link UseScatter#overshootScatter} of a meter that waits for the night, 0 of one that starts at once;
     * v {@link UseScatter#longRunVariance}; s {@link UseScatter#levelSpread}. The uncertainty of the salt is added, see {@link SaltUsed}.
     * Validity: N of 3 or more; a meter whose day override hardly acts.
     * Source: a count of a renewal process with a random start; [GUM] 4.3.9 for the phase; [DAIAD] for v, σ and s.
     * Deviation: water that was read says what v leaves open, so that only the overshoot of each run stays uncertain.
     *
     * @param litresPerDay use to compare at, absent where the water was not read in both periods
     * @param hardness to compare at; absent where it is not known in both
     */
    static SaltRate of(SavingsPeriod period, OptionalDouble litresPerDay, OptionalDouble hardness, UseScatter scatter) {
        SaltUsed salt = SaltUsed.of(period);
        double count = period.count();
        Map<SavingsError, Double> variances = new EnumMap<>(SavingsError.class);
        add(variances, SavingsError.DOSE, salt.doseShare() * salt.doseShare());
        add(variances, SavingsError.SALT_BOOKS, salt.booksShare() * salt.booksShare());
        double factor = 1;
        double counting = 1 / (6 * count * count);
        if (period.startedBy().byWater()) {
            factor = hardness.isPresent() ? hardness.getAsDouble() / period.hardness().orElseThrow() : 1;
            if (litresPerDay.isPresent()) {
                double ratio = litresPerDay.getAsDouble() / period.litresPerDay().orElseThrow();
                double days = period.days() / count;
                boolean waits = period.startedBy() == StartedBy.METER_DELAYED;
                double scattered = waits ? Math.min(1, scatter.overshootScatter() / days) : 0;
                double overshoot = waits ? Math.max(LEAST_RUN - 1, scatter.overshoot() * (ratio - 1) / days) : 0;
                double unsure = ASSUMED_OVERSHOOT_UNCERTAINTY * overshoot / (1 + overshoot);
                counting += scattered * scattered / count + unsure * unsure;
                factor *= ratio / (1 + overshoot);
            } else {
                double response = response(period, scatter);
                add(variances, SavingsError.DAYS, response * response * scatter.longRunVariance() / period.days());
                add(variances, SavingsError.LEVEL, response * response * scatter.levelSpread() * scatter.levelSpread());
            }
        }
        add(variances, SavingsError.COUNT, counting);
        return new SaltRate(factor * salt.kilograms() / period.days(), factor * count / period.days(), variances, salt.agrees());
    }

    /**
     * Change of the salt a day with the use of a day, both as logarithms.
     *
     * <pre>e = 1 − o / D</pre>
     *
     * <p>o {@link UseScatter#overshoot} of a meter that waits for the night, 0 of one that starts at once; D days of a run.
     * Validity: a clock has 0; not below {@value #LEAST_RESPONSE}. Source: derivative of the rate by use. Deviation: none.
     */
    static double response(SavingsPeriod period, UseScatter scatter) {
        if (!period.startedBy().byWater()) {
            return 0;
        }
        double overshoot = period.startedBy() == StartedBy.METER_DELAYED ? scatter.overshoot() : 0;
        return Math.max(LEAST_RESPONSE, 1 - overshoot * period.count() / period.days());
    }

    private static void add(Map<SavingsError, Double> variances, SavingsError error, double variance) {
        if (variance > 0) {
            variances.merge(error, variance, Double::sum);
        }
    }
}
