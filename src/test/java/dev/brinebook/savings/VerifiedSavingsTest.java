// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.savings;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Occupancy;
import dev.brinebook.household.UseChange;
import dev.brinebook.savings.SimulatedHome.Read;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Homes with known savings: of intervals of 90 %, 88 to 92 of 100 must hold the truth. */
class VerifiedSavingsTest {

    private static final int HOMES = 1_000;
    static final UseScatter USUAL = UseScatter.of(DayVariation.UNKNOWN_PERSONS_CV, Occupancy.Chain.USUAL,
            new UseChange(UseChange.USUAL_LEVEL_SPREAD, UseChange.USUAL_SCATTER_SPREAD, UseChange.USUAL_DAY_CORRELATION));

    private static final Map<Boolean, List<SimulatedHome>> SIMULATED = new HashMap<>();

    private static List<SimulatedHome> homes(boolean clockBefore) {
        return SIMULATED.computeIfAbsent(clockBefore, clock -> LongStream.range(0, HOMES).mapToObj(seed -> new SimulatedHome(seed, clock,
                UseChange.USUAL_LEVEL_SPREAD)).toList());
    }

    @ParameterizedTest(name = "{0} clock {1}, {2} and {3} days")
    @CsvSource({
        "COUNT, true, 60, 60", "COUNT, true, 180, 120", "COUNT, true, 365, 365", "COUNT, false, 90, 90", "COUNT, false, 365, 180",
        "COUNT_WITHOUT_WATER, true, 90, 90", "COUNT_WITHOUT_WATER, true, 365, 365", "COUNT_WITHOUT_WATER, false, 180, 180",
        "BOOKS, true, 120, 120", "BOOKS, false, 365, 365", "COUNT_AND_BOOKS, true, 180, 180", "BAGS_ALONE, true, 365, 365"})
    void intervalsHoldTheTruth(Read read, boolean clockBefore, int daysBefore, int daysAfter) {
        int held = 0;
        double sum = 0;
        double bias = 0;
        for (SimulatedHome one : homes(clockBefore)) {
            SavingsEstimate seen = SavingsEstimate.of(one.before(read, daysBefore), one.after(read, daysAfter), USUAL);
            double truth = one.trueShare();
            held += seen.low() <= truth && truth <= seen.high() ? 1 : 0;
            double z = Math.log((1 - seen.share()) / (1 - truth)) / seen.logUncertainty();
            sum += z * z;
            bias += z;
        }
        System.out.printf("%s %s %d %d held %d rms %.3f bias %.3f%n", read, clockBefore, daysBefore, daysAfter, held,
                Math.sqrt(sum / HOMES), bias / HOMES);
        assertTrue(held >= 880 && held <= 920, () -> read + " held the truth");
    }
}
