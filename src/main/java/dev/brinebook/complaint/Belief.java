// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.complaint;

import java.util.Arrays;
import java.util.Collection;
import java.util.Set;

/** How far each cause is believed: shares that sum to 1. */
public final class Belief {

    private static final double LN_2 = StrictMath.log(2);

    private final double[] shares;

    private Belief(double[] weights) {
        double sum = Arrays.stream(weights).sum();
        shares = Arrays.stream(weights).map(weight -> weight / sum).toArray();
    }

    /** Every one of some causes alike. */
    static Belief evenly(Set<Cause> causes) {
        double[] weights = new double[Cause.values().length];
        causes.forEach(cause -> weights[cause.ordinal()] = 1);
        return new Belief(weights);
    }

    /** Of weights in the order of causes. */
    static Belief of(double[] weights) {
        return new Belief(weights);
    }

    /** After symptoms that were seen, and others that were asked for and not seen. */
    Belief with(Set<Symptom> seen, Set<Symptom> notSeen, SymptomTable.Weights weights) {
        double[] next = shares.clone();
        for (Cause cause : Cause.values()) {
            for (Symptom symptom : seen) {
                next[cause.ordinal()] *= SymptomTable.probability(cause, symptom, weights);
            }
            for (Symptom symptom : notSeen) {
                next[cause.ordinal()] *= 1 - SymptomTable.probability(cause, symptom, weights);
            }
        }
        return new Belief(next);
    }

    /**
     * After observations that do not depend on each other under any cause.
     *
     * <pre>p(c | e) ∝ p(c) Π p(e | c)</pre>
     *
     * <p>Source: Bayes' theorem.
     */
    Belief with(Collection<Observation> observations) {
        double[] next = shares.clone();
        for (Observation observation : observations) {
            for (Cause cause : Cause.values()) {
                next[cause.ordinal()] *= observation.likelihood(cause);
            }
            next = new Belief(next).shares;
        }
        return new Belief(next);
    }

    public double share(Cause cause) {
        return shares[cause.ordinal()];
    }

    /**
     * Entropy, bit.
     *
     * <pre>H = −Σ p log₂ p</pre>
     *
     * <p>Source: by definition.
     */
    public double entropyBits() {
        return entropyBits(shares);
    }

    static double entropyBits(double[] shares) {
        double sum = 0;
        for (double share : shares) {
            sum -= share > 0 ? share * StrictMath.log(share) : 0;
        }
        return sum / LN_2;
    }

    double[] shares() {
        return shares.clone();
    }

    /**
     * Fall of entropy to be expected of a test, bit.
     *
     * <pre>G = H(p) − Σ P(o) H(p | o) = H(o) − Σ p(c) H(o | c)</pre>
     *
     * <p>o outcomes of the test, of probability P(o) = Σ p(c) P(o | c); c causes.
     * Validity: the outcomes of every cause sum to 1.
     * Source: by definition; the second form is the symmetry of mutual information.
     * Deviation: none.
     *
     * @param joint p(c) P(o | c) of each outcome, in the order of causes
     * @param withinBits H(o | c) in the order of causes
     */
    double gainBits(double[][] joint, double[] withinBits) {
        double[] outcomes = Arrays.stream(joint).mapToDouble(row -> Arrays.stream(row).sum()).toArray();
        double within = 0;
        for (int c = 0; c < shares.length; c++) {
            within += shares[c] * withinBits[c];
        }
        return Math.max(0, entropyBits(outcomes) - within);
    }
}
