// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

/**
 * A delayed meter that waits so long that the count is reached at any point of a day's use: the use beyond it is the overshoot of
 * a renewal process.
 *
 * <pre>regenerations = use / (T + Σ E X² / (2 Σ m)),   hard days = regenerations (Σ M(B - T) + n max(0, T - B)) / Σ m</pre>
 *
 * <p>T count at which it calls; B what the bed softens; X use of a weekday, m its mean, M its mean above a bound; n weekdays of use.
 * Source: [FELLER] the overshoot in the limit.
 */
final class LongWait {

    /** Beyond this wait, in mean days, the start of its cycle no longer matters to a delayed meter without override. */
    static final double LONG_WAIT_DAYS = 60;
    private static final double LEAST_CV_OF_LONG_WAIT = 0.15;
    private static final double LONGEST_WAIT_DAYS = 400;
    private static final int WEEKDAYS = 7;

    private LongWait() {
    }

    /** Whether a rule waits so long, in litres of a household whose use is multiplied by {@code factor}. */
    static boolean holds(WaitingRule rule, SteadyUse use, double factor) {
        if (rule.timed() || rule.longest() != 0) {
            return false;
        }
        double days = rule.callLitres() / (factor * use.meanAtHome());
        return days > LONGEST_WAIT_DAYS || days > LONG_WAIT_DAYS && use.cv() > LEAST_CV_OF_LONG_WAIT;
    }

    /** Means of a day of a rule in litres of days that use once as much. */
    static Cycles.Rates rates(WaitingRule rule, SteadyUse use, double factor) {
        double sum = 0;
        double overshoot = 0;
        double hard = 0;
        double litres = 0;
        double spare = Math.max(0, rule.bedLitres() - rule.callLitres());
        int weekdaysOfUse = 0;
        for (double mean : use.means()) {
            sum += mean;
            weekdaysOfUse += mean > 0 ? 1 : 0;
            overshoot += GammaDay.halfSquareExcess(mean, use.cv(), 0);
            if (spare < Double.POSITIVE_INFINITY) {
                hard += GammaDay.excessLitres(mean, use.cv(), spare);
                litres += GammaDay.halfSquareExcess(mean, use.cv(), spare);
            }
        }
        double perDay = use.occupiedShare() * sum / WEEKDAYS;
        double regenerations = perDay / (rule.callLitres() + overshoot / sum);
        double late = Math.max(0, rule.callLitres() - rule.bedLitres());
        double days = regenerations * (hard + weekdaysOfUse * late) / sum;
        return new Cycles.Rates(regenerations, days, factor * regenerations * (litres / sum + late), 0, 1);
    }
}
