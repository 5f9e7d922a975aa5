// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.commissioning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.source.Table;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Which band catches which fault. */
class FaultTableTest {

    private static final long SEED = 20_260_129;

    static Stream<Arguments> faults() {
        return Table.read("/commissioning/faults.csv", ';', 3).stream().map(row -> Arguments.of(row[0], parts(row[1]), row[2].isBlank()
                ? Set.of() : Arrays.stream(row[2].split(" ")).map(CommissioningCheck::valueOf).collect(Collectors.toSet())));
    }

    private static Map<String, Double> parts(String cell) {
        Map<String, Double> parts = new HashMap<>();
        Arrays.stream(cell.split(" ")).filter(part -> !part.isBlank()).map(part -> part.split("="))
                .forEach(part -> parts.put(part[0], Double.valueOf(part[1])));
        return parts;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("faults")
    void isCaughtBy(String fault, Map<String, Double> parts, Set<CommissioningCheck> checks) {
        CommissioningBands bands = Worked.bands();
        Set<CommissioningCheck> caught = EnumSet.noneOf(CommissioningCheck.class);
        new FaultySoftener(parts).readings().forEach((check, value) -> {
            if (outcome(bands, check, value).verdict() != ReadingOutcome.Verdict.PASS) {
                caught.add(check);
            }
        });
        assertEquals(checks, caught, fault);
    }

    /** A sound softener reads what is expected, within the steps of the simulation. */
    @Test
    void soundReadsWhatIsExpected() {
        CommissioningBands bands = Worked.bands();
        Map<CommissioningCheck, Double> readings = new FaultySoftener(Map.of()).readings();
        assertEquals(bands.all().keySet(), readings.keySet());
        readings.forEach((check, value) -> assertEquals(bands.expected(check), value, 0.002 * Math.abs(value) + 1e-9, check.name()));
    }

    /**
     * Sound softeners whose controls and readings scatter normally by their standard uncertainties: 4.55 % lie beyond two of both
     * together, 0.27 % beyond three. Source: the normal distribution.
     */
    @Test
    void hardlyEverFailsASoundSoftener() {
        CommissioningBands bands = Worked.bands();
        Random random = new Random(SEED);
        List<CommissioningCheck> about = List.of(CommissioningCheck.BACKWASH_FLOW, CommissioningCheck.REFILL_FLOW,
                CommissioningCheck.REFILL_WATER, CommissioningCheck.METER_COUNT);
        int trials = 20_000;
        int outside = 0;
        int failed = 0;
        for (int trial = 0; trial < trials; trial++) {
            CommissioningCheck check = about.get(trial % about.size());
            PassBand band = bands.band(check, OptionalDouble.empty());
            double u = bands.readingUncertainty(check, OptionalDouble.empty());
            double equipment = band.allowed() / PassBand.PASS_FACTOR;
            double read = band.expected() + equipment * random.nextGaussian() + u * random.nextGaussian();
            ReadingOutcome outcome = outcome(bands, check, read);
            outside += outcome == ReadingOutcome.WITHIN ? 0 : 1;
            failed += outcome.verdict() == ReadingOutcome.Verdict.FAIL ? 1 : 0;
        }
        assertEquals(0.0455, (double) outside / trials, 0.006, "seed " + SEED);
        assertEquals(0.0027, (double) failed / trials, 0.0015, "seed " + SEED);
        assertTrue(failed > 0);
    }

    private static ReadingOutcome outcome(CommissioningBands bands, CommissioningCheck check, double value) {
        return bands.band(check, OptionalDouble.empty()).outcome(value, bands.readingUncertainty(check, OptionalDouble.empty()), true);
    }
}
