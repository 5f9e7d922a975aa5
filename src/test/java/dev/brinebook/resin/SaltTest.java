// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.quantity.CapacityUnit;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.quantity.SaltEfficiencyUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class SaltTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/resin/published-stoichiometry.csv", useHeadersInDisplayName = true)
    void agreesWithThePublishedCeilings(String quantity, String input, String expected, String tolerance) {
        Printed.assertAgrees(expected, tolerance, switch (quantity) {
            case "ceiling" -> SaltEfficiencyUnit.GRAIN_PER_POUND.fromBase(Salt.valueOf(input).ceilingGramsPerGram());
            case "total" -> CapacityUnit.GRAIN.fromBase(
                    TotalCapacity.gramsPerLitre(Double.parseDouble(input)) * Exact.CUBIC_FOOT_LITRES);
            case "matching" -> SaltDoseUnit.POUND_PER_CUBIC_FOOT.fromBase(
                    TotalCapacity.matchingDoseGramsPerLitre(Double.parseDouble(input), Salt.SODIUM_CHLORIDE));
            case "exceeded" -> CapacityUnit.GRAIN.fromBase(TotalCapacity.ceilingGramsPerLitre(Salt.SODIUM_CHLORIDE,
                    SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(Double.parseDouble(input)), 2.0) * Exact.CUBIC_FOOT_LITRES);
            default -> 1000 * Exact.POUND_KILOGRAMS / Salt.valueOf(input).molarMassGramsPerMole();
        });
    }

    @Test
    void readsEveryRow() {
        assertEquals(15, Rows.in("/resin/published-stoichiometry.csv"));
    }

    /** Equal equivalents: 10 · 74.548 / 58.440 = 12.756, from the atomic weights. */
    @Test
    void potassiumChlorideIsTheHeavierForTheSameEquivalents() {
        Printed.assertAgrees("12.756", "", Salt.POTASSIUM_CHLORIDE.fromSodiumChloride(10));
        assertEquals(10, Salt.POTASSIUM_CHLORIDE.asSodiumChloride(10 * 74.548 / 58.440), 1e-12);
        assertEquals(96.1, Salt.SODIUM_CHLORIDE.asSodiumChloride(96.1));
        assertThrows(IllegalArgumentException.class, () -> Salt.SODIUM_CHLORIDE.asSodiumChloride(-1));
    }

    @Test
    void refusesATotalCapacityThatIsNoNumber() {
        assertThrows(IllegalArgumentException.class, () -> TotalCapacity.gramsPerLitre(Double.NaN));
    }
}
