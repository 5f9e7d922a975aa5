// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static dev.brinebook.regeneration.CycleFinding.BACKWASH_ABOVE_ROOM;
import static dev.brinebook.regeneration.CycleFinding.BACKWASH_CARRIES_RESIN_OUT;
import static dev.brinebook.regeneration.CycleFinding.BACKWASH_TOO_WEAK;
import static dev.brinebook.regeneration.CycleFinding.BRINE_AND_SLOW_RINSE_LONGER_THAN_GUIDE;
import static dev.brinebook.regeneration.CycleFinding.BRINE_AND_SLOW_RINSE_SHORTER_THAN_GUIDE;
import static dev.brinebook.regeneration.CycleFinding.BRINE_TOO_FAST;
import static dev.brinebook.regeneration.CycleFinding.BRINE_TOO_SLOW;
import static dev.brinebook.regeneration.CycleFinding.BRINE_TOO_STRONG;
import static dev.brinebook.regeneration.CycleFinding.BRINE_TOO_WEAK;
import static dev.brinebook.regeneration.CycleFinding.FAST_RINSE_LONGER_THAN_GUIDE;
import static dev.brinebook.regeneration.CycleFinding.FAST_RINSE_SHORTER_THAN_GUIDE;
import static dev.brinebook.regeneration.CycleFinding.FREEBOARD_BELOW_GUIDE;
import static dev.brinebook.regeneration.CycleFinding.SUPPLY_BELOW_DRAIN_FLOW;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.quantity.Exact;
import dev.brinebook.regeneration.CycleStep.Kind;
import dev.brinebook.resin.BackwashEffect;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.Salt;
import dev.brinebook.text.Message;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** One cubic foot in a tank of 10 in: 22 in deep, and 2.5 bed volumes an hour are 0.312 gpm. */
class CycleFindingTest {

    private static final double GALLON = Exact.US_GALLON_LITRES;

    @Test
    void findsNothingInACalculatedCycle() {
        assertEquals(List.of(), found(CycleFlows.UNKNOWN, 44, OptionalDouble.empty()));
        assertEquals(List.of(), found(CycleFlows.UNKNOWN, 44, OptionalDouble.of(5 * GALLON)));
    }

    @Test
    void findsABackwashThatTheTankOrTheSupplyCannotTake() {
        assertEquals(List.of(BACKWASH_TOO_WEAK, FAST_RINSE_LONGER_THAN_GUIDE), found(drain(2), 44, OptionalDouble.empty()));
        assertEquals(List.of(BACKWASH_ABOVE_ROOM, FAST_RINSE_SHORTER_THAN_GUIDE),
                found(drain(7), 44, OptionalDouble.empty()));
        assertEquals(List.of(BACKWASH_ABOVE_ROOM, FREEBOARD_BELOW_GUIDE), found(drain(3.5), 30, OptionalDouble.empty()));
        assertEquals(List.of(BACKWASH_CARRIES_RESIN_OUT, FAST_RINSE_SHORTER_THAN_GUIDE),
                found(drain(30), 44, OptionalDouble.empty()));
        assertEquals(List.of(BACKWASH_TOO_WEAK, SUPPLY_BELOW_DRAIN_FLOW, FAST_RINSE_LONGER_THAN_GUIDE),
                found(drain(3.5), 44, OptionalDouble.of(2 * GALLON)));
    }

    @Test
    void findsABrineOutsideTheUsualBand() {
        assertEquals(List.of(BRINE_TOO_FAST, BRINE_AND_SLOW_RINSE_SHORTER_THAN_GUIDE),
                found(brine(0.7), 44, OptionalDouble.empty()));
        assertEquals(List.of(BRINE_TOO_SLOW, BRINE_AND_SLOW_RINSE_LONGER_THAN_GUIDE),
                found(brine(0.2), 44, OptionalDouble.empty()));
        assertEquals(List.of(), found(brine(0.5), 44, OptionalDouble.empty()));
        for (CycleFinding finding : CycleFinding.values()) {
            assertTrue(Message.of(finding).toString().endsWith("."));
        }
    }

    /** 1 to 2 makes 9.9 %, 1 to 1 14.4 % and 1 to 4 6.1 % (worked-injector). */
    @Test
    void findsABrineTooWeakOrTooStrong() {
        assertEquals(List.of(), found(suction(0.15), 44, OptionalDouble.empty()));
        assertEquals(List.of(BRINE_TOO_STRONG), found(suction(0.22), 44, OptionalDouble.empty()));
        assertEquals(List.of(BRINE_TOO_WEAK), found(suction(0.09), 44, OptionalDouble.empty()));
    }

    @RepeatedTest(100)
    void findsEveryStepThatPartsFromItsGuide(RepetitionInfo repetition) {
        int seed = repetition.getCurrentRepetition();
        Random random = new Random(seed);
        ResinBed bed = new ResinBed(5 + 200 * random.nextDouble(), 0.15 + 0.4 * random.nextDouble());
        CycleFlows flows = random.nextBoolean() ? CycleFlows.UNKNOWN : new CycleFlows(OptionalDouble.of(20),
                OptionalDouble.of(2), OptionalDouble.of(12), OptionalDouble.of(2));
        Cycle cycle = new CycleDesign(bed, Salt.SODIUM_CHLORIDE, bed.resinLitres() * (48 + 270 * random.nextDouble()), 15,
                15, flows, random.nextBoolean()).cycle();
        BackwashEffect backwash = BackwashEffect.of(bed, bed.depthMetres() + 0.5,
                cycle.step(Kind.BACKWASH).flowLitresPerMinute(), 15);
        Set<Kind> found = CycleFinding.of(cycle, backwash).stream()
                .flatMap(finding -> finding.step().stream()).collect(Collectors.toSet());
        assertEquals(cycle.steps().stream().filter(step -> !step.isWithinGuide()).map(CycleStep::kind)
                .collect(Collectors.toSet()), found, "seed " + seed);
    }

    private static List<CycleFinding> found(CycleFlows flows, double heightInches, OptionalDouble supply) {
        ResinBed bed = new ResinBed(Exact.CUBIC_FOOT_LITRES, 10 * Exact.INCH_METRES);
        Cycle cycle = new CycleDesign(bed, Salt.SODIUM_CHLORIDE, 4000, 15, 15, flows.onSite(OptionalDouble.empty(), supply), false)
                .cycle();
        return CycleFinding.of(cycle, BackwashEffect.of(bed, heightInches * Exact.INCH_METRES,
                cycle.step(CycleStep.Kind.BACKWASH).flowLitresPerMinute(), 15));
    }

    private static CycleFlows drain(double gallonsPerMinute) {
        return new CycleFlows(OptionalDouble.of(gallonsPerMinute * GALLON), OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static CycleFlows brine(double gallonsPerMinute) {
        return new CycleFlows(OptionalDouble.empty(), OptionalDouble.of(gallonsPerMinute * GALLON), OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static CycleFlows suction(double gallonsPerMinute) {
        return new CycleFlows(OptionalDouble.empty(), OptionalDouble.of(gallonsPerMinute * GALLON),
                OptionalDouble.of(0.45 * GALLON), OptionalDouble.empty(), OptionalDouble.empty());
    }
}
