// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.quantity.CapacityUnit;
import dev.brinebook.quantity.Exact;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class StandardTankTest {

    private static final String NAMEPLATES = "/softener/practice-nameplates.csv";
    private static final String BETWEEN = "/softener/worked-nameplates.csv";
    private static final String STANDARD = "/softener/practice-standard-tanks.csv";
    private static final String OTHER = "/softener/worked-tank-resin.csv";

    @ParameterizedTest
    @CsvFileSource(resources = {NAMEPLATES, BETWEEN}, useHeadersInDisplayName = true)
    void knowsTheResinOfANameplate(double grains, String expected, String tolerance) {
        Printed.assertAgrees(expected, tolerance,
                StandardTank.resinLitresOfNameplate(CapacityUnit.GRAIN.toBase(grains)) / Exact.CUBIC_FOOT_LITRES);
    }

    @ParameterizedTest
    @CsvFileSource(resources = STANDARD, useHeadersInDisplayName = true)
    void knowsTheResinOfAStandardTank(double diameter, double height, double cubicFeet) {
        assertEquals(cubicFeet, resinCubicFeet(diameter, height), 1e-9);
        assertEquals(cubicFeet, resinCubicFeet(diameter + 0.5, height - 1), 1e-9, "as measured by tape");
    }

    @ParameterizedTest
    @CsvFileSource(resources = OTHER, useHeadersInDisplayName = true)
    void fillsAnotherTankAsTheNearestStandardTank(double diameter, double height, String expected, String tolerance) {
        Printed.assertAgrees(expected, tolerance, resinCubicFeet(diameter, height));
    }

    @Test
    void readsEveryRow() {
        assertEquals(5, Rows.in(NAMEPLATES));
        assertEquals(7, Rows.in(BETWEEN));
        assertEquals(3, Rows.in(OTHER));
    }

    @Test
    void aLargerNameplateNeverGoesWithLessResin() {
        double last = 0;
        for (int grains = 1_000; grains <= 600_000; grains += 250) {
            double litres = StandardTank.resinLitresOfNameplate(CapacityUnit.GRAIN.toBase(grains));
            assertTrue(litres >= last && litres < 1.07 * grains / 30_000 * Exact.CUBIC_FOOT_LITRES, grains + " gr");
            last = litres;
        }
    }

    @Test
    void refusesWhatIsNoSize() {
        assertThrows(IllegalArgumentException.class, () -> StandardTank.resinLitresOfNameplate(0));
        assertThrows(IllegalArgumentException.class, () -> StandardTank.resinLitresOfTank(Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> StandardTank.resinLitresOfTank(0.2, 0));
    }

    private static double resinCubicFeet(double diameterInches, double heightInches) {
        return StandardTank.resinLitresOfTank(diameterInches * Exact.INCH_METRES, heightInches * Exact.INCH_METRES)
                / Exact.CUBIC_FOOT_LITRES;
    }
}
