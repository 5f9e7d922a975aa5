// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.quantity.AtomicWeights;
import dev.brinebook.quantity.HardnessUnit;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class HardnessTest {

    private static final String IONS = "/water/published-hardness-from-ions.csv";
    private static final String CLASSES = "/water/published-classes.csv";

    static HardnessUnit unit(String symbol) {
        return Arrays.stream(HardnessUnit.values()).filter(u -> u.symbol().equals(symbol)).findFirst().orElseThrow();
    }

    @ParameterizedTest
    @CsvFileSource(resources = IONS, useHeadersInDisplayName = true)
    void comesFromIons(double calcium, double magnesium, String symbol, String expected, String tolerance) {
        double hardness = Hardness.fromIonsMgPerL(calcium, magnesium);
        Printed.assertAgrees(expected, tolerance, unit(symbol).fromBase(hardness));
    }

    @Test
    void agreesWithTheMolarMassForm() {
        double molar = AtomicWeights.CALCIUM_CARBONATE * (80 / AtomicWeights.CALCIUM + 30 / AtomicWeights.MAGNESIUM);
        assertEquals(molar, Hardness.fromIonsMgPerL(80, 30), molar * 2e-4, "Standard Methods rounds its factors");
    }

    @ParameterizedTest
    @CsvFileSource(resources = CLASSES, useHeadersInDisplayName = true)
    void fallsInThreeClasses(double mgPerL, HardnessClass usgs, HardnessClass german, HardnessClass trade) {
        assertEquals(usgs, HardnessClass.usgs(mgPerL));
        assertEquals(german, HardnessClass.german(mgPerL));
        assertEquals(trade, HardnessClass.trade(mgPerL));
    }

    /** Detergents act: medium from 1.5 to 2.5 mmol/L, both of them in it. */
    @Test
    void bothEndsOfMediumAreMedium() {
        assertEquals(HardnessClass.MEDIUM, HardnessClass.german(HardnessUnit.MMOL_PER_L.toBase(1.5)));
        assertEquals(HardnessClass.MEDIUM, HardnessClass.german(HardnessUnit.MMOL_PER_L.toBase(2.5)));
    }

    @Test
    void tablesAreWhole() {
        assertEquals(8, Rows.in(IONS));
        assertEquals(12, Rows.in(CLASSES));
        assertEquals(10.515, HardnessUnit.GPG.fromBase(180), 5e-4, "UF/IFAS 2019: 180 mg/L is 10.515 gpg");
        assertEquals(5.608, HardnessUnit.GERMAN_DEGREE.fromBase(HardnessUnit.MMOL_PER_L.toBase(1)), 5e-4, "DIN 38409-6");
    }

    @Test
    void refusesWhatIsNoHardness() {
        assertThrows(IllegalArgumentException.class, () -> Hardness.fromIonsMgPerL(-1, 0));
        assertThrows(IllegalArgumentException.class, () -> Hardness.fromIonsMgPerL(0, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> HardnessClass.german(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> HardnessClass.trade(-1));
    }
}
