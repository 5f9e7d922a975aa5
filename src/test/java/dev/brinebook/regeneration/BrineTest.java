// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.quantity.Exact;
import dev.brinebook.resin.Salt;
import dev.brinebook.water.WaterProperties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;

class BrineTest {

    private static final double POUNDS_PER_GALLON = Exact.POUND_KILOGRAMS / Exact.US_GALLON_LITRES;

    @ParameterizedTest
    @CsvFileSource(resources = "/regeneration/published-brine.csv", useHeadersInDisplayName = true)
    void agreesWithTheTables(Salt salt, String quantity, double input, String expected, String tolerance) {
        Printed.assertAgrees(expected, tolerance, switch (quantity) {
            case "share" -> 100 * Brine.saturatedSaltShare(salt, input);
            case "perWater" -> 100 * Brine.saltKilogramsPerKilogramWater(salt, input);
            case "density" -> Brine.densityKilogramsPerCubicMetre(salt, input / 100);
            case "perBrine" -> Brine.saltKilogramsPerLitreBrine(salt, input);
            case "poundsPerGallonWater" -> Brine.saltKilogramsPerKilogramWater(salt, input)
                    * WaterProperties.densityKilogramsPerCubicMetre(input) / 1000 / POUNDS_PER_GALLON;
            default -> Brine.saltKilogramsPerLitreBrine(salt, input) / POUNDS_PER_GALLON;
        });
    }

    @Test
    void readsEveryRow() {
        assertEquals(43, Rows.in("/regeneration/published-brine.csv"));
    }

    @ParameterizedTest
    @EnumSource
    void warmBrineIsStrongerAndStrongBrineHeavier(Salt salt) {
        for (int i = 0; i < 100; i++) {
            double celsius = 0.378 * i;
            assertTrue(Brine.saltKilogramsPerLitreBrine(salt, celsius + 0.378)
                    > Brine.saltKilogramsPerLitreBrine(salt, celsius));
            assertTrue(Brine.saltKilogramsPerLitreBrine(salt, celsius)
                    < Brine.saltKilogramsPerKilogramWater(salt, celsius), "a litre of brine holds less than one of water");
            double share = 0.04 + 0.0022 * i;
            assertTrue(Brine.densityKilogramsPerCubicMetre(salt, share + 0.0022)
                    > Brine.densityKilogramsPerCubicMetre(salt, share));
        }
    }

    @ParameterizedTest
    @EnumSource
    void refusesWhatTheTablesDoNotCover(Salt salt) {
        assertThrows(IllegalArgumentException.class, () -> Brine.saturatedSaltShare(salt, 38));
        assertThrows(IllegalArgumentException.class, () -> Brine.saturatedSaltShare(salt, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Brine.densityKilogramsPerCubicMetre(salt, 0.03));
        assertThrows(IllegalArgumentException.class,
                () -> Brine.densityKilogramsPerCubicMetre(salt, Brine.maxSaltShare(salt) + 0.001));
        assertTrue(Brine.saturatedSaltShare(salt, Brine.MAX_TEMPERATURE_CELSIUS) < Brine.maxSaltShare(salt));
        assertTrue(Brine.maxSaltShare(salt) < 0.3, "no brine of either is so strong: CRC handbook");
    }
}
