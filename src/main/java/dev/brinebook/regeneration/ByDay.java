// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.household.HourlyProfile;

/**
 * Meters that start at any hour, in the long run: the use since the last regeneration is then spread evenly from nothing
 * to all that the meter counts, whatever the days are like.
 *
 * <pre>b = k (1 + CV²) Σ m² / Σ m  (0 for twin beds),     k = mean over p of share(t(p) + minutes) - p
 * regenerations = use / (V + b),   bypassed = regenerations b
 * hard litres = regenerations (V - B),   hard days = days at home · mean of E min(V + b, V - B + X) / (V + b),   B &lt; V</pre>
 *
 * <p>V litres that the meter counts, B litres that the bed softens, m mean of a weekday, X its use; t(p) the time up to which a
 * share p of the day's use has passed, share its inverse: {@link HourlyProfile}.
 * Validity: an override that next to never acts.
 * Source: [FELLER] the age of a renewal process is uniform where the count is what renews it.
 * Deviation: regenerations within 0.01 %, bypassed litres within 0.2 %.
 */
final class ByDay {

    private static final int PLACES = 400;

    private ByDay() {
    }

    /** k: share of a day's use that passes in the given minutes from a moment of use. */
    static double passingShare(double minutes) {
        double sum = 0;
        for (int i = 0; i < PLACES; i++) {
            double drawn = (i + 0.5) / PLACES;
            double until = HourlyProfile.dayShareAt(drawn) + minutes / Regeneration.MINUTES_PER_DAY;
            sum += (until < 1 ? HourlyProfile.shareUntil(until) : 1 + HourlyProfile.shareUntil(Math.min(1, until - 1))) - drawn;
        }
        return sum / PLACES;
    }

    /** b: litres that pass by the bed in a regeneration, of a household with these weekday means. */
    static double bypassLitres(double minutes, double[] means, double cv) {
        double sum = 0;
        double squares = 0;
        for (double mean : means) {
            sum += mean;
            squares += mean * mean;
        }
        return sum == 0 ? 0 : passingShare(minutes) * (1 + cv * cv) * squares / sum;
    }
}
