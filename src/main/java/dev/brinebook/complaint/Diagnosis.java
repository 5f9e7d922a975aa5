// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.complaint;

import dev.brinebook.guard.Guard;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What is wrong with a softener, by Bayes' theorem over a closed list of causes, and what to find out next.
 *
 * @param belief in each cause
 * @param ranked every possible cause, most likely first; those that can hurt before them, unless they are hardly possible
 * @param verdict how far the search has come
 * @param next tests that are worth their minutes, first the one to make
 */
public record Diagnosis(Belief belief, List<Cause> ranked, Verdict verdict, List<SiteTest.Advice> next) {

    /** Share from which a cause is taken as found, once its proof is there. */
    public static final double ASSUMED_FOUND_SHARE = 0.9;
    /** Share from which it is called likely. */
    public static final double ASSUMED_LIKELY_SHARE = 0.5;
    /** Share from which a cause that can hurt comes first. */
    public static final double ASSUMED_HURTS_SHARE = 0.05;
    /** Deviation from which a number contradicts a cause, in standard uncertainties. Source: [GUM] 6.3.3, about 95 %. */
    public static final double CONTRADICTS = 2;
    /** Least standard uncertainty of a number over what the sound softener shows: what the design itself is not known by. */
    public static final double ASSUMED_LEAST_UNCERTAINTY_SHARE = 0.02;

    /** How far the search has come. */
    public enum Verdict {
        /** A cause is almost certain, its proof was seen, and no number contradicts it. */
        FOUND,
        /** A cause is more likely than all others together. */
        LIKELY,
        /** Several are possible. */
        OPEN,
        /** What was measured fits no cause of the list. */
        UNEXPLAINED
    }

    /**
     * A complaint.
     *
     * @param seen symptoms
     * @param notSeen symptoms that were asked for and are not there
     * @param weights of the classes of symptoms
     * @param metered whether a meter starts the regenerations
     * @param unsafe whether raw water is unsafe to drink, so that raw water past the softener can hurt
     * @param observations each of another sign
     */
    public record Complaint(Set<Symptom> seen, Set<Symptom> notSeen, SymptomTable.Weights weights, boolean metered, boolean unsafe,
            List<Observation> observations) {

        public Complaint {
            seen = Set.copyOf(seen);
            notSeen = Set.copyOf(notSeen);
            observations = List.copyOf(observations);
            Guard.within(observations.stream().map(Observation::sign).distinct().count(), observations.size(), observations.size(),
                    "different signs");
        }

        Set<Sign> known() {
            Set<Sign> known = EnumSet.noneOf(Sign.class);
            observations.forEach(observation -> known.add(observation.sign()));
            return known;
        }
    }

    /**
     * What a cause predicts of a sign that was observed, or that would prove it.
     *
     * @param sign of which
     * @param low of the prediction, over what the sound softener shows; of a look the probability of yes
     * @param high likewise
     * @param observed what was seen; empty where the proof is still missing
     * @param deviation how far the number lies outside of the prediction, in standard uncertainties; of a look 0
     * @param met whether it agrees
     * @param decides whether the cause is refused where it does not: a number, or its proof
     */
    public record Balance(Sign sign, double low, double high, Optional<Observation> observed, double deviation, boolean met,
            boolean decides) {

        /** Whether what was seen refuses the cause. */
        boolean refuses() {
            return decides && observed.isPresent() && !met;
        }
    }

    public Diagnosis {
        ranked = List.copyOf(ranked);
        next = List.copyOf(next);
    }

    public static Diagnosis of(Complaint complaint) {
        Set<Cause> possible = CauseTable.possible(complaint.metered);
        Belief belief = Belief.evenly(possible).with(complaint.seen, complaint.notSeen, complaint.weights)
                .with(complaint.observations);
        List<Cause> ranked = possible.stream().sorted(Comparator.comparing((Cause cause) -> !(canHurt(cause, complaint.unsafe)
                && belief.share(cause) >= ASSUMED_HURTS_SHARE)).thenComparing(Comparator.comparingDouble(belief::share).reversed()))
                .toList();
        Cause top = possible.stream().max(Comparator.comparingDouble(belief::share)).orElseThrow();
        return new Diagnosis(belief, ranked, verdict(top, belief, complaint.observations), next(top, belief, complaint.known()));
    }

    /** Whether a cause can hurt somebody, given whether raw water is unsafe to drink. */
    public static boolean canHurt(Cause cause, boolean unsafe) {
        return CauseTable.of(cause).hurts() || unsafe && letsRawWaterPass(cause);
    }

    /** Whether raw water reaches the tap. */
    public static boolean letsRawWaterPass(Cause cause) {
        return cause == Cause.BYPASS_LEAK || cause == Cause.HOT_SIDE_HARD || cause == Cause.SEAL_WORN || cause == Cause.DISTRIBUTOR_BROKEN;
    }

    /** The cause that is most likely. */
    public Cause top() {
        return ranked.stream().max(Comparator.comparingDouble(belief::share)).orElseThrow();
    }

    private static Verdict verdict(Cause top, Belief belief, List<Observation> observations) {
        List<Balance> balances = balances(top, observations);
        if (top == Cause.OTHER || balances.stream().anyMatch(Balance::refuses)) {
            return Verdict.UNEXPLAINED;
        }
        boolean proved = balances.stream().noneMatch(balance -> balance.observed.isEmpty());
        if (belief.share(top) >= ASSUMED_FOUND_SHARE && proved) {
            return Verdict.FOUND;
        }
        return belief.share(top) >= ASSUMED_LIKELY_SHARE ? Verdict.LIKELY : Verdict.OPEN;
    }

    /** Once a cause is almost certain, its proof comes first. */
    private static List<SiteTest.Advice> next(Cause top, Belief belief, Set<Sign> known) {
        List<SiteTest.Advice> advice = SiteTest.advice(belief, known);
        Optional<SiteTest> proof = CauseTable.of(top).proof().filter(sign -> !known.contains(sign))
                .map(SiteTest::showing);
        if (belief.share(top) < ASSUMED_FOUND_SHARE || proof.isEmpty()) {
            return advice;
        }
        SiteTest.Advice first = SiteTest.adviceOn(proof.get(), belief, known);
        List<SiteTest.Advice> all = new ArrayList<>(List.of(first));
        advice.stream().filter(other -> other.test() != first.test()).forEach(all::add);
        return all;
    }

    /** What a cause predicts of its proof, of every number, and of the looks that it is named for or that contradict it. */
    public static List<Balance> balances(Cause cause, Collection<Observation> observations) {
        Optional<Sign> proof = CauseTable.of(cause).proof();
        return Arrays.stream(Sign.values()).sorted(Comparator.comparing(sign -> !proof.equals(Optional.of(sign))))
                .flatMap(sign -> balance(cause, sign, observations.stream().filter(one -> one.sign() == sign).findFirst(),
                        proof.equals(Optional.of(sign))).stream()).toList();
    }

    /** What a cause predicts of a sign, whether it was observed or not. */
    public static Balance expected(Cause cause, Sign sign) {
        return balance(cause, sign, Optional.empty(), true).orElseThrow();
    }

    private static Optional<Balance> balance(Cause cause, Sign sign, Optional<Observation> found, boolean proof) {
        Optional<Observation> known = found.filter(Observation::isKnown);
        if (known.isEmpty() && !proof) {
            return Optional.empty();
        }
        if (sign.isLook()) {
            double yes = SignTable.look(sign, cause, true);
            boolean met = known.isEmpty() || SignTable.look(sign, cause, known.get().yes()) >= 1 / 2.0;
            return proof || !met || SignTable.isNamed(sign, cause) ? Optional.of(new Balance(sign, yes, yes, known, 0, met, proof))
                    : Optional.empty();
        }
        Prediction prediction = SignTable.prediction(sign, cause);
        double deviation = known.isEmpty() ? 0 : prediction.distance(known.get().value()) / known.get().uncertainty();
        return Optional.of(new Balance(sign, prediction.low(), prediction.high(), known, deviation, deviation <= CONTRADICTS,
                true));
    }
}
