// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.Exact;
import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;

/** Peak flow of a house. */
public final class PeakFlow {

    /** Default percentile of a peak. Source: [BUCHBERGER-2017]. */
    public static final double DEFAULT_PERCENTILE = 0.99;
    /** Its percentile of the standard normal distribution, as the study prints it. */
    private static final double Z_99 = 2.326348;
    public static final double MIN_PERCENTILE = 0.90;
    public static final double MAX_PERCENTILE = 0.999;
    public static final int MAX_BATHROOMS = 12;
    /** Bathrooms of a house of which not even the people are known. */
    public static final int ASSUMED_BATHROOMS = 2;
    /** Flow of a shower, the unit of the assumed continuous flow, gpm. Source: [BUCHBERGER-2017]. */
    private static final double SHOWER_GPM = 2.0;

    /**
     * Fixtures of one kind.
     *
     * @param count how many
     * @param busyProbability probability that one runs in the busy hour. Source: [BUCHBERGER-2017]
     * @param litresPerMinute flow of one
     */
    public record Fixtures(int count, double busyProbability, double litresPerMinute) {

        public Fixtures {
            Guard.within(count, 0, 10_000, "count");
            Guard.within(busyProbability, 0, 1, "busyProbability");
            Guard.notNegative(litresPerMinute, "litresPerMinute");
        }

        static Fixtures gpm(int count, double busyProbability, double gpm) {
            return new Fixtures(count, busyProbability, gpm * Exact.US_GALLON_LITRES);
        }
    }

    private PeakFlow() {
    }

    /**
     * Mean flow of the busy hour.
     *
     * <pre>mu = sum n p q</pre>
     *
     * <p>mu mean flow, L/min; n count; p busy probability; q flow of one, L/min.
     * Validity: fixtures that run independently of each other.
     * Source: [BUCHBERGER-2017].
     * Deviation: none.
     */
    public static double meanLitresPerMinute(List<Fixtures> fixtures) {
        double mean = 0;
        for (Fixtures f : fixtures) {
            mean += f.count() * f.busyProbability() * f.litresPerMinute();
        }
        return mean;
    }

    /**
     * Variance of the flow in the busy hour.
     *
     * <pre>s2 = sum n p (1 - p) q^2</pre>
     *
     * <p>s2 variance, (L/min)^2; n count; p busy probability; q flow of one, L/min.
     * Validity: fixtures that run independently of each other.
     * Source: [BUCHBERGER-2017].
     * Deviation: none.
     */
    public static double variance(List<Fixtures> fixtures) {
        double variance = 0;
        for (Fixtures f : fixtures) {
            variance += f.count() * f.busyProbability() * (1 - f.busyProbability()) * f.litresPerMinute()
                    * f.litresPerMinute();
        }
        return variance;
    }

    /**
     * Probability that no fixture runs at a moment of the busy hour.
     *
     * <pre>P0 = prod (1 - p)^n</pre>
     *
     * <p>n count; p busy probability.
     * Validity: fixtures that run independently of each other.
     * Source: [BUCHBERGER-2017].
     * Deviation: none.
     */
    public static double idleProbability(List<Fixtures> fixtures) {
        double allIdle = 1;
        for (Fixtures f : fixtures) {
            allIdle *= StrictMath.pow(1 - f.busyProbability(), f.count());
        }
        return allIdle;
    }

    /** {@link #percentileLitresPerMinute} for the percentile 0.99. */
    public static double percentile99LitresPerMinute(List<Fixtures> fixtures) {
        return percentileLitresPerMinute(fixtures, DEFAULT_PERCENTILE);
    }

    /**
     * Percentile of the flow of all fixtures over the moments of the busy hour in which any runs.
     *
     * <pre>
     * Q = (mu + z sqrt((1 - P0) s2 - P0 mu^2)) / (1 - P0)
     * mu = sum n p q,  s2 = sum n p (1 - p) q^2,  P0 = prod (1 - p)^n
     * </pre>
     *
     * <p>Q flow, L/min; n count; p busy probability; q flow of one, L/min; z percentile of the standard normal distribution,
     * 2.326348 for 0.99.
     * Validity: percentiles from 0.90 to 0.999, as a share of 1. A normal fit of the flow given that some fixture runs; with few
     * fixtures the fit is coarse, and where no fixture ever runs the flow is 0.
     * Source: [BUCHBERGER-2017] modified Wistort, zero-truncated; re-derived from the mean and variance of a truncated
     * sum.
     * Deviation: none.
     */
    public static double percentileLitresPerMinute(List<Fixtures> fixtures, double percentile) {
        Guard.within(percentile, MIN_PERCENTILE, MAX_PERCENTILE, "percentile");
        double mean = meanLitresPerMinute(fixtures);
        if (mean == 0) {
            return 0;
        }
        double z = percentile == DEFAULT_PERCENTILE ? Z_99
                : new NormalDistribution().inverseCumulativeProbability(percentile);
        double allIdle = idleProbability(fixtures);
        double spread = Math.max(0, (1 - allIdle) * variance(fixtures) - allIdle * mean * mean);
        return (mean + z * Math.sqrt(spread)) / (1 - allIdle);
    }

    /**
     * Fixtures assumed for a house of which only the bathrooms are known: in each a shower, a lavatory and a toilet,
     * and in the house a kitchen faucet, a clothes washer and a dishwasher.
     */
    public static List<Fixtures> assumedFixtures(int bathrooms) {
        return FixtureSchedule.ofBathrooms(bathrooms).draws().orElseThrow();
    }

    /**
     * Continuous flow assumed for a house of which only the bathrooms are known: a shower in every second, at least one.
     *
     * <pre>Q = q (b + 1) / 2, the division without remainder</pre>
     *
     * <p>Q flow, L/min; q flow of a shower, 2.0 gpm; b bathrooms.
     * Validity: 1 to {@value #MAX_BATHROOMS} bathrooms.
     * Source: [BUCHBERGER-2017] flow of a shower; the number of showers is assumed.
     * Deviation: none.
     */
    public static double assumedContinuousLitresPerMinute(int bathrooms) {
        int showers = (Guard.within(bathrooms, 1, MAX_BATHROOMS, "bathrooms") + 1) / 2;
        return showers * SHOWER_GPM * Exact.US_GALLON_LITRES;
    }

    /** Bathrooms assumed for a number of people: one for each two, rounded up. */
    public static int assumedBathrooms(int people) {
        return Math.min(MAX_BATHROOMS, (Guard.within(people, 1, Demand.MAX_PEOPLE, "people") + 1) / 2);
    }
}
