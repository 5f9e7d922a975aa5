// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.complaint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Bayes' theorem and expected information, by a worked table. */
class BeliefTest {

    private static final int CAUSES = 9;

    private static Belief hardAlways() {
        double[] weights = new double[Cause.values().length];
        Arrays.fill(weights, 0, 3, 6);
        Arrays.fill(weights, 3, CAUSES, 2);
        return Belief.of(weights);
    }

    /** Of weights 3 times 6 and 6 times 2: 0.2 and 0.0667 each. Worked by hand: 3 · 0.2 log₂ 5 + 6 · 0.0667 log₂ 15. */
    @Test
    void entropyOfTheCausesOfHardWater() {
        assertEquals(2.956, hardAlways().entropyBits(), 5e-4);
    }

    /** Causes: bypass, salt, no draw; controller, setting, meter, resin, seal, raw water. Common practice; gains worked by hand. */
    @ParameterizedTest
    @CsvSource({
        "salt level unchanged,     1, .05 .90 .90 .90 .10 .60 .05 .05 .05, 0.570, 0.570",
        "salt probe,               2, .05 .95 .05 .05 .05 .05 .05 .05 .05, 0.492, 0.246",
        "clock right count rises,  2, .95 .95 .95 .05 .95 .30 .95 .95 .95, 0.292, 0.146",
        "display counts at a tap,  3, .70 .97 .97 .30 .97 .03 .97 .97 .97, 0.327, 0.109",
        "tap above outlet,         5, .95 .03 .03 .03 .03 .03 .03 .03 .03, 0.536, 0.107",
        "raw above setting,        5, .10 .10 .10 .10 .95 .10 .10 .10 .95, 0.303, 0.061",
        "suction below band,      10, .03 .03 .95 .10 .03 .03 .03 .05 .03, 0.523, 0.052",
        "soft after hand start,   90, .95 .10 .10 .90 .95 .95 .30 .05 .90, 0.577, 0.006"})
    void expectedInformation(String test, double minutes, String yes, double bits, double bitsPerMinute) {
        double gain = gain(hardAlways(), Arrays.stream(yes.split(" ")).mapToDouble(Double::parseDouble).toArray());
        assertEquals(bits, gain, 5.1e-4, test);
        assertEquals(bitsPerMinute, gain / minutes, 5.1e-4, test);
    }

    private static double gain(Belief belief, double[] yes) {
        double[] shares = belief.shares();
        double[][] joint = new double[2][shares.length];
        double[] within = new double[shares.length];
        for (int c = 0; c < CAUSES; c++) {
            joint[0][c] = shares[c] * yes[c];
            joint[1][c] = shares[c] * (1 - yes[c]);
            within[c] = Belief.entropyBits(new double[] {yes[c], 1 - yes[c]});
        }
        return belief.gainBits(joint, within);
    }

    /** The same weights come from the table of symptoms: often 6, sometimes 2. */
    @Test
    void classesOfSymptomsAreWeights() {
        Belief belief = Belief.evenly(Set.of(Cause.BYPASS_LEAK, Cause.CLOCK_LOST)).with(Set.of(Symptom.HARD_ALWAYS), Set.of(),
                SymptomTable.Weights.USUAL);
        assertEquals(0.75, belief.share(Cause.BYPASS_LEAK), 1e-12);
        Belief absent = Belief.evenly(Set.of(Cause.BYPASS_LEAK, Cause.CLOCK_LOST)).with(Set.of(), Set.of(Symptom.HARD_ALWAYS),
                SymptomTable.Weights.USUAL);
        assertEquals(0.4 / 1.2, absent.share(Cause.BYPASS_LEAK), 1e-12);
    }

    /** Outcomes of each sign are a distribution under each cause, and every cause has a row in every table. */
    @ParameterizedTest
    @EnumSource(Sign.class)
    void outcomesOfASignSumToOne(Sign sign) {
        for (Cause cause : Cause.values()) {
            assertEquals(1, Arrays.stream(SignTable.outcomesOf(sign)).mapToDouble(row -> row[cause.ordinal()]).sum(), 1e-9,
                    () -> sign + " " + cause);
            assertTrue(CauseTable.of(cause).factors().size() == CauseTable.Factor.values().length);
        }
    }

    /** A density integrates to 1, and below any number to the probability of it. */
    @Test
    void densityAndProbabilityAgree() {
        Prediction prediction = Prediction.of("0..0.1@0.3+0.4..1@0.7");
        double sum = 0;
        double step = 1e-4;
        for (int i = 0; i < 15_000; i++) {
            sum += step * prediction.density(-1 + (i + 1 / 2.0) * step, 0.05);
        }
        assertEquals(prediction.below(0.5, 0.05), sum, 1e-6);
        assertEquals(1, prediction.below(3, 0.05), 1e-9);
        assertEquals(0.3, prediction.distance(0.1 + 0.15) / 0.5, 1e-12);
    }
}
