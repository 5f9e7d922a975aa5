// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What delayed meters do in a home as it changes: read from {@link HomeRates} where those hold, else summed over the states that the
 * home may have. Not thread-safe.
 */
final class DelayedMeters {

    private final HomeRates.Shape shape;
    private final List<HomeState> states;
    private final double meanLitres;
    private final Map<Integer, HomeRates> rates = new HashMap<>();
    private final Map<Integer, Boolean> readable = new HashMap<>();

    /** The delayed meters of a home that uses {@code meanLitres} a day, the mean over all its states. */
    DelayedMeters(HomeRates.Shape shape, List<HomeState> states, double meanLitres) {
        this.shape = shape;
        this.states = states;
        this.meanLitres = meanLitres;
    }

    /** The same in one of the states of the home. */
    static DelayedMeters in(HomeRates.Shape shape, HomeState state) {
        return new DelayedMeters(shape.ofOneLevel(state.days().model().cv()), List.of(state.alone(state.weight())),
                state.days().meanLitres());
    }

    /** Whether a policy is such a meter, and one that is read from the lattice. */
    boolean reads(Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration) {
        return !policy.byClock() && !policy.startsAtOnce() && !policy.followsWeekdays()
                && isOnLattice(callLitres(policy), WaitingRule.bedLitres(hardnessMilligramsPerLitre, regeneration), policy.overrideDays());
    }

    /** Expected totals of a year of a policy that is {@linkplain #reads read}. */
    YearlyTotals year(Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration) {
        SumsOverStates of = new SumsOverStates(policy.overrideDays());
        HomeRates known = rates(policy.overrideDays());
        double bedLitres = WaitingRule.bedLitres(hardnessMilligramsPerLitre, regeneration);
        double call = callLitres(policy);
        double[] sums = call == 0 ? known.everyNight(bedLitres / meanLitres, of)
                : known.year(call / meanLitres, (bedLitres - call) / meanLitres, of);
        sums[3] *= meanLitres;
        return SteadyRun.totals(sums, meanLitres, hardnessMilligramsPerLitre, regeneration);
    }

    /** Expected hard days of a year of a policy that is {@linkplain #reads read}. */
    double hardDays(Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration) {
        return readHardDays(callLitres(policy), WaitingRule.bedLitres(hardnessMilligramsPerLitre, regeneration), policy.overrideDays());
    }

    /** Expected hard days of a year, by what the meter counts, at what count it calls and what the bed softens. */
    double hardDays(double meterLitres, double callLitres, double bedLitres, int overrideDays) {
        double call = callLitres(meterLitres, callLitres);
        return isOnLattice(call, bedLitres, overrideDays) ? readHardDays(call, bedLitres, overrideDays)
                : summedHardDays(meterLitres, callLitres, bedLitres, overrideDays);
    }

    private double summedHardDays(double meterLitres, double callLitres, double bedLitres, int overrideDays) {
        double sum = 0;
        boolean done = false;
        for (HomeState state : states) {
            // What is left of a scatter is no more than what it had last.
            if (!done) {
                double hardDays = state.days().delayedHardDays(meterLitres, callLitres, bedLitres, overrideDays);
                sum += state.weight() * hardDays;
                done = state.hasNoneBelow(hardDays * state.weightBelow());
            }
            done &= state.weightBelow() > 0;
        }
        return sum;
    }

    private double readHardDays(double callLitres, double bedLitres, int overrideDays) {
        SumsOverStates of = new SumsOverStates(overrideDays);
        return callLitres == 0 ? rates(overrideDays).hardDaysOfEveryNight(bedLitres / meanLitres, of)
                : rates(overrideDays).hardDays(callLitres / meanLitres, (bedLitres - callLitres) / meanLitres, of);
    }

    private static double callLitres(Policy policy) {
        return callLitres(policy.meterVolumeLitres(), policy.callLitres());
    }

    /** The count at which a delayed meter calls; 0 where it calls every night. */
    private static double callLitres(double meterLitres, double callLitres) {
        return WaitingRule.callsEveryNight(meterLitres, callLitres) ? 0 : callLitres;
    }

    /** Whether each state can be read from its own lattice, and so all from one; a home of one state has its own alone. */
    private boolean isOnLattice(double callLitres, double bedLitres, int overrideDays) {
        double least = callLitres == 0 ? HomeRates.LEAST_BED_DAYS
                : bedLitres < HomeRates.SMALL_BED_DAYS * meanLitres ? HomeRates.LEAST_CALL_DAYS_OF_SMALL_BEDS : HomeRates.LEAST_CALL_DAYS;
        return meanLitres > 0 && (states.size() > 1 || shape.part() == HomeRates.Part.ONE_LEVEL) && bedLitres >= callLitres
                && (callLitres == 0 ? bedLitres : callLitres) >= least * meanLitres
                && readable.computeIfAbsent(overrideDays, days -> states.stream().allMatch(state -> state.days().readsFromLattice(days)));
    }

    private HomeRates rates(int overrideDays) {
        return rates.computeIfAbsent(overrideDays, days -> HomeRates.of(shape, days));
    }

    /** Of delayed meters with one override. */
    private final class SumsOverStates implements HomeRates.States {
        private final int overrideDays;

        SumsOverStates(int overrideDays) {
            this.overrideDays = overrideDays;
        }

        @Override
        public double hardDays(double callDays, double bedDays) {
            return summedHardDays(meanLitres * bedDays, meanLitres * callDays, meanLitres * bedDays, overrideDays);
        }

        @Override
        public double[] year(double callDays, double bedDays) {
            return HomeStates.mean(states, meanLitres, state ->
                    state.days().delayedYear(meanLitres * callDays, meanLitres * bedDays, overrideDays));
        }
    }
}
