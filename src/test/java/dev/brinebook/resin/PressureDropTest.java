// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.water.WaterProperties;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class PressureDropTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/resin/cross-pressure-drop.csv", useHeadersInDisplayName = true)
    void agreesWithAnotherLibrary(double diameterMillimetres, double voidShare, double velocityMetresPerHour,
            double densityKilogramsPerCubicMetre, double viscosityPascalSeconds, String expected, String tolerance) {
        Printed.assertAgrees(expected, tolerance, PressureDrop.pascalsPerMetre(
                new Packing(diameterMillimetres, voidShare), velocityMetresPerHour,
                new WaterProperties(densityKilogramsPerCubicMetre, viscosityPascalSeconds)));
    }

    @Test
    void readsEveryRow() {
        assertEquals(6, Rows.in("/resin/cross-pressure-drop.csv"));
    }

    @RepeatedTest(100)
    void risesWithFlowFallsWithWarmthAndInverts(RepetitionInfo repetition) {
        int seed = repetition.getCurrentRepetition();
        Random random = new Random(seed);
        ResinBed bed = new ResinBed(10 + 90 * random.nextDouble(), 0.2 + 0.3 * random.nextDouble(),
                new ResinBead(0.4 + 0.8 * random.nextDouble(), 0.3 + 0.2 * random.nextDouble(), 1280));
        double flow = 1 + 60 * random.nextDouble();
        double celsius = 59 * random.nextDouble();
        double drop = PressureDrop.pascals(bed, flow, celsius);
        assertTrue(PressureDrop.pascals(bed, flow * 1.01, celsius) > drop, "seed " + seed);
        assertTrue(PressureDrop.pascals(bed, flow, celsius + 1) < drop, "seed " + seed);
        assertEquals(flow, PressureDrop.flowLitresPerMinute(bed, drop, celsius), 1e-9 * flow, "seed " + seed);
    }

    @Test
    void stillWaterLosesNothing() {
        ResinBed bed = new ResinBed(28, 0.23);
        assertEquals(0, PressureDrop.pascals(bed, 0, 10));
        assertEquals(0, PressureDrop.flowLitresPerMinute(bed, 0, 10));
        assertThrows(IllegalArgumentException.class, () -> PressureDrop.pascals(bed, -1, 10));
    }
}
