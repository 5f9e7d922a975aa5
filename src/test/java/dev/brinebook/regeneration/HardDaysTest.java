// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.hipparchus.distribution.discrete.PoissonDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Chances of hard days in a year. */
class HardDaysTest {

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            expected, cycles, trials
            0.4,      52,     52
            1,        51.6,   52
            22,       52,     52
            51.9,     52,     52
            52,       52,     52
            60.2,     52,     61
            300,      365,    365
            364.9,    365,    365
            """)
    void eachCycleIsATrial(double expected, double cycles, int trials) {
        double[] chances = HardDays.ofCycles(expected, cycles);
        double sum = Arrays.stream(chances).sum();
        BinomialDistribution binomial = new BinomialDistribution(trials, expected / trials);
        for (int days = 0; days < chances.length; days++) {
            assertEquals(binomial.probability(days), chances[days] / sum, 1e-12, "source: Hipparchus, " + days);
        }
    }

    @ParameterizedTest
    @CsvSource({"0.2", "3", "40", "200"})
    void independentDaysAreThoseOfPoisson(double expected) {
        double[] chances = HardDays.independent(expected);
        PoissonDistribution poisson = new PoissonDistribution(expected);
        for (int days = 0; days < chances.length; days++) {
            assertEquals(poisson.probability(days), chances[days], 1e-10, "source: Hipparchus, " + days);
        }
    }
}
