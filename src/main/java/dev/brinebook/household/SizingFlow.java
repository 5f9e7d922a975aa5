package dev.brinebook.household;

import dev.brinebook.household.PeakFlow.Fixtures;
import java.util.List;
import java.util.Optional;

/**
 * The flows that a softener is sized for, of fixtures that are known. The only place that decides how.
 *
 * @param peakLitresPerMinute flow of short peaks
 * @param method how the peak was found
 * @param continuousLitresPerMinute flow that lasts
 */
public record SizingFlow(double peakLitresPerMinute, Method method, double continuousLitresPerMinute) {

    /** How a peak is found. */
    public enum Method {
        /** Every combination of fixtures, each as likely as it is. */
        EXACT,
        /** The normal fit, where there are too many fixtures for that. */
        MODIFIED_WISTORT,
        /** The lasting flow, where it is more than either. */
        CONTINUOUS_FLOW
    }

    /**
     * The flows of {@code schedule}; absent where how often a fixture runs was not measured.
     *
     * <p>The exact percentile of the moments in which any water is drawn, above {@link FlowDistribution#MAX_FIXTURES} fixtures
     * the normal fit; never below the flow that lasts. Not the code's curve, which is for pipes. Deviation: a house of which
     * only the bathrooms are known keeps the fit, whose error is less than that of guessing the fixtures.
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
