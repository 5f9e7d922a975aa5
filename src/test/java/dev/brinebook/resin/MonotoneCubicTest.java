// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class MonotoneCubicTest {

    private static MonotoneCubic curve(String knots) {
        return switch (knots) {
            case "convex" -> MonotoneCubic.through(new double[] {0, 1, 3, 4, 8}, new double[] {0, 0.2, 2, 5, 30});
            case "capacity" -> MonotoneCubic.through(new double[] {0, 6, 8, 10, 15, 20},
                    new double[] {0, 20, 24, 27, 30, 32.8125});
            default -> MonotoneCubic.through(new double[] {0, 1, 2, 3}, new double[] {0, 0.01, 0.99, 1});
        };
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/resin/cross-monotone-cubic.csv", useHeadersInDisplayName = true)
    void agreesWithSciPy(String knots, double at, String expected, String tolerance) {
        Printed.assertAgrees(expected, tolerance, curve(knots).value(at));
    }

    @Test
    void readsEveryCrossRow() {
        assertEquals(27, Rows.in("/resin/cross-monotone-cubic.csv"));
    }

    @Test
    void isTheSameCurveElsewhere() {
        MonotoneCubic moved = MonotoneCubic.through(new double[] {2, 3, 5, 6, 10}, new double[] {7, 7.2, 9, 12, 37});
        for (double at = 0; at <= 8; at += 0.1) {
            assertEquals(curve("convex").value(at) + 7, moved.value(at + 2), 1e-12);
        }
    }

    @RepeatedTest(200)
    void risesBetweenItsKnotsAndInverts(RepetitionInfo repetition) {
        int seed = repetition.getCurrentRepetition();
        Random random = new Random(seed);
        int knots = 3 + random.nextInt(8);
        double[] x = rising(random, knots);
        double[] y = rising(random, knots);
        MonotoneCubic curve = MonotoneCubic.through(x, y);
        double previous = curve.min();
        for (int i = 0; i < 50; i++) {
            double at = previous + (curve.max() - previous) * random.nextDouble() * 0.2;
            assertTrue(curve.value(at) >= curve.value(previous), "seed " + seed);
            assertEquals(curve.value(at), curve.value(curve.inverse(curve.value(at))), 1e-12 * y[knots - 1],
                    "seed " + seed);
            previous = at;
        }
        for (int i = 0; i < knots; i++) {
            assertEquals(y[i], curve.value(x[i]), 1e-12 * y[knots - 1], "seed " + seed);
            assertEquals(x[i], curve.inverse(y[i]), "seed " + seed);
        }
    }

    private static double[] rising(Random random, int count) {
        double[] values = new double[count];
        values[0] = random.nextDouble();
        for (int i = 1; i < count; i++) {
            values[i] = values[i - 1] + 0.01 + Math.abs(random.nextGaussian());
        }
        return values;
    }

    @Test
    void refusesKnotsThatDoNotRiseAndArgumentsOutside() {
        double[] rising = {0, 1, 2};
        assertThrows(IllegalArgumentException.class, () -> MonotoneCubic.through(rising, new double[] {0, 1, 1}));
        assertThrows(IllegalArgumentException.class, () -> MonotoneCubic.through(new double[] {0, 2, 1}, rising));
        assertThrows(IllegalArgumentException.class, () -> MonotoneCubic.through(rising, new double[] {0, 1}));
        assertThrows(IllegalArgumentException.class,
                () -> MonotoneCubic.through(new double[] {0, 1}, new double[] {0, 1}));
        MonotoneCubic curve = MonotoneCubic.through(rising, rising);
        assertThrows(IllegalArgumentException.class, () -> curve.value(2.001));
        assertThrows(IllegalArgumentException.class, () -> curve.inverse(-0.001));
    }

    /** 100.04 °F is 37.8 °C, and 37.800000000000004 in double precision. */
    @Test
    void takesARoundingPastAnEndForTheEnd() {
        MonotoneCubic curve = MonotoneCubic.through(new double[] {1, 20, 37.8}, new double[] {1, 2, 3});
        assertEquals(3, curve.value((100.04 - 32) / 1.8));
        assertEquals(3, curve.value(Math.nextUp(37.8)));
        assertEquals(1, curve.value(Math.nextDown(1.0)));
        assertEquals(37.8, curve.inverse(Math.nextUp(3.0)));
        assertEquals(1, curve.inverse(Math.nextDown(1.0)));
    }
}
