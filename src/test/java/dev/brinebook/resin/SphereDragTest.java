// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class SphereDragTest {

    private static final String CROSS = "/resin/cross-sphere-drag.csv";

    @ParameterizedTest
    @CsvFileSource(resources = CROSS, useHeadersInDisplayName = true)
    void agreesWithALibraryAndWithMeasurements(double reynoldsNumber, String expected, String tolerance) {
        Printed.assertAgrees(expected, tolerance, SphereDrag.coefficient(reynoldsNumber));
    }

    @Test
    void readsEveryRow() {
        assertEquals(11, Rows.in(CROSS));
    }

    /** Stokes: 24 / Re as Re goes to 0. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 1e-5, 1e-4, 1e-3})
    void isStokesDragInCreepingFlow(double reynoldsNumber) {
        assertEquals(24 / reynoldsNumber, SphereDrag.coefficient(reynoldsNumber), 0.001 * 24 / reynoldsNumber);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, 2.1e5, Double.NaN})
    void refusesWhatTheLawDoesNotReach(double reynoldsNumber) {
        assertThrows(IllegalArgumentException.class, () -> SphereDrag.coefficient(reynoldsNumber));
    }
}
