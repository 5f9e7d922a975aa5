// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import java.util.Arrays;

/**
 * The week of one home, each weekday shrunk towards the usual one, and the scatter of its days about it; formulas as in
 * {@link HouseholdFit}. Weekdays count from 0 for Monday; idle ones are left out, and the factors of the others have mean 1.
 *
 * <p>Immutable; a class and not a record because a record would hand out its array.
 */
final class HomeWeek {

    private static final int WEEKDAYS = 7;

    private final double[] factors;
    private final double meanLitres;
    private final double cv;
    private final double degreesOfFreedom;

    private HomeWeek(double[] factors, double meanLitres, double cv, double degreesOfFreedom) {
        this.factors = factors;
        this.meanLitres = meanLitres;
        this.cv = cv;
        this.degreesOfFreedom = degreesOfFreedom;
    }

    /** The week of the days with somebody there, of which there must be one. */
    static HomeWeek of(MeteredDays days, Presence presence) {
        int[] occupied = presence.occupied();
        WeekdayLevels levels = WeekdayLevels.of(days, occupied);
        double[] usual = scaled(HouseholdFit.USUAL_WEEK.stream().mapToDouble(Double::doubleValue).toArray(), presence);
        double level = mean(days, occupied, usual);
        int left = occupied.length - levels.fitted();
        double scatter = HouseholdFit.combinedCv(scatter(days, occupied, levels.mondayFirst(), left), left, occupied.length, level);
        double[] own = usual.clone();
        double weights = 0;
        int weekdays = 0;
        for (int w = 0; w < WEEKDAYS; w++) {
            double k = presence.isIdle(w) ? 0 : HouseholdFit.weightOfOwnWeekday(levels.count(w), scatter);
            own[w] += k * (levels.meanLitres(w) / level - usual[w]);
            weights += k;
            weekdays += presence.isIdle(w) ? 0 : 1;
        }
        double[] factors = scaled(own, presence);
        double mean = mean(days, occupied, factors);
        double freedom = occupied.length - 1 - weights * (weekdays - 1) / weekdays;
        return new HomeWeek(factors, mean, scatter(days, occupied, Arrays.stream(factors).map(f -> f * mean).toArray(), freedom),
                freedom);
    }

    /** Scatter of the days about the means of their weekdays, as a share of them; 0 when there are too few. */
    private static double scatter(MeteredDays days, int[] occupied, double[] meanLitres, double degreesOfFreedom) {
        double squares = 0;
        for (int i : occupied) {
            double deviation = days.litres(i) / meanLitres[days.weekday(i)] - 1;
            squares += deviation * deviation;
        }
        return degreesOfFreedom > 0 ? Math.sqrt(squares / degreesOfFreedom) : 0;
    }

    private static double mean(MeteredDays days, int[] occupied, double[] factors) {
        double litres = 0;
        double weights = 0;
        for (int i : occupied) {
            litres += days.litres(i);
            weights += factors[days.weekday(i)];
        }
        return litres / weights;
    }

    /** The factors over the mean of those that are not idle. */
    private static double[] scaled(double[] factors, Presence presence) {
        double sum = 0;
        int counted = 0;
        for (int w = 0; w < WEEKDAYS; w++) {
            sum += presence.isIdle(w) ? 0 : factors[w];
            counted += presence.isIdle(w) ? 0 : 1;
        }
        double[] scaled = factors.clone();
        for (int w = 0; w < WEEKDAYS; w++) {
            scaled[w] *= counted / sum;
        }
        return scaled;
    }

    /** Use of a weekday that is not idle over the mean of the week. */
    double factor(int weekday) {
        return factors[weekday];
    }

    /** Sum of the days over the sum of the factors of their weekdays. */
    double meanLitres() {
        return meanLitres;
    }

    /** Scatter of the days about the week; 0 when there are too few. */
    double cv() {
        return cv;
    }

    /** Days less what was fitted to them; 0 or less when they have no scatter of their own. */
    double degreesOfFreedom() {
        return degreesOfFreedom;
    }
}
