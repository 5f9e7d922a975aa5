// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * What a measured series says of a household: how much, when, how scattered, and how often nobody is there. The days
 * when somebody is there are taken as gamma distributed about the mean of their weekday, with one shape.
 *
 * @param presence who was there when
 * @param meanLitres mean of all known days
 * @param occupiedMeanLitres mean of the weekday means of the days with somebody there; 0 when there is none
 * @param weekdayFactors Monday first, over that mean; absent when there are too few weeks
 * @param shape of the gamma distribution
 * @param fit how far the days stand from it, absent when there is no shape or there are too few days
 * @param change where the level of the occupied days changes most, free of weekdays; absent when there are too few days
 * @param trend of the same
 */
public record UseEstimate(Presence presence, double meanLitres, double occupiedMeanLitres,
        Optional<List<Double>> weekdayFactors, OptionalResult shape, Optional<Double> fit,
        Optional<ChangePoint> change, Optional<Trend> trend) {

    /** Each weekday must have been seen so often before it gets a factor of its own. */
    public static final int ASSUMED_LEAST_OF_A_WEEKDAY = 4;
    /** Fewer days than this cannot show the family of the distribution. */
    public static final int ASSUMED_LEAST_TO_JUDGE = 20;

    /** The days since the last change in the level of use, which the forecast rests on; all days if there was no change. */
    public MeteredDays latest(MeteredDays days) {
        return step(days).map(step -> days.since(presence.occupied()[step.lastBefore() + 1])).orElse(days);
    }

    /**
     * Maximum likelihood estimate from metered days.
     *
     * <pre>mean(w) = mean of the occupied days of weekday w,   factor(w) = mean(w) / mean over the seven</pre>
     *
     * <p>w weekday; means in L. Whatever the shape, the sample mean is the most likely mean of a gamma distribution, so the
     * weekdays can be estimated first and the shape from the days over their weekday's mean.
     * Validity: without an occupied day only the mean is known.
     * Source: [CHOI-WETTE]; [DAIAD] for the family.
     * Deviation: where a weekday was seen too seldom, all share one mean.
     */
    public static UseEstimate of(MeteredDays days) {
        Presence presence = Presence.of(days);
        int[] occupied = presence.occupied();
        if (occupied.length == 0) {
            return new UseEstimate(presence, days.meanLitres(), 0, Optional.empty(), OptionalResult.none(NoResultReason.NOBODY_THERE),
                    Optional.empty(), Optional.empty(), Optional.empty());
        }
        double[] weekdays = presence.levels(days, ASSUMED_LEAST_OF_A_WEEKDAY).mondayFirst();
        double mean = Arrays.stream(weekdays).average().orElseThrow();
        double[] ratios = Arrays.stream(occupied).mapToDouble(i -> days.litres(i) / weekdays[days.weekday(i)]).toArray();
        double[] level = Arrays.stream(ratios).map(ratio -> ratio * mean).toArray();
        OptionalResult shape = GammaFit.shape(ratios);
        boolean judged = shape.exists() && occupied.length >= ASSUMED_LEAST_TO_JUDGE;
        boolean dated = occupied.length >= ChangePoint.ASSUMED_LEAST_VALUES;
        boolean factors = DoubleStream.of(weekdays).distinct().count() > 1;
        return new UseEstimate(presence, days.meanLitres(), mean,
                factors ? Optional.of(DoubleStream.of(weekdays).mapToObj(w -> w / mean).toList()) : Optional.empty(), shape,
                judged ? Optional.of(GammaFit.andersonDarling(ratios, shape.value())) : Optional.empty(),
                dated ? Optional.of(ChangePoint.of(level)) : Optional.empty(),
                dated ? Optional.of(Trend.of(occupied, level)) : Optional.empty());
    }

    /** Scatter of the days with somebody there; 0 when they do not differ. */
    public double occupiedCv() {
        return shape.exists() ? GammaFit.cv(shape.value()) : 0;
    }

    /**
     * Use of a weekend day over use of another day.
     *
     * <pre>r = ((f(Sat) + f(Sun)) / 2) / ((f(Mon) + … + f(Fri)) / 5)</pre>
     *
     * <p>f weekday factors.
     * Validity: 1 when weekdays are not distinguished, infinite when Monday to Friday are idle.
     * Source: a ratio of means, by definition.
     * Deviation: none.
     */
    public double weekendRatio() {
        return weekdayFactors.map(f -> (f.get(5) + f.get(6)) / 2
                / ((f.get(0) + f.get(1) + f.get(2) + f.get(3) + f.get(4)) / 5)).orElse(1.0);
    }

    /** The change point, when it matters and describes the days better than a steady drift. */
    public Optional<ChangePoint> step(MeteredDays days) {
        return change.filter(ChangePoint::matters).filter(step -> !drifts() || step.squaresLeft(level(days))
                <= trend.orElseThrow().squaresLeft(presence.occupied(), level(days)));
    }

    /** The drift, when it is significant and describes the days better than a sudden change. */
    public Optional<Trend> drift(MeteredDays days) {
        return step(days).isPresent() || !drifts() ? Optional.empty() : trend;
    }

    /** A drift matters when it adds up to at least the smallest change that matters. */
    private boolean drifts() {
        int[] occupied = presence.occupied();
        return trend.filter(t -> t.probability() < ChangePoint.ASSUMED_SIGNIFICANCE
                && Math.abs(t.slopePerDay()) * (occupied[occupied.length - 1] - occupied[0])
                > ChangePoint.ASSUMED_LEAST_CHANGE_SHARE * occupiedMeanLitres).isPresent();
    }

    private double[] level(MeteredDays days) {
        return Arrays.stream(presence.occupied()).mapToDouble(i -> days.litres(i)
                / weekdayFactors.map(f -> f.get(days.weekday(i))).orElse(1.0)).toArray();
    }
}
