// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.caution.Caution;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class SoftenedWaterTest {

    private static final String ADDED = "/water/published-added-salt.csv";

    @ParameterizedTest
    @CsvFileSource(resources = ADDED, useHeadersInDisplayName = true)
    void gainsTheIonOfTheSalt(double removed, String unit, String ion, String expected, String tolerance) {
        double removedMgPerL = HardnessTest.unit(unit).toBase(removed);
        double added = switch (ion) {
            case "potassium" -> AddedSalt.potassiumMgPerL(removedMgPerL);
            case "sodiumPerGlass" -> AddedSalt.sodiumMgPerL(removedMgPerL) * AddedSalt.GLASS_LITRES;
            default -> AddedSalt.sodiumMgPerL(removedMgPerL);
        };
        Printed.assertAgrees(expected, tolerance, added);
    }

    @Test
    void tableIsWhole() {
        assertEquals(8, Rows.in(ADDED));
    }

    @Test
    void countsRawAndAddedSodiumTogether() {
        var hardness = CompensatedHardness.of(40, 0, 0, CompensationFactors.STANDARD);
        var raw5 = SoftenedWater.of(hardness, OptionalDouble.of(5), false);
        var raw1 = SoftenedWater.of(hardness, OptionalDouble.of(1), false);
        assertEquals(40 * 0.4594 + 5, raw5.totalSodiumMgPerL(), 0.01);
        assertTrue(raw5.cautions().contains(Caution.SODIUM_RESTRICTED_DIET), "23.4 mg/L: US EPA 822-R-03-006");
        assertFalse(raw1.cautions().contains(Caution.SODIUM_RESTRICTED_DIET), "19.4 mg/L");
        assertTrue(SoftenedWater.of(CompensatedHardness.of(500, 0, 0, CompensationFactors.STANDARD),
                OptionalDouble.empty(), false).cautions().contains(Caution.SODIUM_TASTE), "229.7 mg/L: WHO");
    }

    @Test
    void takesIronAtItsEquivalentsNotAtThePracticeFactor() {
        var hardness = CompensatedHardness.of(100, 2, 0, CompensationFactors.CONSERVATIVE);
        assertEquals(0.4594 * (100 + 2 * 1.7922), SoftenedWater.of(hardness, OptionalDouble.empty(), false)
                .addedSodiumMgPerL(), 0.01);
    }

    @Test
    void addsPotassiumInsteadWhenThatIsTheSalt() {
        var water = SoftenedWater.of(CompensatedHardness.of(100, 0, 0, CompensationFactors.STANDARD),
                OptionalDouble.of(8), true);
        assertEquals(0, water.addedSodiumMgPerL());
        assertEquals(78.13, water.addedPotassiumMgPerL(), 0.01);
        assertTrue(water.cautions().contains(Caution.POTASSIUM_KIDNEY_HEART));
        assertFalse(SoftenedWater.ofRemoved(100, OptionalDouble.empty(), false).cautions()
                .contains(Caution.POTASSIUM_KIDNEY_HEART), "no potassium, no caution");
    }

    /** Both sources speak of what is above: US EPA 822-R-03-006 of 20 mg/L, WHO of 200. */
    @Test
    void saysNothingOfSodiumJustAtALimit() {
        assertFalse(SoftenedWater.ofRemoved(0, OptionalDouble.of(20), false).cautions()
                .contains(Caution.SODIUM_RESTRICTED_DIET));
        assertFalse(SoftenedWater.ofRemoved(0, OptionalDouble.of(200), false).cautions().contains(Caution.SODIUM_TASTE));
    }
}
