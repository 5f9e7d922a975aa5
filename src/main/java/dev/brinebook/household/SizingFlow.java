// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.household.PeakFlow.Fixtures;
import java.util.List;
import java.util.Optional;

/**
 * The flows that a softener is sized for, of fixtures that are known. The only place that decides how.
 *
 * @param peakLitresPerMinute flow of short peaks
 * @param method how the peak was found
 * @param continuousLitresPerMinute continuous flow
 */
public record SizingFlow(double peakLitresPerMinute, Method method, double continuousLitresPerMinute) {

    /** How a peak is found. */
    public enum Method {
        /** The exact distribution over all combinations of fixtures. */
        EXACT,
        /** The normal fit, where there are too many fixtures for that. */
        MODIFIED_WISTORT,
        /** The continuous flow, where it is above both. */
        CONTINUOUS_FLOW
    }

    /**
     * The flows that {@code schedule} is sized for; absent where the busy probability of a fixture was not measured.
     *
     * <pre>Q = max(percentile of the flow while water runs, continuous flow)</pre>
     *
     * <p>Q peak flow, L/min; the percentile is the exact one, above {@link FlowDistribution#MAX_FIXTURES} fixtures the normal
     * fit.
     * Validity: not the code's curve, which is for pipes.
     * Source: as {@link FlowDistribution} and {@link PeakFlow}.
     * Deviation: a house of which only the bathrooms are known keeps the fit, whose error is less than that of guessing the
     * fixtures.
     */
    public static Optional<SizingFlow> of(FixtureSchedule schedule, double percentile) {
        return schedule.draws().map(draws -> of(schedule, draws, percentile));
    }

    private static SizingFlow of(FixtureSchedule schedule, List<Fixtures> draws, double percentile) {
        double lasting = schedule.continuousLitresPerMinute(draws);
        boolean few = FlowDistribution.takes(draws);
        double peak = few ? FlowDistribution.of(draws).busyPercentileLitresPerMinute(percentile)
                : PeakFlow.percentileLitresPerMinute(draws, percentile);
        return peak >= lasting ? new SizingFlow(peak, few ? Method.EXACT : Method.MODIFIED_WISTORT, lasting)
                : new SizingFlow(lasting, Method.CONTINUOUS_FLOW, lasting);
    }
}
