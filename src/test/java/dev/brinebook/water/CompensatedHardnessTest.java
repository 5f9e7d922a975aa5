// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.quantity.HardnessUnit;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class CompensatedHardnessTest {

    private static final String SETS = "/water/worked-compensation.csv";

    private static final HardnessStep GPG = HardnessStep.of(HardnessUnit.GPG);
    private static final Map<String, CompensationFactors> FACTORS = Map.of(
            "STOICHIOMETRIC", CompensationFactors.STOICHIOMETRIC, "LIGHT", CompensationFactors.LIGHT,
            "MODERATE", CompensationFactors.MODERATE, "STANDARD", CompensationFactors.STANDARD,
            "CONSERVATIVE", CompensationFactors.CONSERVATIVE);

    @ParameterizedTest
    @CsvFileSource(resources = SETS, useHeadersInDisplayName = true)
    void countsIronAndManganese(String set, String expectedGpg, int setting, String tolerance) {
        var compensated = CompensatedHardness.of(HardnessUnit.GPG.toBase(25), 2, 0.5, FACTORS.get(set));
        Printed.assertAgrees(expectedGpg, tolerance, HardnessUnit.GPG.fromBase(compensated.totalMgPerL()));
        assertEquals(setting, compensated.setting(GPG, 0));
        assertEquals(25.263, HardnessUnit.GPG.fromBase(compensated.realMgPerL()), 5e-4, "chemistry, whatever the set");
    }

    @Test
    void tableIsWhole() {
        assertEquals(FACTORS.size(), Rows.in(SETS));
    }

    @Test
    void addsTheUncertaintyOfTheTestBeforeRoundingUp() {
        var compensated = CompensatedHardness.of(HardnessUnit.GPG.toBase(18.2), 0, 0, CompensationFactors.STANDARD);
        assertEquals(19, compensated.setting(GPG, 0));
        assertEquals(20, compensated.setting(GPG, HardnessUnit.GPG.toBase(1)), "a drop-count kit resolves 1 gpg: common practice");
    }

    @Test
    void setsWholeDegreesToo() {
        var compensated = CompensatedHardness.of(HardnessUnit.GPG.toBase(25), 0, 0, CompensationFactors.STANDARD);
        assertEquals(24, compensated.setting(HardnessStep.of(HardnessUnit.GERMAN_DEGREE), 0), "427.95 mg/L / 17.848: DIN 38409-6, 23.98");
        assertEquals(43, compensated.setting(HardnessStep.of(HardnessUnit.FRENCH_DEGREE), 0), "427.95 mg/L / 10, 42.8");
    }

    @Test
    void neverSetsLessThanTheSumNorAWholeGrainMore() {
        long seed = 7;
        Random random = new Random(seed);
        for (int i = 0; i < 2_000; i++) {
            var sum = CompensatedHardness.of(random.nextDouble() * 1_000, random.nextDouble() * 10,
                    random.nextDouble() * 3, CompensationFactors.MODERATE);
            double gpg = HardnessUnit.GPG.fromBase(sum.totalMgPerL());
            assertTrue(sum.setting(GPG, 0) >= gpg * (1 - 1e-5) && sum.setting(GPG, 0) < gpg + 1, "seed " + seed + ": " + gpg);
        }
    }

    @Test
    void refusesFactorsOutsideZeroToTen() {
        assertEquals(10, HardnessUnit.GPG.fromBase(CompensationFactors.ofGpg(10, 0).ironMgPerMg()), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> CompensationFactors.ofGpg(10.1, 0));
        assertThrows(IllegalArgumentException.class, () -> CompensationFactors.ofGpg(0, -0.1));
        assertThrows(IllegalArgumentException.class, () -> CompensationFactors.ofGpg(Double.NaN, 1));
    }
}
