// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.household.Days;
import dev.brinebook.household.Occupancy;
import dev.brinebook.household.UseModel;
import java.time.DayOfWeek;
import java.util.Arrays;
import org.hipparchus.special.Gamma;

/** What {@link SteadyRun} asks of a household's use again and again, worked out once. */
final class SteadyUse {

    private static final double NEGLIGIBLE_DAYS = 1e-9;

    private final UseModel model;
    private final double[] means;
    private final double meanAtHome;
    private final double busiestMean;
    private final double meanLitres;
    private final double occupiedShare;
    /** The factors of the months that differ, and which of them each month has. */
    private final double[] factors;
    private final int[] factorOfMonth = new int[UseModel.MONTHS];
    private final double leave;
    private final double comeBack;

    SteadyUse(UseModel model) {
        this.model = model;
        means = Arrays.stream(DayOfWeek.values()).mapToDouble(model.means()::litres).toArray();
        meanAtHome = Arrays.stream(means).average().orElseThrow();
        busiestMean = model.means().busiestLitres();
        meanLitres = model.meanLitres();
        occupiedShare = model.occupiedShare();
        factors = model.monthFactors().stream().mapToDouble(Double::doubleValue).distinct().toArray();
        for (int month = 0; month < UseModel.MONTHS; month++) {
            for (int i = 0; i < factors.length; i++) {
                factorOfMonth[month] = factors[i] == model.monthFactors().get(month) ? i : factorOfMonth[month];
            }
        }
        var chain = model.occupancy().longRun();
        leave = chain.map(Occupancy.Chain::leavePerDay).orElse(0.0);
        comeBack = chain.map(Occupancy.Chain::returnPerDay).orElse(1.0);
    }

    /** How the days come about. */
    UseModel model() {
        return model;
    }

    /** Mean of each weekday at home, litres, Monday first; not to be changed. */
    double[] means() {
        return means;
    }

    /** Mean of the weekdays at home, litres. */
    double meanAtHome() {
        return meanAtHome;
    }

    /** Mean of the weekday with the highest, litres. */
    double busiestMean() {
        return busiestMean;
    }

    /** Mean use of a day, vacant ones included, litres. */
    double meanLitres() {
        return meanLitres;
    }

    /** Share of the days with somebody at home. */
    double occupiedShare() {
        return occupiedShare;
    }

    double cv() {
        return model.cv();
    }

    /** Whether all months are as the year. */
    boolean hasEvenMonths() {
        return factors.length == 1 && factors[0] == 1;
    }

    /** How many factors of months differ. */
    int factors() {
        return factors.length;
    }

    double factor(int which) {
        return factors[which];
    }

    /** Which of the factors a month has, January being 0. */
    int factorOfMonth(int month) {
        return factorOfMonth[month];
    }

    double leastMonthFactor() {
        return Arrays.stream(factors).min().orElseThrow();
    }

    /** Probability that a house at home is vacant the next day; 0 where nobody ever leaves. */
    double leave() {
        return leave;
    }

    /** Probability that a vacant house is at home the next day. */
    double comeBack() {
        return comeBack;
    }

    /** Whether a year has practically no day on which the use since as many days exceeds {@code litres}: all were the busiest weekday. */
    boolean hardlyExceeds(double litres, int days) {
        double square = cv() * cv();
        return litres > mostLitres(days) || litres > days * busiestMean()
                && Gamma.regularizedGammaQ(days / square, litres / (busiestMean() * square)) * Days.PER_YEAR < NEGLIGIBLE_DAYS;
    }

    /** A practical upper bound of the use in a number of days: mean, ten standard deviations, and the skew of a day. */
    double mostLitres(int nights) {
        double cv = cv();
        return busiestMean() * (nights + 10 * cv * Math.sqrt(nights) + 20 * cv * cv);
    }

    /** The count, or the practical upper bound of use before the override ends the cycle. */
    double reachedLitres(double callLitres, int overrideDays) {
        return overrideDays == Policy.NO_OVERRIDE ? callLitres : Math.min(callLitres, mostLitres(overrideDays));
    }
}
