// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CarbonateSystemTest {

    private static final String SATURATION = "/water/chemistry/published-saturation.csv";

    @ParameterizedTest
    @CsvFileSource(resources = "/water/chemistry/worked-carbonate-constants.csv", useHeadersInDisplayName = true)
    void hasTheConstantsOfEachTemperature(double celsius, String pk1, String pk2, String pkCalcite) {
        CarbonateConstants constants = CarbonateConstants.at(celsius);
        Printed.assertAgrees(pk1, null, constants.pk1());
        Printed.assertAgrees(pk2, null, constants.pk2());
        Printed.assertAgrees(pkCalcite, null, constants.pkCalcite());
    }

    /** At 25 °C the publication prints 6.352, 10.329, 8.480 for calcite and 8.336 for aragonite; 14.00 for water is common knowledge. */
    @Test
    void agreesWithThePublicationAtRoomTemperature() {
        CarbonateConstants constants = CarbonateConstants.at(25);
        Printed.assertAgrees("6.352", null, constants.pk1());
        Printed.assertAgrees("10.329", null, constants.pk2());
        Printed.assertAgrees("8.480", null, constants.pkCalcite());
        Printed.assertAgrees("8.336", null, constants.pkAragonite());
        Printed.assertAgrees("14.00", null, constants.pkWater());
    }

    @ParameterizedTest
    @CsvFileSource(resources = SATURATION, useHeadersInDisplayName = true)
    void agreesWithPublishedSaturation(ArgumentsAccessor row) {
        double calcium = row.getDouble(3) / 1000;
        double ph = row.getDouble(10);
        double celsius = row.getDouble(11);
        double strength = strength(row, ph);
        CarbonateSystem measured = row.getString(1) == null
                ? new CarbonateSystem(celsius, ph, row.getDouble(2) / 1000, calcium, strength)
                : CarbonateSystem.ofInorganicCarbon(celsius, ph, row.getDouble(1) / 1000, calcium, strength);
        CarbonateSystem water = measured.at(row.getDouble(12)).orElseThrow();
        assertEquals(row.getDouble(13), water.calciteIndex().getAsDouble(), row.getDouble(16), "index");
        if (row.getString(14) != null) {
            Printed.assertAgrees(row.getString(14), "0.015", water.ph());
            double dissolvesMmol = -water.precipitationPotentialMgPerL().getAsDouble() / 100.086;
            Printed.assertAgrees(row.getString(15), "0.075", dissolvesMmol);
        }
    }

    /** Charges that do not depend on the pH, and bicarbonate for what balances them: enough for an ionic strength. */
    private static double strength(ArgumentsAccessor row, double ph) {
        double cations = 2 * row.getDouble(3) + 2 * row.getDouble(4) + row.getDouble(5) + row.getDouble(6);
        double strong = row.getDouble(7) + row.getDouble(8) + 2 * row.getDouble(9);
        assertTrue(ph > 6, "below that bicarbonate is not what balances");
        double sum = 4 * row.getDouble(3) + 4 * row.getDouble(4) + row.getDouble(5) + row.getDouble(6)
                + row.getDouble(7) + row.getDouble(8) + 4 * row.getDouble(9) + Math.max(0, cations - strong);
        return sum / 2000;
    }

    /** Printed by the tests of an open library at 25 °C; calcium and alkalinity are given as they are there. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            8.0, 200, 40, 173, 16, 0.6, 0.598
            8.0, 5, 40, 56, -1.3, 0.05, -0.941
            """)
    void agreesWithThePrecipitationPotentialOfAnOpenLibrary(double ph, double alkalinity, double calcium, double solids, double potential,
            double tolerance, double index) {
        CarbonateSystem water = CarbonateSystem.ofReport(25, ph, alkalinity, calcium, Activity.STRENGTH_PER_SOLIDS * solids);
        assertEquals(potential, water.precipitationPotentialMgPerL().getAsDouble(), tolerance);
        assertEquals(index, water.calciteIndex().getAsDouble(), 0.01, "its own index leaves out activities: 0.75");
    }

    /** A raw and a softened tap of one house, pH measured at 12 °C, cold and warmed in the heater. By another calculation. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            84, 228, 7.9, 12, 0.65, 29.5
            84, 228, 7.9, 60, 1.10, 62.0
            0.5, 211, 7.8, 12, -1.71, -15.5
            0.5, 211, 7.8, 60, -1.25, -10.1
            """)
    void followsCalciumAndTemperature(double calcium, double alkalinity, double ph, double celsius, double index, double potential) {
        CarbonateSystem water = CarbonateSystem.ofReport(12, ph, alkalinity, calcium, Activity.STRENGTH_PER_SOLIDS * 259).at(celsius)
                .orElseThrow();
        assertEquals(index, water.calciteIndex().getAsDouble(), 0.02);
        assertEquals(potential, water.precipitationPotentialMgPerL().getAsDouble(), 1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {6.2, 7, 7.6, 8.2, 9})
    void precipitatesToEquilibriumAndKeepsItsCharges(double ph) {
        CarbonateSystem water = CarbonateSystem.ofReport(12, ph, 228, 84, 0.0065);
        CarbonateSystem after = water.inEquilibrium().orElseThrow();
        assertEquals(0, after.calciteIndex().getAsDouble(), 1e-6);
        double mol = water.calciumMolPerL() - after.calciumMolPerL();
        assertEquals(water.precipitationPotentialMgPerL().getAsDouble(), 100_086 * mol, 1e-6);
        assertEquals(water.alkalinityMolPerL() - 2 * mol, after.alkalinityMolPerL(), 1e-12);
        assertEquals(water.inorganicCarbonMolPerL() - mol, after.inorganicCarbonMolPerL(), 1e-9);
        assertEquals(Math.max(0, -mol) * 44_009, water.aggressiveCarbonDioxideMgPerL().getAsDouble(), 1e-6);
    }

    /** 0.8794 alkalinity 10^(pK1 − pH) without activities: 7.0 mg/L by hand; they take 8 % off. */
    @Test
    void hasTheFreeCarbonDioxideOfTheSimpleFormula() {
        assertEquals(7.0, CarbonateSystem.ofReport(12, 7.9, 228, 84, 0).carbonDioxideMgPerL(), 0.1);
        assertEquals(7.0 * Activity.at(0.0065, 12).single(), CarbonateSystem.ofReport(12, 7.9, 228, 84, 0.0065).carbonDioxideMgPerL(), 0.1);
    }

    @Test
    void saysNothingOfWaterWithoutCalcium() {
        CarbonateSystem soft = CarbonateSystem.ofReport(12, 7.8, 211, 0, 0.005);
        assertTrue(soft.calciteIndex().isEmpty());
        assertTrue(soft.saturationPh().isEmpty());
        assertThrows(IllegalArgumentException.class, () -> CarbonateSystem.ofReport(91, 7, 100, 40, 0.01));
        assertThrows(IllegalArgumentException.class, () -> CarbonateSystem.ofReport(12, Double.NaN, 100, 40, 0.01));
    }

    /** Titrations to pH 8.3 and in total, with their parts; the scheme of Standard Methods 2320. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            0, 100, 100, 0, 0
            20, 100, 60, 40, 0
            50, 100, 0, 100, 0
            70, 100, 0, 60, 40
            100, 100, 0, 0, 100
            """)
    void dividesAlkalinityByTwoTitrations(double p, double total, double bicarbonate, double carbonate, double hydroxide) {
        AlkalinityForms forms = AlkalinityForms.of(p, total);
        assertEquals(new AlkalinityForms(bicarbonate, carbonate, hydroxide), forms);
        assertEquals(total, forms.bicarbonateMgPerL() + forms.carbonateMgPerL() + forms.hydroxideMgPerL());
    }

    @Test
    void refusesMoreToPh83ThanInAll() {
        assertThrows(IllegalArgumentException.class, () -> AlkalinityForms.of(101, 100));
        assertEquals(8, Rows.in(SATURATION));
    }
}
