// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.household.PeakFlow.Fixtures;
import dev.brinebook.quantity.FlowUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class FlowDistributionTest {

    private static final String TABLE = "/household/cross-flow-distribution.csv";

    @ParameterizedTest
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    void agreesWithAllStatesSummed(String quantity, double percentile, String expected, String tolerance) {
        FlowDistribution flows = FlowDistribution.of(PeakFlowTest.HOUSE);
        double flow = switch (quantity) {
            case "busy" -> flows.busyPercentileLitresPerMinute(percentile);
            case "any" -> flows.percentileLitresPerMinute(percentile);
            default -> PeakFlow.percentileLitresPerMinute(PeakFlowTest.HOUSE, percentile);
        };
        Printed.assertAgrees(expected, tolerance, FlowUnit.GPM.fromBase(flow));
        assertEquals(11, Rows.in(TABLE));
    }

    /** The sum of independent draws has the sums of their means and variances; tolerances are of rounding alone. */
    @Test
    void hasTheMeanAndVarianceOfTheFormulas() {
        for (long seed = 1; seed <= 100; seed++) {
            List<Fixtures> drawn = onTheStep(new Random(seed));
            FlowDistribution flows = FlowDistribution.of(drawn);
            assertEquals(1, flows.total(), 1e-12, "seed " + seed);
            assertEquals(PeakFlow.idleProbability(drawn), flows.idleProbability(), 1e-12, "seed " + seed);
            double mean = PeakFlow.meanLitresPerMinute(drawn);
            assertEquals(mean, flows.meanLitresPerMinute(), 1e-9 * mean, "seed " + seed);
            double variance = PeakFlow.variance(drawn);
            assertEquals(variance, flows.variance(), 1e-9 * variance, "seed " + seed);
        }
    }

    @Test
    void growsWithCountsAndProbabilities() {
        for (long seed = 1; seed <= 100; seed++) {
            List<Fixtures> drawn = onTheStep(new Random(seed));
            Fixtures first = drawn.get(0);
            List<Fixtures> more = new ArrayList<>(drawn);
            more.set(0, new Fixtures(first.count() + 3, first.busyProbability(), first.litresPerMinute()));
            List<Fixtures> busier = new ArrayList<>(drawn);
            busier.set(0, new Fixtures(first.count(), (1 + first.busyProbability()) / 2, first.litresPerMinute()));
            for (double percentile : new double[] {0.9, 0.99, 0.999}) {
                double flow = FlowDistribution.of(drawn).percentileLitresPerMinute(percentile);
                assertTrue(FlowDistribution.of(more).percentileLitresPerMinute(percentile) >= flow, "seed " + seed);
                assertTrue(FlowDistribution.of(busier).percentileLitresPerMinute(percentile) >= flow, "seed " + seed);
                assertTrue(FlowDistribution.of(drawn).busyPercentileLitresPerMinute(percentile) >= flow, "seed " + seed);
            }
            assertTrue(FlowDistribution.of(drawn).percentileLitresPerMinute(0.99)
                    >= FlowDistribution.of(drawn).percentileLitresPerMinute(0.9), "seed " + seed);
        }
    }

    /** The skew of the flow, and with it the error of the normal fit, falls with the root of the number: 11 % of ten, 5 % of 200. */
    @Test
    void comesNearTheNormalFitWithManyFixtures() {
        List<Fixtures> building = List.of(Fixtures.gpm(100, 0.045, 2.0), Fixtures.gpm(100, 0.02, 1.5));
        double exact = FlowDistribution.of(building).busyPercentileLitresPerMinute(0.99);
        assertEquals(exact, PeakFlow.percentile99LitresPerMinute(building), 0.06 * exact);
    }

    @Test
    void takesTheStepThatTheFlowsLieOn() {
        FlowDistribution metric = FlowDistribution.of(List.of(new Fixtures(2, 0.1, 9), new Fixtures(1, 0.2, 7.5)));
        assertEquals(0.1, metric.stepLitresPerMinute());
        assertEquals(25.5, metric.busyPercentileLitresPerMinute(1), 1e-9);
        assertEquals(0.05, FlowUnit.GPM.fromBase(FlowDistribution.of(PeakFlowTest.HOUSE).stepLitresPerMinute()), 1e-12);
    }

    @Test
    void isNothingWhereNothingRunsAndRefusesTooMany() {
        assertEquals(0, FlowDistribution.of(List.of()).busyPercentileLitresPerMinute(0.99));
        assertTrue(FlowDistribution.takes(List.of(new Fixtures(200, 0.1, 9))));
        assertThrows(IllegalArgumentException.class, () -> FlowDistribution.of(List.of(new Fixtures(201, 0.1, 9))));
    }

    private static List<Fixtures> onTheStep(Random random) {
        return random.ints(1 + random.nextInt(5), 1, 12).mapToObj(count -> Fixtures.gpm(count,
                0.3 * random.nextDouble() + 0.001, 0.05 * (1 + random.nextInt(200)))).toList();
    }
}
