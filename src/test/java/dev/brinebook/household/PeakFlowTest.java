// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.household.PeakFlow.Fixtures;
import dev.brinebook.quantity.FlowUnit;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class PeakFlowTest {

    private static final String TABLE = "/household/published-peak-flow.csv";
    static final List<Fixtures> HOUSE = List.of(Fixtures.gpm(2, 0.045, 2.0), Fixtures.gpm(3, 0.020, 1.5),
            Fixtures.gpm(1, 0.020, 2.2), Fixtures.gpm(2, 0.010, 3.0), Fixtures.gpm(1, 0.055, 3.5),
            Fixtures.gpm(1, 0.005, 1.3));

    @ParameterizedTest
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    void agreesWithTheWorkedHouse(String quantity, String expected, String tolerance) {
        double gpm = FlowUnit.GPM.toBase(1);
        Printed.assertAgrees(expected, tolerance, switch (quantity) {
            case "mean" -> PeakFlow.meanLitresPerMinute(HOUSE) / gpm;
            case "variance" -> PeakFlow.variance(HOUSE) / (gpm * gpm);
            case "idle" -> PeakFlow.idleProbability(HOUSE);
            default -> PeakFlow.percentile99LitresPerMinute(HOUSE) / gpm;
        });
        assertEquals(4, Rows.in(TABLE));
    }

    @Test
    void isReachedByOneInAHundredBusyMomentsOfSimulatedHouses() {
        long seed = 11;
        Random random = new Random(seed);
        double[] draws = random.doubles(400_000).map(ignored -> draw(random)).filter(flow -> flow > 0).sorted().toArray();
        double drawn = draws[(int) (0.99 * draws.length)];
        double fitted = PeakFlow.percentile99LitresPerMinute(HOUSE);
        assertEquals(drawn, fitted, 0.15 * drawn, "seed " + seed + "; a normal fit to few fixtures is coarse: exact"
                + " convolution gives 5.7 gpm against 5.06");
        assertEquals(drawn, FlowDistribution.of(HOUSE).busyPercentileLitresPerMinute(0.99), 1e-9, "seed " + seed
                + "; a sum of flows on the step, so the same one unless the draws miss it by a whole flow");
    }

    private static double draw(Random random) {
        double flow = 0;
        for (Fixtures f : HOUSE) {
            for (int i = 0; i < f.count(); i++) {
                flow += random.nextDouble() < f.busyProbability() ? f.litresPerMinute() : 0;
            }
        }
        return flow;
    }

    @Test
    void growsWithBathroomsAndIsNothingWhereNothingRuns() {
        double before = 0;
        for (int bathrooms = 1; bathrooms <= PeakFlow.MAX_BATHROOMS; bathrooms++) {
            double flow = PeakFlow.percentile99LitresPerMinute(PeakFlow.assumedFixtures(bathrooms));
            assertTrue(flow > before, bathrooms + " bathrooms");
            before = flow;
        }
        assertEquals(0, PeakFlow.percentile99LitresPerMinute(List.of(new Fixtures(0, 0.5, 9))));
        assertThrows(IllegalArgumentException.class, () -> PeakFlow.assumedFixtures(0));
        assertThrows(IllegalArgumentException.class, () -> PeakFlow.percentileLitresPerMinute(HOUSE, 0.5));
        assertThrows(IllegalArgumentException.class, () -> new Fixtures(1, 1.1, 1));
    }

    @Test
    void takesOneBathroomForTwoPeopleAndOneShowerForTwoBathrooms() {
        assertEquals(1, PeakFlow.assumedBathrooms(1));
        assertEquals(3, PeakFlow.assumedBathrooms(5));
        assertEquals(2, FlowUnit.GPM.fromBase(PeakFlow.assumedContinuousLitresPerMinute(2)), 1e-12);
        assertEquals(4, FlowUnit.GPM.fromBase(PeakFlow.assumedContinuousLitresPerMinute(3)), 1e-12);
    }
}
