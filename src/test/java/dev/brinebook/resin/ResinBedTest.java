// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.FlowUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ResinBedTest {

    private static final ResinBed DAVIS = crossedBy(275_000 / 1440.0, 408 / 24.0);
    private static final ResinBed NARROW =
            new ResinBed(850 * Math.PI / 4 * 0.25 * 0.25, 0.25, new ResinBead(0.65, 0.38, 1280));

    @ParameterizedTest
    @CsvFileSource(resources = "/resin/published-bed.csv", useHeadersInDisplayName = true)
    void agreesWithTheLiterature(String quantity, String expected, String tolerance) {
        double tenGpm = FlowUnit.GPM.toBase(10);
        Printed.assertAgrees(expected, tolerance, switch (quantity) {
            case "davisArea" -> DAVIS.areaSquareMetres();
            case "davisDiameter" -> DAVIS.tankDiameterMetres();
            case "davisDepth" -> DAVIS.depthMetres();
            case "velocity" -> NARROW.velocityMetresPerHour(tenGpm);
            case "drop" -> PressureDrop.pascals(NARROW, tenGpm, 10);
            default -> PressureDrop.pascals(NARROW, tenGpm, 10) / Exact.PSI_PASCALS;
        });
    }

    @Test
    void readsEveryRow() {
        assertEquals(6, Rows.in("/resin/published-bed.csv"));
    }

    /** One cubic foot in a tank of 9 by 48 in (common practice): 12³/(π/4·9²) = 27.162 in deep, 20.838 in free. */
    @Test
    void aStandardTankHasFreeboard() {
        ResinBed bed = new ResinBed(Exact.CUBIC_FOOT_LITRES, 9 * Exact.INCH_METRES);
        Printed.assertAgrees("27.162", "", bed.depthMetres() / Exact.INCH_METRES);
        Printed.assertAgrees("0.767", "", bed.freeboardShare(48 * Exact.INCH_METRES));
        assertTrue(bed.hasFreeboardFor(0.5, 48 * Exact.INCH_METRES));
        assertFalse(bed.hasFreeboardFor(0.8, 48 * Exact.INCH_METRES));
        assertFalse(bed.hasFreeboardFor(0.1, 40 * Exact.INCH_METRES), "47 % is below the guide");
        assertTrue(bed.depthMetres() >= ResinBed.GUIDE_MIN_DEPTH_METRES);
        assertThrows(IllegalArgumentException.class, () -> bed.freeboardShare(0.6));
    }

    /** By hand: 940 L at 94 L/min take 10 minutes, of which the void share is spent outside of the beads. */
    @Test
    void computesTheContactTime() {
        assertEquals(10, DAVIS.emptyBedContactMinutes(94), 1e-12);
        assertEquals(10 * DAVIS.bead().voidShare(), DAVIS.voidContactMinutes(94), 1e-12);
        double footRadius = 6 * Exact.INCH_METRES;
        double litresPerInch = 1_000 * Math.PI * footRadius * footRadius * Exact.INCH_METRES;
        assertTrue(new ResinBed(24.1 * litresPerInch, 2 * footRadius).hasGuideDepth(), "24 in: common practice");
        assertFalse(new ResinBed(23.9 * litresPerInch, 2 * footRadius).hasGuideDepth());
    }

    @Test
    void flowAndVelocityAreInverse() {
        assertEquals(7.5, DAVIS.flowLitresPerMinute(DAVIS.velocityMetresPerHour(7.5)), 1e-12);
        assertEquals(60 * 7.5 / 940, DAVIS.bedVolumesPerHour(7.5), 1e-12);
        assertEquals(7.5, DAVIS.flowLitresPerMinuteOfBedVolumes(DAVIS.bedVolumesPerHour(7.5)), 1e-12);
    }

    @Test
    void refusesBedsAndBeadsOutsideTheirLimits() {
        assertThrows(IllegalArgumentException.class, () -> new ResinBed(0.5, 0.25));
        assertThrows(IllegalArgumentException.class, () -> new ResinBed(28, 3));
        assertThrows(IllegalArgumentException.class, () -> new ResinBead(0.39, 0.38, 1280));
        assertThrows(IllegalArgumentException.class, () -> new ResinBead(0.6, 0.51, 1280));
        assertThrows(IllegalArgumentException.class, () -> new ResinBead(0.6, 0.38, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> DAVIS.velocityMetresPerHour(-1));
        assertThrows(IllegalArgumentException.class, () -> DAVIS.flowLitresPerMinute(-1));
        assertThrows(IllegalArgumentException.class, () -> DAVIS.bedVolumesPerHour(-1));
    }

    /** 940 L in the tank that a flow crosses at the velocity that the worked example asks for. */
    private static ResinBed crossedBy(double flowLitresPerMinute, double velocityMetresPerHour) {
        double areaSquareMetres = flowLitresPerMinute * 60 / 1000 / velocityMetresPerHour;
        return new ResinBed(940, Math.sqrt(4 * areaSquareMetres / Math.PI));
    }
}
