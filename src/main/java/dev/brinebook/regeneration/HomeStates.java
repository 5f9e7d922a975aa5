// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.CancellationToken;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.UseChange;
import dev.brinebook.household.UseModel;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * All states in which a home may be, as meters see it, which go by each day, or as clocks do, which go by sums of days.
 *
 * @param all by scatter, the highest level first
 * @param ofUsualScatter those of the middle scatter, as if there were no other
 */
record HomeStates(List<HomeState> all, List<HomeState> ofUsualScatter) {

    /** Nodes and weights of the scatter. */
    static final Levels SCATTERS = Levels.FEW;

    private static HomeStates of(List<HomeState> all) {
        return new HomeStates(all, alone(all, HomeState::isUsualScatter));
    }

    private static List<HomeState> alone(List<HomeState> all, Predicate<HomeState> which) {
        double share = all.stream().filter(which).mapToDouble(HomeState::weight).sum();
        return all.stream().filter(which).map(state -> state.alone(share)).toList();
    }

    /** The states of a home as meters see it. */
    static HomeStates ofMeters(UseModel model) {
        return of(model, false, Levels.ofMeters(model.change(), model.cv()), MeterRates.LARGEST_CV);
    }

    /** The states of a home as clocks see it. */
    static HomeStates ofClocks(UseModel model) {
        return of(model, true, Levels.fine(model.change()), ClockRates.LARGEST_CV);
    }

    /** The states over which years with a meter spread, more of them than their mean needs. */
    static HomeStates ofYears(UseModel model) {
        return of(model, false, Levels.fine(model.change()), MeterRates.LARGEST_CV);
    }

    /** The states at {@code wanted} levels, or at few of them where the scatter is above the largest one. */
    private static HomeStates of(UseModel model, boolean byClock, Levels wanted, double largestCv) {
        UseChange change = model.change();
        boolean wanders = change.levelSpread() > 0;
        Levels levels = wanders && model.cv() > largestCv ? Levels.FEW : wanted;
        double[] factors = levels.factors(Levels.spread(change, byClock));
        boolean one = change.scatterSpread() == 0 || !SteadyRun.isQuick(model);
        boolean ofSums = byClock && change.dayCorrelation() != 0;
        UseModel seen = wanders ? model.withSeasonsOfMonths() : model;
        List<HomeState> states = new ArrayList<>();
        for (int i = SCATTERS.count() - 1; i >= 0; i--) {
            if (!one || SCATTERS.isUsual(i)) {
                double scatter = Math.max(wanders ? LatticeDay.LEAST_CV : 0,
                        model.cv() * StrictMath.exp(SCATTERS.node(i) * change.scatterSpread()));
                UseModel scattered = scattering(seen, ofSums ? scatter * change.scatterOfSums() : scatter);
                SteadyRun days = one && !ofSums ? SteadyRun.of(scattered) : SteadyRun.coarse(scattered);
                double weight = one ? 1 : SCATTERS.weight(i);
                double below = weight;
                for (int level = 0; level < factors.length; level++) {
                    double share = weight * levels.weight(level);
                    below = level == factors.length - 1 ? 0 : below - share;
                    states.add(new HomeState(share, below, SCATTERS.isUsual(i), levels.isUsual(level), levels.isOuter(level),
                            factors[level], days.times(factors[level])));
                }
            }
        }
        return of(states);
    }

    private static UseModel scattering(UseModel model, double cv) {
        return new UseModel(model.means(), cv == model.cv() ? model.variation()
                : DayVariation.ofCv(Math.min(DayVariation.MAX_CV, cv)), model.monthFactors(), model.occupancy());
    }

    /** The same with the use of every day multiplied by {@code factor}. */
    HomeStates times(double factor) {
        return of(all.stream().map(state -> state.times(factor)).toList());
    }

    /** The same while the level stays at its mean. */
    HomeStates atUsualLevel() {
        return of(alone(all, HomeState::isUsualLevel).stream().map(HomeState::atMean).toList());
    }

    boolean hasOneLevel() {
        return ofUsualScatter.size() == 1;
    }

    /** The mean over all states. */
    double mean(ToDoubleFunction<HomeState> value) {
        return mean(all, value);
    }

    /** The mean over some. */
    static double mean(List<HomeState> states, ToDoubleFunction<HomeState> value) {
        double sum = 0;
        for (HomeState state : states) {
            sum += state.weight() * value.applyAsDouble(state);
        }
        return sum;
    }

    /** The mean over states of {@link SteadyRun#SUMS} sums of a year, with hard litres in mean days of the home. */
    static double[] mean(List<HomeState> states, double meanLitres, Function<HomeState, double[]> sums) {
        CancellationToken.obey();
        double[] mean = new double[SteadyRun.SUMS];
        for (HomeState state : states) {
            double[] of = sums.apply(state);
            for (int i = 0; i < mean.length; i++) {
                mean[i] += state.weight() * of[i];
            }
        }
        mean[3] /= meanLitres;
        return mean;
    }

    /** The mean of years. */
    static YearlyTotals meanYear(List<HomeState> states, Function<HomeState, YearlyTotals> year) {
        double[] weights = new double[states.size()];
        List<YearlyTotals> years = new ArrayList<>(weights.length);
        for (HomeState state : states) {
            weights[years.size()] = state.weight();
            years.add(year.apply(state));
        }
        return YearlyTotals.mean(weights, years);
    }
}
