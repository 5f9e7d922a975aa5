// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.brinebook.Printed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MolarMassTest {

    /** Sums of the abridged weights of CIAAW 2021, by hand. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            CaCO3, 100.086
            HCO3, 61.016
            2HCO3, 122.032
            CO3, 60.008
            CO2, 44.009
            SO4, 96.056
            NO3, 62.004
            NO2, 46.005
            NH4, 18.039
            PO4, 94.970
            SiO2, 60.083
            OH, 17.007
            H2S, 34.076
            CaO, 56.077
            NaCl, 58.440
            """)
    void addsUpTheAtoms(String formula, String grams) {
        Printed.assertAgrees(grams, null, MolarMass.grams(formula));
    }

    @Test
    void countsMoles() {
        assertEquals(2, MolarMass.moles("2HCO3"));
        assertEquals(1, MolarMass.moles("CaCO3"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "2", "caco3", "Ca(OH)2", "Xx", "Ca-"})
    void refusesWhatIsNoFormula(String formula) {
        assertThrows(IllegalArgumentException.class, () -> MolarMass.grams(formula));
    }
}
