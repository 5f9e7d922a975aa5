// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import java.util.Arrays;

/** What a use before the day, in lattice points, adds to the sums of a rule on a weekday of one class, as {@link RenewalTable} has them. */
final class RuleSums {

    private double[] waiting = new double[64];
    private double[] hard = new double[64];
    private double[] litres = new double[64];

    /** Chance to still wait after the day. */
    double[] waiting() {
        return waiting;
    }

    /** Chance of a hard day that ends the cycle, or of a bed that lasts where the rule does not call before it is exhausted. */
    double[] hard() {
        return hard;
    }

    /** Litres beyond the bed, or within it under a clock. */
    double[] litres() {
        return litres;
    }

    /**
     * Calculates them for a rule.
     *
     * @param withLitres whether the litres are needed
     * @param counted weights that integrate up to the count; none under a clock
     * @param size lattice points that matter
     */
    void calculate(LatticeDay day, WaitingRule rule, boolean withLitres, double[] counted, int size) {
        reserve(size);
        if (day.mean() == 0) {
            return;
        }
        if (!rule.timed()) {
            day.below(rule.callLitres(), waiting, size);
        }
        if (rule.bedLitres() == Double.POSITIVE_INFINITY) {
            Arrays.fill(hard, 0, size, rule.lasting() ? 0 : 1);
            Arrays.fill(litres, 0, size, rule.timed() ? day.mean() : 0);
            return;
        }
        day.below(rule.bedLitres(), hard, size);
        for (int k = 0; rule.lasting() && k < size; k++) {
            hard[k] = counted[k] * (1 - hard[k]);
        }
        if (withLitres) {
            day.excess(rule.bedLitres(), litres, size);
            weigh(day, rule, counted, size);
        }
    }

    private void weigh(LatticeDay day, WaitingRule rule, double[] counted, int size) {
        for (int k = 0; k < size; k++) {
            boolean usedUp = k * day.step() > rule.bedLitres();
            if (rule.lasting()) {
                litres[k] *= counted[k];
            } else if (rule.timed()) {
                litres[k] = usedUp ? 0 : day.mean() - litres[k];
            } else {
                litres[k] = counted[k] * (usedUp ? day.mean() : litres[k]);
            }
        }
    }

    private void reserve(int size) {
        if (waiting.length < size) {
            waiting = new double[size];
            hard = new double[size];
            litres = new double[size];
        }
    }
}
