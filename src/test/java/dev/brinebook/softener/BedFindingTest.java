// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import static dev.brinebook.softener.BedFinding.BACKWASH_ABOVE_ROOM;
import static dev.brinebook.softener.BedFinding.BACKWASH_BELOW_TARGET;
import static dev.brinebook.softener.BedFinding.BACKWASH_CARRIES_RESIN_OUT;
import static dev.brinebook.softener.BedFinding.BACKWASH_TOO_WEAK;
import static dev.brinebook.softener.BedFinding.BED_TOO_SHALLOW;
import static dev.brinebook.softener.BedFinding.FREEBOARD_BELOW_GUIDE;
import static dev.brinebook.softener.BedFinding.NO_ROOM_FOR_TARGET;
import static dev.brinebook.softener.BedFinding.PEAK_FLOW_TOO_HIGH;
import static dev.brinebook.softener.BedFinding.PEAK_FLOW_TOO_HIGH_WITH_CRUSHED_BEADS;
import static dev.brinebook.softener.BedFinding.SERVICE_FLOW_FINDS_CHANNELS;
import static dev.brinebook.softener.BedFinding.SERVICE_FLOW_TOO_HIGH;
import static dev.brinebook.softener.BedFinding.SERVICE_FLOW_TOO_HIGH_WITH_CRUSHED_BEADS;
import static dev.brinebook.softener.BedFinding.SUPPLY_BELOW_DRAIN_FLOW;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.quantity.Exact;
import dev.brinebook.regeneration.CycleFinding;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.resin.PressureDrop;
import dev.brinebook.resin.ResinBead;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.text.Message;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** The guides are those of {@code ServiceFlow} and {@code ResinBed}: Lin, Davis and common practice. */
class BedFindingTest {

    private static final OptionalDouble NONE = OptionalDouble.empty();
    /** 1.5 cubic feet in 10 x 54 in: 33 in deep, 0.64 of its depth free. */
    private static final BedHydraulics FAMILY = bed(1.5, 10, 54, 11, 0.2);

    private static BedHydraulics bed(double cubicFeet, double diameterInches, double heightInches, double celsius,
            double crushedShare) {
        return new BedHydraulics(new ResinBed(cubicFeet * Exact.CUBIC_FOOT_LITRES, diameterInches * Exact.INCH_METRES),
                heightInches * Exact.INCH_METRES, celsius, crushedShare);
    }

    private static OptionalDouble gpm(double value) {
        return OptionalDouble.of(value * Exact.US_GALLON_LITRES);
    }

    private static CycleFlows flows(OptionalDouble drain, OptionalDouble supply) {
        return CycleFlows.UNKNOWN.withDrain(drain).onSite(NONE, supply);
    }

    private static List<BedFinding> drained(BedHydraulics hydraulics, double drainGpm, OptionalDouble supply) {
        return BedFinding.of(hydraulics, new BedDuty(0.5, flows(gpm(drainGpm), supply), NONE, NONE));
    }

    private static List<BedFinding> used(BedHydraulics hydraulics, OptionalDouble service, OptionalDouble peak) {
        return BedFinding.of(hydraulics, new BedDuty(0.5, CycleFlows.UNKNOWN, service, peak));
    }

    /** Common practice: 24 in of depth and half of it free. */
    @Test
    void judgesDepthAndRoom() {
        assertEquals(List.of(), used(FAMILY, NONE, NONE));
        assertEquals(List.of(BED_TOO_SHALLOW), used(bed(1, 10, 44, 11, 0.2), NONE, NONE));
        assertEquals(List.of(FREEBOARD_BELOW_GUIDE, NO_ROOM_FOR_TARGET, BACKWASH_ABOVE_ROOM),
                used(bed(1.5, 10, 44, 11, 0.2), NONE, NONE));
        assertEquals(List.of(NO_ROOM_FOR_TARGET, BACKWASH_ABOVE_ROOM),
                BedFinding.of(FAMILY, new BedDuty(0.8, CycleFlows.UNKNOWN, NONE, NONE)));
    }

    /** Richardson and Zaki: in this water 3.05 gpm lifts it by half and 3.7 gpm to the top of the tank. */
    @Test
    void judgesTheDrainFlow() {
        assertEquals(List.of(BACKWASH_TOO_WEAK), drained(FAMILY, 2, NONE));
        assertEquals(List.of(BACKWASH_BELOW_TARGET), drained(FAMILY, 2.5, NONE));
        assertEquals(List.of(), drained(FAMILY, 3.5, gpm(3.5)));
        assertEquals(List.of(SUPPLY_BELOW_DRAIN_FLOW), drained(FAMILY, 3.5, gpm(3.4)));
        assertEquals(List.of(BACKWASH_ABOVE_ROOM), drained(FAMILY, 4, NONE));
        assertEquals(List.of(BACKWASH_CARRIES_RESIN_OUT), drained(FAMILY, 30, NONE));
    }

    /** Lin: 8 gpm/ft2 of 0.545 ft2 are 4.36 gpm; Davis table 8-2: at least 1 gpm/ft3; common practice: 10 in short peaks. */
    @Test
    void judgesServiceAndPeak() {
        assertEquals(List.of(), used(FAMILY, gpm(4.3), gpm(12)));
        assertEquals(List.of(SERVICE_FLOW_TOO_HIGH), used(FAMILY, gpm(4.4), NONE));
        assertEquals(List.of(), used(FAMILY, gpm(1.5), NONE));
        assertEquals(List.of(SERVICE_FLOW_FINDS_CHANNELS), used(FAMILY, gpm(1.4), NONE));
        assertEquals(List.of(PEAK_FLOW_TOO_HIGH), used(FAMILY, NONE, gpm(15.1)));
        assertEquals(List.of(PEAK_FLOW_TOO_HIGH_WITH_CRUSHED_BEADS), used(FAMILY, NONE, gpm(14)));
        assertEquals(List.of(), used(bed(1.5, 10, 54, 11, 0), NONE, gpm(14)));
    }

    /** A bed so deep that the pressure binds first once its beads are crushed. */
    @Test
    void judgesLastingServiceWithCrushedBeads() {
        BedHydraulics deep = new BedHydraulics(new ResinBed(85, 0.25, new ResinBead(0.4, 0.35, 1280)), 2.8, 5, 0.5);
        double crushed = deep.crushedContinuousBounds().get(0).flowLitresPerMinute();
        double clean = deep.cleanContinuousBounds().get(0).flowLitresPerMinute();
        assertTrue(crushed < 0.98 * clean);
        assertEquals(List.of(SERVICE_FLOW_TOO_HIGH_WITH_CRUSHED_BEADS),
                used(deep, OptionalDouble.of(0.99 * clean), NONE));
        assertEquals(List.of(SERVICE_FLOW_TOO_HIGH), used(deep, OptionalDouble.of(1.01 * clean), NONE));
    }

    @Test
    void sharesTheSentencesOfTheCycle() {
        assertEquals(Message.of(CycleFinding.BACKWASH_TOO_WEAK).toString(), Message.of(BACKWASH_TOO_WEAK).toString());
        assertTrue(Message.of(BED_TOO_SHALLOW).inMetricUnits(true).toString().contains("61\u00a0cm"), "24\u00a0in: NIST SP 811");
    }

    @Test
    void crushedBeadsTakeMorePressure() {
        assertEquals(PressureDrop.pascals(FAMILY.bed(), 20, 11), FAMILY.cleanDropPascals(20));
        assertTrue(FAMILY.crushedDropPascals(20) > FAMILY.cleanDropPascals(20));
        assertEquals(FAMILY.cleanDropPascals(20), bed(1.5, 10, 54, 11, 0).crushedDropPascals(20), 1e-9);
    }

    /** The control to choose reaches the target, half a gallon per minute less does not. */
    @RepeatedTest(100)
    void theControlToChooseIsTheLeastThatReachesTheTarget(RepetitionInfo repetition) {
        int seed = repetition.getCurrentRepetition();
        Random random = new Random(seed);
        BedHydraulics hydraulics = new BedHydraulics(new ResinBed(10 + 90 * random.nextDouble(),
                0.25 + 0.25 * random.nextDouble()), 3, 1 + 34 * random.nextDouble(), 0.2);
        double target = 0.1 + 0.9 * random.nextDouble();
        double drain = hydraulics.chosenFlow(new BedDuty(target, CycleFlows.UNKNOWN, NONE, NONE)).litresPerMinute();
        assertTrue(hydraulics.backwash(drain).expansionShare().value() >= target, "seed " + seed);
        assertTrue(hydraulics.backwash(drain - Exact.US_GALLON_LITRES / 2).expansionShare().value() < target,
                "seed " + seed);
    }

    @Test
    void refusesWhatIsNoBedOrDuty() {
        assertThrows(IllegalArgumentException.class, () -> bed(1.5, 10, 30, 11, 0.2));
        assertThrows(IllegalArgumentException.class, () -> bed(1.5, 10, 54, 61, 0.2));
        assertThrows(IllegalArgumentException.class, () -> bed(1.5, 10, 54, 11, 0.6));
        assertThrows(IllegalArgumentException.class, () -> new BedDuty(0.05, CycleFlows.UNKNOWN, NONE, NONE));
        assertThrows(IllegalArgumentException.class, () -> new BedDuty(0.5, CycleFlows.UNKNOWN, NONE, OptionalDouble.of(0)));
        assertThrows(IllegalArgumentException.class, () -> new BedDuty(0.5, CycleFlows.UNKNOWN, OptionalDouble.of(0), NONE));
    }
}
