// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.hummeling.if97.IF97;
import com.hummeling.if97.OutOfRangeException;
import dev.brinebook.Printed;
import dev.brinebook.Rows;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class WaterPropertiesTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/water/published-water-properties.csv", useHeadersInDisplayName = true)
    void agreesWithThePublishedTables(String property, double temperatureCelsius, String expected, String tolerance) {
        WaterProperties water = WaterProperties.at(temperatureCelsius);
        Printed.assertAgrees(expected, tolerance, property.equals("density")
                ? water.densityKilogramsPerCubicMetre() : 1000 * water.viscosityPascalSeconds());
    }

    @Test
    void readsEveryPublishedRow() {
        assertEquals(12, Rows.in("/water/published-water-properties.csv"));
    }

    /** Another formulation, IAPWS-IF97 with IAPWS R12-08, from the library com.hummeling:if97 1.0.5. */
    @Test
    void agreesWithTheIndustrialFormulation() throws OutOfRangeException {
        IF97 steamTables = new IF97(IF97.UnitSystem.SI);
        for (int celsius = 1; celsius <= 60; celsius++) {
            double kelvins = celsius + 273.15;
            WaterProperties water = WaterProperties.at(celsius);
            double density = steamTables.densityPT(101_325, kelvins);
            double viscosity = steamTables.dynamicViscosityPT(101_325, kelvins);
            assertEquals(density, water.densityKilogramsPerCubicMetre(), 0.001 * density, celsius + " °C");
            assertEquals(viscosity, water.viscosityPascalSeconds(), 0.001 * viscosity, celsius + " °C");
        }
    }

    @Test
    void isDensestNearFourDegreesAndThinnestWhenHot() {
        double densest = WaterProperties.densityKilogramsPerCubicMetre(4);
        for (int celsius = 0; celsius < 60; celsius++) {
            assertTrue(WaterProperties.densityKilogramsPerCubicMetre(celsius) <= densest);
            assertTrue(WaterProperties.viscosityPascalSeconds(celsius + 1)
                    < WaterProperties.viscosityPascalSeconds(celsius));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, 60.001, Double.NaN})
    void refusesTemperaturesOutsideTheRange(double temperatureCelsius) {
        assertThrows(IllegalArgumentException.class, () -> WaterProperties.at(temperatureCelsius));
    }
}
