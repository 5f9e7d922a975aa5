// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.household.HourlyProfile;
import dev.brinebook.household.UseModel;
import java.util.HashMap;
import java.util.Map;
import org.hipparchus.special.Gamma;

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

    /** Chance above which an override is more than an exception. */
    private static final double RARE_OVERRIDE = 1e-4;
    private static final int PLACES = 400;
    private static final int WEEKDAYS = 7;

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

    /** Regenerations, overrides, hard days, hard litres and bypassed litres of a year in which all use is multiplied. */
    static double[] year(Policy policy, double hardness, Regeneration regeneration, SteadyUse use, double useFactor) {
        double[] sums = new double[5];
        double meter = policy.meterVolumeLitres();
        double bed = hardness > 0 ? 1000 * regeneration.capacityGrams() / hardness : Double.POSITIVE_INFINITY;
        Map<Double, Double> hardShares = new HashMap<>();
        double atOnce = policy.softensMeanwhile() ? 0 : bypassLitres(regeneration.minutes(), use.means(), use.cv());
        for (int month = 0; month < UseModel.MONTHS; month++) {
            double factor = useFactor * use.model().monthFactors().get(month);
            double days = UseModel.DAYS_OF_MONTHS.get(month);
            double bypass = factor * atOnce;
            double litres = days * factor * use.occupiedShare() * use.meanAtHome();
            double regenerations = litres / (meter + bypass);
            sums[0] += regenerations;
            sums[4] += regenerations * bypass;
            if (meter > bed * (1 + Policy.ROUNDING_SHARE)) {
                sums[2] += days * use.occupiedShare() * hardShares.computeIfAbsent(factor, f -> hardShare(use, f, meter, bed,
                        f * atOnce));
                sums[3] += regenerations * (meter - bed);
            }
        }
        return sums;
    }

    /** Share of the days at home on which the bed of a meter by day is exhausted. */
    private static double hardShare(SteadyUse use, double factor, double meter, double bed, double bypass) {
        double share = 0;
        double mean = 0;
        double part = 0;
        for (double weekday : use.means()) {
            if (weekday != mean) {
                mean = weekday;
                part = meter - bed + factor * mean - GammaDay.excessLitres(factor * mean, use.cv(), bed + bypass);
            }
            share += factor * mean > 0 ? part / (meter + bypass) / WEEKDAYS : 0;
        }
        return share;
    }

    /**
     * Whether an override ends more than a few of the waits of a meter, the mean over the weekdays on which they may start; the use up
     * to it is taken as gamma distributed.
     */
    static boolean overrideActs(Policy policy, SteadyUse use, double useFactor) {
        int days = policy.overrideDays();
        if (days == Policy.NO_OVERRIDE) {
            return false;
        }
        double factor = useFactor * use.leastMonthFactor();
        if (factor * use.meanAtHome() == 0) {
            return true;
        }
        double chances = 0;
        int starts = 0;
        for (int weekday = 0; weekday < WEEKDAYS; weekday++) {
            if (use.means()[weekday] > 0) {
                chances += chanceOfOverride(policy, use, factor, weekday);
                starts++;
            }
        }
        return chances / starts > RARE_OVERRIDE;
    }

    /** Chance that the days after one of use do not come to what the meter counts. */
    private static double chanceOfOverride(Policy policy, SteadyUse use, double factor, int weekday) {
        double share = use.occupiedShare();
        double sum = 0;
        double squares = 0;
        for (int day = 1; day <= policy.overrideDays(); day++) {
            double mean = factor * use.means()[(weekday + day) % WEEKDAYS];
            sum += mean;
            squares += mean * mean;
        }
        double spells = use.leave() > 0 ? Math.max(1, (2 - use.leave() - use.comeBack()) / (use.leave() + use.comeBack())) : 1;
        double variance = share * squares * (use.cv() * use.cv() + (1 - share) * spells);
        double litres = share * sum;
        if (variance == 0) {
            return litres < policy.meterVolumeLitres() ? 1 : 0;
        }
        return Gamma.regularizedGammaP(litres * litres / variance, policy.meterVolumeLitres() * litres / variance);
    }
}
