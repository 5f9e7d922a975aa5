// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.verdict;

import dev.brinebook.regeneration.LongRun;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.SoftenerSettings;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Uncertainty of the saving of a step, since level of use and hardness are not known exactly and the settings
 * stay unchanged: a normal distribution by its standard deviation over three levels and three hardnesses.
 *
 * <pre>s² = Σ w(i) v(j) (S(i, j) - m)²,   m = Σ w(i) v(j) S(i, j),   P(pays) = Φ((S - I / f) / s)</pre>
 *
 * <p>S saving of a year; w, v Gauss-Hermite weights of three nodes; I first cost, f present value of a saving of one a year.
 * Hardness is within ± u of the test with equal chance anywhere, a standard deviation of u / √3.
 * Source: [ABRAMOWITZ-STEGUN] 25.4.46; [GUM] for a reading that is known to a step.
 */
final class Spread {

    private static final double NODE = Math.sqrt(3);
    private static final double[] NODES = {-NODE, 0, NODE};
    private static final double[] WEIGHTS = {1 / 6.0, 2 / 3.0, 1 / 6.0};

    /** A state in which the case may be. */
    private record State(DesignConditions duty, double weight) {
    }

    private final List<State> states = new ArrayList<>();
    private final RunningCost cost;

    Spread(DesignConditions duty, RunningCost cost) {
        this.cost = cost;
        double share = Math.min(0.5, duty.water().hardnessUncertaintyMgPerL() / duty.loadMgPerL()) / NODE;
        for (LongRun.Season season : duty.longRun().seasons()) {
            DesignConditions there = duty.atLevel(season.level());
            if (share == 0) {
                states.add(new State(there, season.share()));
            } else {
                for (int i = 0; i < NODES.length; i++) {
                    states.add(new State(there.with(1 + share * NODES[i], 1), season.share() * WEIGHTS[i]));
                }
            }
        }
    }

    /** What a setup costs in each state. */
    double[] costs(SoftenerSettings setup) {
        return states.stream().mapToDouble(state -> {
            YearlyTotals year = state.duty().year(setup.policy(), setup.regeneration(state.duty().water().temperatureCelsius()));
            return cost.ofYear(year);
        }).toArray();
    }

    /** Standard deviation of what one saves over the other. */
    double ofSaving(double[] costs, double[] otherCosts) {
        double mean = 0;
        for (int i = 0; i < costs.length; i++) {
            mean += states.get(i).weight() * (otherCosts[i] - costs[i]);
        }
        double squares = 0;
        for (int i = 0; i < costs.length; i++) {
            double off = otherCosts[i] - costs[i] - mean;
            squares += states.get(i).weight() * off * off;
        }
        return Math.sqrt(squares);
    }

    /** Chance that a saving is more than {@code needed}. */
    static double chance(double saving, double standardDeviation, double needed) {
        if (!(standardDeviation > 1e-9 * Math.max(1, Math.abs(saving)))) {
            return saving > needed ? 1 : 0;
        }
        return new NormalDistribution().cumulativeProbability((saving - needed) / standardDeviation);
    }
}
