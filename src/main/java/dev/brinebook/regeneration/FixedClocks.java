// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What clocks with a fixed interval do in a home as it changes: read from {@link HomeClockRates}. */
final class FixedClocks {

    private final HomeRates.Shape shape;
    private final List<HomeState> states;
    private final double meanLitres;
    private final boolean onLattice;
    private final Map<Integer, HomeClockRates> rates = new HashMap<>();

    /** The clocks of a home that uses {@code meanLitres} a day, the mean over all its states. */
    FixedClocks(HomeRates.Shape shape, List<HomeState> states, double meanLitres) {
        this.shape = shape;
        this.states = states;
        this.meanLitres = meanLitres;
        onLattice = states.size() > 1 && states.stream().allMatch(state -> state.days().readsClocksFromLattice());
    }

    /** Whether a policy is such a clock, and one that is read from the lattice. */
    boolean reads(Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration) {
        return policy instanceof ClockEveryDays clock && clock.overrideDays() == Policy.NO_OVERRIDE && onLattice
                && WaitingRule.bedLitres(hardnessMilligramsPerLitre, regeneration) >= HomeClockRates.LEAST_BED_DAYS * meanLitres;
    }

    /** Expected totals of a year of a policy that is {@linkplain #reads read}. */
    YearlyTotals year(ClockEveryDays clock, double hardnessMilligramsPerLitre, Regeneration regeneration) {
        double bedLitres = WaitingRule.bedLitres(hardnessMilligramsPerLitre, regeneration);
        double[] sums = rates.computeIfAbsent(clock.days(), days -> HomeClockRates.of(shape, days)).year(bedLitres / meanLitres,
                bedDays -> HomeStates.mean(states, meanLitres, state -> state.days().clockYear(clock, bedDays * meanLitres)));
        sums[3] *= meanLitres;
        return SteadyRun.totals(sums, meanLitres, hardnessMilligramsPerLitre, regeneration);
    }
}
