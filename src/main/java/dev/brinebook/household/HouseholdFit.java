// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The {@link UseModel} that a measured series and the people of a home make together: what to expect of the household, while
 * the days themselves are what was. Few days lean on what is usual, many speak for themselves.
 *
 * <pre>mean     m_own = Σ V / Σ f(w),   v = 1.27 CV² / n + 0.030 + 0.015 · 60 / (60 + n),   ω = τ² / (τ² + v)
 *          ln m = ω ln m_own + (1 − ω) ln m_p,   P = ω v
 * weekday  k(w) = 0.138² / (0.138² + CV² / n(w)),   f(w) = W(w) + k(w) (m(w) / m_0 − W(w)), scaled to mean 1
 * scatter  CV_u = 0.416 (m_own / 270 L)^−0.074,   k = 0.237² / (0.237² + 2.93 / n),
 *          ln CV = k ln CV_own + (1 − k) ln CV_u,   Q = 0.237² (1 − k)</pre>
 *
 * <p>V use of an occupied day, litres, without what lies above four median days ({@link HighDay}); n such days, n(w) of weekday
 * w; m(w) their mean; m_0 = Σ V / Σ W(w); W the usual week; m_p what people alone say, τ 0.377 its spread, without people
 * ω is 1; CV_own scatter of V / f(w); P and Q variances of the logarithm of the level and of the scatter, {@link UseChange};
 * 1.27 = (1 + 0.12) / (1 − 0.12) for days that follow each other.
 * Validity: any number of days; P holds the drift of the 120 days that follow.
 * Source: the method of [DAIAD], fitted to 45 metered homes: over the next 120 days the logarithm of m is off by 0.245, 0.209
 * and 0.167 after 3, 28 and 168 days, of m_own by 0.30, 0.24 and 0.175, of m_p by 0.39.
 * Deviation: CV_own is taken about the home's own shrunk week, with n − 1 − 6/7 Σ k(w) degrees of freedom, and m_own as well, so
 * that a home with a strong week gets its own (the study has the mean of V / W(w)); both then are a little nearer to the days that
 * follow. Days exactly alike pull the
 * scatter no further than their number allows: CV ≥ CV_u exp(−0.237² · degrees of freedom), the most likely value then. τ is
 * widened where m_own is more than two standard deviations above m_p ({@link #spreadOfPeople}). An idle weekday keeps the
 * mean of all its days and is not shrunk.
 *
 * @param model weekday means of the days with somebody there, their scatter within the weekday, absences, and how sure they are
 * @param presence who was there when
 * @param highDays leak and filling days, each included up to its cap only
 * @param daysAboveCap how many days lie above the cap, all taken as they are when there are too many for accidents
 * @param ownMeanLitres mean of a week of the days with somebody there, by the days alone; 0 when there is none
 * @param meanLitres the same with what people alone say; idle weekdays are not in it
 * @param weightOfOwnMean of the days' own mean, 0 to 1
 * @param ownCv scatter of the days by themselves, 0 when there are too few to have one
 * @param cv the same with what is usual, before it is held to {@link DayVariation#MAX_CV} in the model
 * @param weightOfOwnCv of the days' own scatter, 0 to 1
 */
public record HouseholdFit(UseModel model, Presence presence, List<HighDay> highDays, int daysAboveCap, double ownMeanLitres,
        double meanLitres, double weightOfOwnMean, double ownCv, double cv, double weightOfOwnCv) {

    /** Use of each weekday over their mean, Monday first. Source: [DAIAD]. */
    static final List<Double> USUAL_WEEK = List.of(1.002, 0.983, 0.968, 0.988, 0.969, 1.035, 1.040);
    /** How far the weekdays of a home differ from the usual week. Source: [DAIAD]. */
    static final double WEEKDAY_SPREAD = 0.138;
    /** Variance of the logarithm of a scatter, times the days that it is of. Source: [DAIAD]. */
    static final double CV_VARIANCE_DAYS = 2.93;
    /** Standard deviations that the days may be above the estimate from people before that estimate gets less weight. */
    static final double ASSUMED_LARGEST_CONFLICT = 2;
    private static final int WEEKDAYS = 7;

    public HouseholdFit {
        highDays = List.copyOf(highDays);
    }

    /**
     * The model of these days.
     *
     * @param litresOfPeople mean use of a day that people alone say, for days with somebody there; absent when it is not known
     */
    public static HouseholdFit of(MeteredDays days, OptionalDouble litresOfPeople) {
        HighDays high = HighDays.of(days);
        Presence presence = Presence.of(high.capped());
        int[] occupied = presence.occupied();
        int n = occupied.length;
        if (n == 0) {
            return ofPeopleAlone(presence, litresOfPeople);
        }
        HomeWeek week = HomeWeek.of(high.capped(), presence);
        double own = week.meanLitres();
        double cv = combinedCv(week.cv(), week.degreesOfFreedom(), n, own);
        double v = varianceOfOwnMean(n, cv);
        double weight = 1;
        double mean = own;
        if (litresOfPeople.isPresent()) {
            double spread = spreadOfPeople(StrictMath.log(own / litresOfPeople.getAsDouble()), v);
            weight = weight(spread * spread, v);
            mean = own * StrictMath.pow(litresOfPeople.getAsDouble() / own, 1 - weight);
        }
        double[] litres = new double[WEEKDAYS];
        for (int w = 0; w < WEEKDAYS; w++) {
            litres[w] = presence.isIdle(w) ? presence.idleMeanLitres(w) * mean / own : mean * week.factor(w);
        }
        double weightOfCv = week.degreesOfFreedom() > 0 ? weightOfOwnCv(n) : 0;
        UseModel model = new UseModel(WeekdayMeans.mondayFirst(litres), DayVariation.ofCv(Math.min(DayVariation.MAX_CV, cv)),
                UseModel.EVEN_MONTHS, presence.occupancy(), change(weight * v, weightOfCv));
        return new HouseholdFit(model, presence, high.days(), high.above(), own, mean, weight, week.cv(), cv, weightOfCv);
    }

    /** Without an occupied day the estimate rests on the people alone; without people the use is 0. */
    private static HouseholdFit ofPeopleAlone(Presence presence, OptionalDouble litresOfPeople) {
        double mean = litresOfPeople.orElse(0);
        double cv = mean == 0 ? 0 : usualCv(mean);
        double[] litres = USUAL_WEEK.stream().mapToDouble(factor -> factor * mean / usualMean()).toArray();
        UseModel model = new UseModel(WeekdayMeans.mondayFirst(litres), DayVariation.ofCv(cv), UseModel.EVEN_MONTHS,
                presence.occupancy(), afterDays(0, cv, litresOfPeople.isPresent()));
        return new HouseholdFit(model, presence, List.of(), 0, 0, mean, 0, 0, cv, 0);
    }

    private static double usualMean() {
        return USUAL_WEEK.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    /**
     * Uncertainty of a home's use after a number of days of readings, to show what more of them would bring.
     *
     * <pre>P = τ² v / (τ² + v)  with the people known,  P = v  without;   Q = c² (1 - k)</pre>
     *
     * <p>P, Q variances of the logarithm of level and scatter; v variance of the logarithm of the days' own mean; τ spread of
     * homes about what their people alone say; c usual spread of the scatter; k weight of the days' own scatter.
     * Validity: 0 days give Q = c² and P = τ², or the largest P without people.
     * Source: [DAIAD], as in the class.
     * Deviation: the spreads are held to those that {@link UseChange} takes.
     *
     * @param days days with somebody at home, 0 or more
     * @param cv scatter of the days, {@value DayVariation#MIN_CV} to {@value DayVariation#MAX_CV}
     * @param peopleKnown whether the people of the home are known as well
     * @return spreads √P and √Q of the class, at most those that {@link UseChange} takes; P falls with the days
     */
    public static UseChange afterDays(int days, double cv, boolean peopleKnown) {
        Guard.within(days, 0, Days.MAX_DAYS, "days");
        Guard.within(cv, DayVariation.MIN_CV, DayVariation.MAX_CV, "cv");
        double people = UseChange.LEVEL_SPREAD_OF_PEOPLE_ALONE * UseChange.LEVEL_SPREAD_OF_PEOPLE_ALONE;
        if (days == 0) {
            return change(peopleKnown ? people : Double.MAX_VALUE, 0);
        }
        double v = varianceOfOwnMean(days, cv);
        return change(peopleKnown ? weight(people, v) * v : v, weightOfOwnCv(days));
    }

    private static UseChange change(double levelVariance, double weightOfOwnCv) {
        return new UseChange(Math.min(UseChange.MAX_LEVEL_SPREAD, Math.sqrt(levelVariance)),
                UseChange.USUAL_SCATTER_SPREAD * Math.sqrt(1 - weightOfOwnCv), UseChange.USUAL_DAY_CORRELATION);
    }

    /** v: variance of the logarithm of the mean of {@code n} days as a forecast of the 120 days that follow. */
    static double varianceOfOwnMean(int n, double cv) {
        return 1.27 * cv * cv / n + 0.030 + 0.015 * 60 / (60 + n);
    }

    private static double weight(double priorVariance, double variance) {
        return priorVariance / (priorVariance + variance);
    }

    /**
     * Spread of homes about what their people alone say, widened by how much this one is above it.
     *
     * <pre>τ' = max(τ, √(Δ² / 4 − v)) for Δ above 0,   τ = 0.377</pre>
     *
     * <p>Δ logarithm of the days' own mean over what people alone say; v variance of the former. Where the days are more than two
     * standard deviations √(τ² + v) above, the number of people says little of this meter: a farm, a workshop. Days as far below
     * are not trusted more for it, since people who are away with a cistern that drips look the same.
     * Validity: any Δ; below 0 τ' is τ.
     * Source: [DAIAD] for τ and for days below: treated like those above, three days picked at any time would be off by 0.52
     * instead of 0.28; the rest has none.
     * Deviation: none.
     */
    static double spreadOfPeople(double difference, double variance) {
        double above = Math.max(0, difference) / ASSUMED_LARGEST_CONFLICT;
        return Math.max(UseChange.LEVEL_SPREAD_OF_PEOPLE_ALONE, Math.sqrt(Math.max(0, above * above - variance)));
    }

    /** k: weight of {@code n} days against the usual scatter. */
    static double weightOfOwnCv(int n) {
        return weight(UseChange.USUAL_SCATTER_SPREAD * UseChange.USUAL_SCATTER_SPREAD, CV_VARIANCE_DAYS / n);
    }

    /** k(w): weight of {@code n} days of a weekday against the usual week; 1 for days without scatter. */
    static double weightOfOwnWeekday(int n, double cv) {
        return n == 0 ? 0 : weight(WEEKDAY_SPREAD * WEEKDAY_SPREAD, cv * cv / n);
    }

    /** CV_u: scatter of the days of homes of such a use, held to {@link DayVariation#MAX_CV}. Source: [DAIAD]. */
    static double usualCv(double meanLitres) {
        return Math.min(DayVariation.MAX_CV, 0.416 * StrictMath.pow(meanLitres / 270, -0.074));
    }

    /**
     * CV of the class; below {@link DayVariation#NARROW_CV}, where days are treated as equal, 0.
     *
     * @param degreesOfFreedom of the days' own scatter; 0 or less when they have none
     */
    static double combinedCv(double ownCv, double degreesOfFreedom, int n, double meanLitres) {
        double usual = usualCv(meanLitres);
        if (!(degreesOfFreedom > 0)) {
            return usual;
        }
        double combined = usual * StrictMath.pow(ownCv / usual, weightOfOwnCv(n));
        double spread = UseChange.USUAL_SCATTER_SPREAD;
        double least = usual * StrictMath.exp(-spread * spread * degreesOfFreedom);
        double held = Math.max(combined, least);
        return held < DayVariation.NARROW_CV ? 0 : held;
    }
}
