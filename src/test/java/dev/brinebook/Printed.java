// SPDX-License-Identifier: Apache-2.0
package dev.brinebook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;

/** Holds a computed number against a printed one: the tolerance is the resolution of the print, unless a wider one is justified. */
public final class Printed {

    private Printed() {
    }

    /**
     * Asserts that {@code actual} rounds to {@code expected} as printed, or lies within {@code tolerance} of it.
     *
     * @param expected the number as its source prints it; the last digit printed sets the default tolerance
     * @param tolerance absolute, or relative when it ends in {@code %}; null or blank for half a unit of the last digit
     */
    public static void assertAgrees(String expected, String tolerance, double actual) {
        BigDecimal printed = new BigDecimal(expected.strip());
        assertEquals(printed.doubleValue(), actual, allowed(printed, tolerance), "printed " + expected);
    }

    private static double allowed(BigDecimal printed, String tolerance) {
        if (tolerance == null || tolerance.isBlank()) {
            return printed.ulp().doubleValue() / 2 * (1 + 1e-9);
        }
        String text = tolerance.strip();
        if (text.endsWith("%")) {
            double share = Double.parseDouble(text.substring(0, text.length() - 1).strip()) / 100;
            return share * Math.abs(printed.doubleValue());
        }
        return Double.parseDouble(text);
    }
}
