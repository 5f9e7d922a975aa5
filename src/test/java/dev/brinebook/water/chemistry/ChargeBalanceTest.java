// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.water.chemistry.BalanceCriterion.Verdict;
import java.io.IOException;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChargeBalanceTest {

    /** Sums and difference as a public agency prints them: USGS example, County Ditch 65 and one sample without alkalinity. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            7.365, 7.323, 0.29
            4.953, 4.672, 2.91
            6.727, 7.425, -4.93
            6.450, 6.436, 0.11
            7.972, 0.537, 87.37
            """)
    void differsInPercentOfTheSum(double cations, double anions, String percent) {
        Printed.assertAgrees(percent, "0.015", new ChargeBalance(cations, anions, 0).percent());
    }

    /** The limits of each rule, on either side; Standard Methods 1030 E, DVWK leaflet 128, practice of agencies. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            2.19, 2.00, PASSES, FAILS, PASSES
            2.21, 2.00, FAILS, FAILS, PASSES
            2.00, 1.91, PASSES, PASSES, PASSES
            1.00, 0.94, PASSES, FAILS, PASSES
            5.20, 5.00, PASSES, FAILS, PASSES
            5.21, 5.00, FAILS, FAILS, PASSES
            5.05, 5.00, PASSES, PASSES, PASSES
            5.60, 5.00, FAILS, FAILS, DOUBTFUL
            6.20, 5.00, FAILS, FAILS, FAILS
            22.0, 20.0, PASSES, FAILS, PASSES
            22.2, 20.0, FAILS, FAILS, DOUBTFUL
            """)
    void isJudgedByEachRule(double cations, double anions, Verdict standardMethods, Verdict halfSum, Verdict practice) {
        ChargeBalance balance = new ChargeBalance(cations, anions, 0);
        assertEquals(standardMethods, BalanceCriterion.STANDARD_METHODS.of(balance));
        assertEquals(halfSum, BalanceCriterion.HALF_SUM.of(balance));
        assertEquals(practice, BalanceCriterion.PRACTICE.of(balance));
        assertEquals(2 * balance.percent(), BalanceCriterion.HALF_SUM.figurePercent(balance));
    }

    /** 3 % on each side: 50 √(0.03² + 0.03²) = 2.12 %, by hand. */
    @Test
    void isAsUncertainAsItsIons() {
        Composition water = new Composition(Map.of(Ion.CALCIUM, 200.39, Ion.CHLORIDE, 354.5));
        ChargeBalance balance = ChargeBalance.of(water, Map.of(Ion.CALCIUM, 0.03 * 200.39, Ion.CHLORIDE, 0.03 * 354.5));
        assertEquals(2.1213, balance.uncertaintyPercent(), 1e-3);
        assertTrue(new ChargeBalance(10.4, 10, 2.1213).isWithinUncertainty());
        assertFalse(new ChargeBalance(11, 10, 2.1213).isWithinUncertainty());
    }

    /** Well of NRF 6, whose sodium is lost: 22.990 (16.568 − 10.418) = 141 mg/L, where the next visit found 162. */
    @Test
    void saysWhatWouldCloseIt() throws IOException {
        ChargeBalance balance = ChargeBalance.of(PublishedAnalysis.all(PublishedAnalysis.DOUBTFUL).get("B5").composition());
        assertEquals(Set.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.SODIUM, Ion.POTASSIUM), balance.closingMgPerL().keySet());
        Printed.assertAgrees("141", null, balance.closingMgPerL().get(Ion.SODIUM));
        assertEquals(Set.of(Ion.BICARBONATE, Ion.CHLORIDE, Ion.SULFATE, Ion.NITRATE),
                new ChargeBalance(2, 1, 0).closingMgPerL().keySet());
        assertEquals(61.016, new ChargeBalance(2, 1, 0).closingMgPerL().get(Ion.BICARBONATE), 1e-9);
    }
}
