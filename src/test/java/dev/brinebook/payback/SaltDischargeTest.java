// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.resin.Salt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;

class SaltDischargeTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/payback/worked-salt-discharge.csv", useHeadersInDisplayName = true)
    void agreesWithChlorideByHand(Salt salt, double kilograms, double regenerationLitres, double householdLitres,
            String expectedKilograms, String expectedMgPerL, String tolerance) {
        SaltDischarge discharge = new SaltDischarge(salt, kilograms, regenerationLitres);
        Printed.assertAgrees(expectedKilograms, tolerance, discharge.chlorideKilogramsPerYear());
        Printed.assertAgrees(expectedMgPerL, tolerance, discharge.addedChlorideMgPerL(householdLitres));
    }

    @Test
    void readsEveryRow() {
        assertEquals(6, Rows.in("/payback/worked-salt-discharge.csv"));
    }

    /** Balance: what is in all litres of the waste water is the chloride of the salt. */
    @ParameterizedTest
    @EnumSource(Salt.class)
    void losesNoChloride(Salt salt) {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            double household = 300_000 * random.nextDouble();
            YearlyUse use = new YearlyUse(60, 400 * random.nextDouble(), 1 + 20_000 * random.nextDouble(), 0);
            SaltDischarge discharge = SaltDischarge.of(use, salt);
            assertEquals(discharge.chlorideKilogramsPerYear(), discharge.addedChlorideMgPerL(household)
                    * (household + use.waterLitres()) / 1e6, 1e-9, "seed " + seed);
            assertTrue(discharge.chlorideKilogramsPerYear() <= use.saltKilograms(), "seed " + seed);
        }
    }

    /** By hand: 40 kg less sodium chloride with 24.2642 kg of chloride, and 500 L more. */
    @Test
    void reportsTheReductionOfDischarge() {
        SaltDischarge.Less less = new SaltDischarge(Salt.SODIUM_CHLORIDE, 60, 6_500)
                .lessThan(new SaltDischarge(Salt.SODIUM_CHLORIDE, 100, 6_000));
        assertEquals(40, less.saltKilogramsPerYear(), 1e-12);
        Printed.assertAgrees("24.2642", null, less.chlorideKilogramsPerYear());
        assertEquals(-500, less.regenerationLitresPerYear(), 1e-12);
    }

    /** The salts carry as much chloride where they carry as many equivalents: changing the salt spares none. */
    @Test
    void sparesNoChlorideByAnEqualDoseOfTheOtherSalt() {
        SaltDischarge sodium = new SaltDischarge(Salt.SODIUM_CHLORIDE, 100, 6_000);
        SaltDischarge potassium = new SaltDischarge(Salt.POTASSIUM_CHLORIDE,
                Salt.POTASSIUM_CHLORIDE.fromSodiumChloride(100_000) / 1_000, 6_000);
        assertEquals(0, potassium.lessThan(sodium).chlorideKilogramsPerYear(), 1e-9);
    }

    @Test
    void refusesWhatLiesOutsideItsRange() {
        assertThrows(NullPointerException.class, () -> new SaltDischarge(null, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new SaltDischarge(Salt.SODIUM_CHLORIDE, -1, 1));
        assertThrows(IllegalArgumentException.class, () -> new SaltDischarge(Salt.SODIUM_CHLORIDE, Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> new SaltDischarge(Salt.SODIUM_CHLORIDE, 1, 1.1 * YearlyUse.MAX_PER_YEAR));
        SaltDischarge dry = new SaltDischarge(Salt.SODIUM_CHLORIDE, 1, 0);
        assertThrows(IllegalArgumentException.class, () -> dry.addedChlorideMgPerL(0));
        assertThrows(IllegalArgumentException.class, () -> dry.addedChlorideMgPerL(-1));
        assertThrows(IllegalArgumentException.class, () -> dry.addedChlorideMgPerL(Double.NaN));
    }
}
