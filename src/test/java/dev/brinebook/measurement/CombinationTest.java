// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.measurement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CombinationTest {

    @ParameterizedTest
    @CsvSource({
            // values | their u | mean | u of the mean | χ² | p | source
            "8.97;8.58;9.23, 0.32;0.69;0.65, 8.96, 0.27, 0.48, 0.79, hand arithmetic: Σ1/u² = 14.23",
            "10;12, 1;1, 11, 0.71, 2, 0.157, χ² with one degree: erfc(1) = 0.157",
            "10, 2, 10, 2, 0, 1, one answer"})
    void weighsByUncertainty(String values, String uncertainties, double mean, double uncertainty, double chiSquare, double probability) {
        double[] x = numbers(values);
        double[] u = numbers(uncertainties);
        Combination combination = Combination.of(x, u);
        assertEquals(mean, combination.mean(x), 0.005);
        assertEquals(chiSquare, combination.chiSquare(), 0.005);
        assertEquals(probability, combination.probability(), 0.005);
        double variance = 0;
        for (int i = 0; i < x.length; i++) {
            variance += Math.pow(combination.weights()[i] * u[i], 2);
        }
        assertEquals(uncertainty, Math.sqrt(variance), 0.005);
        assertTrue(combination.agrees());
    }

    @ParameterizedTest
    @CsvSource({
            // upper 5 % points of χ², printed in every statistical table
            "3.841, 2", "5.991, 3", "7.815, 4"})
    void knowsTheTable(double chiSquare, int answers) {
        assertEquals(0.05, Combination.probability(chiSquare, answers), 5e-5);
    }

    @Test
    void leavesOutTheOneThatContradicts() {
        double[] x = {9, 9.2, 14};
        Combination combination = Combination.of(x, new double[] {0.3, 0.3, 0.5});
        assertFalse(combination.agrees());
        assertEquals(OptionalInt.of(2), combination.leftOut());
        assertEquals(9.1, combination.mean(x), 1e-9);
        assertTrue(combination.hasMean());
    }

    @Test
    void averagesNothingWhereTwoContradict() {
        assertFalse(Combination.of(new double[] {9, 14}, new double[] {0.3, 0.5}).hasMean());
        assertFalse(Combination.of(new double[] {9, 14, 19}, new double[] {0.3, 0.5, 0.4}).hasMean());
    }

    private static double[] numbers(String list) {
        return Arrays.stream(list.split(";")).mapToDouble(Double::parseDouble).toArray();
    }
}
