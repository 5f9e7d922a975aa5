// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.household.PeakFlow.Fixtures;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The peak flow of the same fixtures by every method.
 *
 * @param schedule the fixtures
 * @param curve demand curve of the code
 * @param building kind of building, for the design flows
 * @param percentile of the moments in which water runs, of 1
 */
public record PeakFlowEstimate(FixtureSchedule schedule, DemandCurve curve, BuildingType building, double percentile) {

    private static final double SECONDS_PER_MINUTE = 60;

    public PeakFlowEstimate {
        Objects.requireNonNull(schedule, "schedule");
        Objects.requireNonNull(curve, "curve");
        Objects.requireNonNull(building, "building");
        Guard.within(percentile, PeakFlow.MIN_PERCENTILE, PeakFlow.MAX_PERCENTILE, "percentile");
    }

    /** By the code's demand curve, L/min. */
    public OptionalResult codeLitresPerMinute() {
        OptionalResult units = schedule.fixtureUnits();
        return units.exists() ? curve.litresPerMinute(units.value()) : units;
    }

    /** By the design flows, L/min. */
    public OptionalResult designLitresPerMinute() {
        OptionalResult sum = schedule.designLitresPerSecond();
        return sum.exists() ? building.peakLitresPerSecond(sum.value()).map(flow -> SECONDS_PER_MINUTE * flow) : sum;
    }

    /** By the normal fit, L/min. */
    public OptionalResult fittedLitresPerMinute() {
        return schedule.draws().map(draws -> OptionalResult.of(PeakFlow.percentileLitresPerMinute(draws, percentile)))
                .orElse(OptionalResult.none(NoResultReason.NO_BUSY_PROBABILITY));
    }

    /** By every combination, L/min. */
    public OptionalResult exactLitresPerMinute() {
        Optional<List<Fixtures>> draws = schedule.draws();
        if (draws.isEmpty()) {
            return OptionalResult.none(NoResultReason.NO_BUSY_PROBABILITY);
        }
        return distribution().map(flows -> OptionalResult.of(flows.busyPercentileLitresPerMinute(percentile)))
                .orElse(OptionalResult.none(NoResultReason.TOO_MANY_FIXTURES));
    }

    /** The exact distribution; absent with too many fixtures and with such as were not measured. */
    public Optional<FlowDistribution> distribution() {
        return schedule.draws().filter(FlowDistribution::takes).map(FlowDistribution::of);
    }

    /** What a softener is sized for; absent with fixtures that were not measured. */
    public Optional<SizingFlow> sizing() {
        return SizingFlow.of(schedule, percentile);
    }
}
