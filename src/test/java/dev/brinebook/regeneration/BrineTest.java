package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.quantity.Exact;
import dev.brinebook.water.WaterProperties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class BrineTest {

    private static final double POUNDS_PER_GALLON = Exact.POUND_KILOGRAMS / Exact.US_GALLON_LITRES;

    @ParameterizedTest
    @CsvFileSource(resources = "/regeneration/published-brine.csv", useHeadersInDisplayName = true)
    void agreesWithTheTables(String quantity, double input, String expected, String tolerance) {
        Printed.assertAgrees(expected, tolerance, switch (quantity) {
            case "share" -> 100 * Brine.saturatedSaltShare(input);
            case "perWater" -> 100 * Brine.saltKilogramsPerKilogramWater(input);
            case "density" -> Brine.densityKilogramsPerCubicMetre(input / 100);
            case "perBrine" -> Brine.saltKilogramsPerLitreBrine(input);
            case "poundsPerGallonWater" -> Brine.saltKilogramsPerKilogramWater(input)
                    * WaterProperties.densityKilogramsPerCubicMetre(input) / 1000 / POUNDS_PER_GALLON;
            default -> Brine.saltKilogramsPerLitreBrine(input) / POUNDS_PER_GALLON;
        });
    }

    @Test
    void readsEveryRow() {
        assertEquals(21, Rows.in("/regeneration/published-brine.csv"));
    }

    @Test
    void warmBrineIsStrongerAndStrongBrineHeavier() {
        for (int i = 0; i < 100; i++) {
            double celsius = 0.378 * i;
            assertTrue(Brine.saltKilogramsPerLitreBrine(celsius + 0.378) > Brine.saltKilogramsPerLitreBrine(celsius));
            assertTrue(Brine.saltKilogramsPerLitreBrine(celsius)
                    < Brine.saltKilogramsPerKilogramWater(celsius), "a litre of brine holds less than one of water");
            double share = 0.04 + 0.0022 * i;
            assertTrue(Brine.densityKilogramsPerCubicMetre(share + 0.0022)
                    > Brine.densityKilogramsPerCubicMetre(share));
        }
    }

    @Test
    void refusesWhatTheTablesDoNotCover() {
        assertThrows(IllegalArgumentException.class, () -> Brine.saturatedSaltShare(38));
        assertThrows(IllegalArgumentException.class, () -> Brine.saturatedSaltShare(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Brine.densityKilogramsPerCubicMetre(0.03));
    }
}
