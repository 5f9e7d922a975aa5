// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.quantity.SurfaceFlowUnit;
import dev.brinebook.water.WaterProperties;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class BackwashTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/resin/cross-backwash.csv", useHeadersInDisplayName = true)
    void agreesWithOtherPrograms(String quantity, double temperatureCelsius, String expected, String tolerance) {
        ResinBead bead = new ResinBead(0.60, 0.38, 1280);
        WaterProperties water = WaterProperties.at(temperatureCelsius);
        double terminal = Backwash.terminalVelocityMetresPerSecond(bead, water);
        Printed.assertAgrees(expected, tolerance, switch (quantity) {
            case "velocity" -> Backwash.velocityMetresPerHour(bead, 0.5, temperatureCelsius);
            case "terminal" -> 1000 * terminal;
            case "reynolds" -> water.densityKilogramsPerCubicMetre() * terminal * 0.60e-3
                    / water.viscosityPascalSeconds();
            default -> Backwash.hindranceExponent(bead, water);
        });
    }

    @Test
    void readsEveryRow() {
        assertEquals(18, Rows.in("/resin/cross-backwash.csv"));
    }

    /** Davis, Water and Wastewater Engineering, table 8-2: 12 to 20 m/h; Ten States 4.4.2: 6 to 8 gpm/ft². */
    @Test
    void fallsInTheTextbookBandsForOrdinaryWater() {
        double cool = Backwash.velocityMetresPerHour(ResinBead.DEFAULT, Backwash.TARGET_EXPANSION_SHARE, 10);
        double warm = Backwash.velocityMetresPerHour(ResinBead.DEFAULT, Backwash.TARGET_EXPANSION_SHARE, 25);
        assertTrue(cool > 12 && warm < 20);
        double mild = Backwash.velocityMetresPerHour(ResinBead.DEFAULT, Backwash.TARGET_EXPANSION_SHARE, 20);
        double gpmPerSquareFoot = SurfaceFlowUnit.GPM_PER_SQUARE_FOOT.fromBase(mild);
        assertTrue(gpmPerSquareFoot > 6 && gpmPerSquareFoot < 8);
    }

    @RepeatedTest(100)
    void expansionRisesWithTheUpflowFallsWithWarmthAndInverts(RepetitionInfo repetition) {
        int seed = repetition.getCurrentRepetition();
        Random random = new Random(seed);
        ResinBead bead = new ResinBead(0.4 + 0.8 * random.nextDouble(), 0.3 + 0.2 * random.nextDouble(),
                1150 + 200 * random.nextDouble());
        double celsius = 59 * random.nextDouble();
        double share = 0.02 + 1.9 * random.nextDouble();
        double velocity = Backwash.velocityMetresPerHour(bead, share, celsius);
        assertEquals(share, Backwash.expansionShare(bead, velocity, celsius).value(), 1e-9, "seed " + seed);
        assertTrue(Backwash.expansionShare(bead, velocity * 1.01, celsius).value() > share, "seed " + seed);
        assertTrue(Backwash.expansionShare(bead, velocity, celsius + 1).value() < share, "seed " + seed);
    }

    @Test
    void aGentleUpflowLeavesTheBedSettledAndAViolentOneEmptiesTheTank() {
        ResinBead bead = ResinBead.DEFAULT;
        double lifting = Backwash.velocityMetresPerHour(bead, 0, 15);
        assertEquals(0, Backwash.expansionShare(bead, 0, 15).value());
        assertEquals(0, Backwash.expansionShare(bead, 0.99 * lifting, 15).value());
        assertTrue(Backwash.expansionShare(bead, 1.01 * lifting, 15).value() > 0);
        double falling = 3600 * Backwash.terminalVelocityMetresPerSecond(bead, WaterProperties.at(15));
        assertEquals(NoResultReason.RESIN_CARRIED_OUT, Backwash.expansionShare(bead, falling, 15).reason());
        assertThrows(IllegalArgumentException.class, () -> Backwash.expansionShare(bead, -1, 15));
        assertThrows(IllegalArgumentException.class, () -> Backwash.velocityMetresPerHour(bead, 2.1, 15));
    }

    @Test
    void everyBeadAndTemperatureAllowedStaysInsideTheValidity() {
        for (double diameter : new double[] {ResinBead.MIN_DIAMETER_MILLIMETRES, ResinBead.MAX_DIAMETER_MILLIMETRES}) {
            for (double density : new double[] {ResinBead.MIN_WET_DENSITY_KILOGRAMS_PER_CUBIC_METRE,
                    ResinBead.MAX_WET_DENSITY_KILOGRAMS_PER_CUBIC_METRE}) {
                for (double celsius : new double[] {0, 60}) {
                    double exponent = Backwash.hindranceExponent(new ResinBead(diameter, 0.38, density),
                            WaterProperties.at(celsius));
                    assertTrue(exponent > 2.39 && exponent < 4.45, "Richardson and Zaki's range for 1 < Re < 500");
                }
            }
        }
    }
}
