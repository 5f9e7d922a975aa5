// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.quantity.Exact;
import dev.brinebook.regeneration.CycleStep.Kind;
import dev.brinebook.resin.Backwash;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.Salt;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The least of flow control, drain and supply rules: the same water passes all three (common practice). */
class BackwashFlowTest {

    private static final double GALLON = Exact.US_GALLON_LITRES;

    private static OptionalDouble flow(Double gallonsPerMinute) {
        return gallonsPerMinute == null ? OptionalDouble.empty() : OptionalDouble.of(gallonsPerMinute * GALLON);
    }

    private static CycleFlows flows(Double control, Double drain, Double supply) {
        return CycleFlows.UNKNOWN.withDrain(flow(control)).onSite(flow(drain), flow(supply));
    }

    /** By hand, in gpm; a flow control comes in steps of half a gallon (common practice). */
    @ParameterizedTest(name = "target {0}, control {1}, drain {2}, supply {3}: {4} by {5}")
    @CsvSource({
        "2.7, , , , 3, FLOW_CONTROL, FLOW_CONTROL",
        "3, , , , 3, FLOW_CONTROL, FLOW_CONTROL",
        "2.7, 3.5, , , 3.5, FLOW_CONTROL, FLOW_CONTROL",
        "2.7, 1.5, , , 1.5, FLOW_CONTROL, FLOW_CONTROL",
        "2.7, , 5, 8, 3, FLOW_CONTROL, FLOW_CONTROL",
        "2.7, , 3, 8, 3, FLOW_CONTROL, FLOW_CONTROL",
        "2.7, , 2.4, 8, 2, DRAIN, DRAIN",
        "2.7, , 2.8, , 2.5, DRAIN, DRAIN",
        "2.7, , 5, 2.4, 2, SUPPLY, SUPPLY",
        "2.7, , 1.6, 2.4, 1.5, DRAIN, DRAIN",
        "2.7, , 0.3, , 0.3, DRAIN, DRAIN",
        "2.7, 3, , 2.4, 2.4, SUPPLY, SUPPLY",
        "2.7, 3, 2.2, 2.4, 2.2, DRAIN, DRAIN",
        "2.7, 2, , 2, 2, FLOW_CONTROL, SUPPLY",
        "2.7, 2, 2.4, , 2, FLOW_CONTROL, DRAIN",
        "2.7, 1.5, , 2, 1.5, FLOW_CONTROL, FLOW_CONTROL"})
    void theLeastRules(double target, Double control, Double drain, Double supply, double expected, BackwashRule rule,
            BackwashRule toRaise) {
        BackwashFlow backwash = flows(control, drain, supply).backwash(target * GALLON);
        assertEquals(expected * GALLON, backwash.litresPerMinute(), 1e-9);
        assertEquals(rule, backwash.rule());
        assertEquals(toRaise, backwash.toRaise(), "what has to be larger before there is more lift");
    }

    /** A bed that gets just the flow of an expansion reaches that expansion: Richardson and Zaki, both ways. */
    @ParameterizedTest(name = "{0} at {1} degrees Celsius")
    @CsvSource({"0.1, 5", "0.2, 12", "0.3, 20", "0.45, 25"})
    void reachesTheLiftOfTheFlowThatTheSupplyGives(double expansion, double celsius) {
        ResinBed bed = new ResinBed(1.5 * Exact.CUBIC_FOOT_LITRES, 10 * Exact.INCH_METRES);
        double supply = bed.flowLitresPerMinute(Backwash.velocityMetresPerHour(bed.bead(), expansion, celsius));
        CycleFlows flows = flows(9.0, null, null).onSite(OptionalDouble.empty(), OptionalDouble.of(supply));
        Cycle cycle = new CycleDesign(bed, Salt.SODIUM_CHLORIDE, 100 * bed.resinLitres(), celsius, celsius, flows, false).cycle();
        assertEquals(expansion, cycle.backwashExpansionShare().value(), 1e-6);
        assertEquals(BackwashRule.SUPPLY, cycle.backwashFlow().rule());
    }

    /** Three bed volumes of a cubic foot are 22.44 gal, one 7.48 gal (exact definitions); 10 lb need 3.35 gal (2.99 lb/gal). */
    @ParameterizedTest(name = "drain {0}, supply {1}: fast rinse {2} min, refill {3} min")
    @CsvSource({", , 7.48, 6.7", ", 2, 11.22, 6.7", "2, , 11.22, 6.7", ", 0.25, 89.77, 13.4", "0.25, , 89.77, 6.7"})
    void everyStepKeepsToTheSiteAndLastsForItsVolume(Double drain, Double supply, double fastRinse, double refill) {
        ResinBed bed = new ResinBed(Exact.CUBIC_FOOT_LITRES, 10 * Exact.INCH_METRES);
        Cycle cycle = new CycleDesign(bed, Salt.SODIUM_CHLORIDE, 4536, 15, 20, flows(3.0, drain, supply), false).cycle();
        assertEquals(fastRinse, cycle.step(Kind.FAST_RINSE).minutes(), 0.01);
        assertEquals(refill, cycle.step(Kind.REFILL).minutes(), 0.05);
        assertEquals(1, cycle.slowRinseBedVolumes(), 1e-9);
    }

    @RepeatedTest(200)
    void noStepGetsMoreThanTheSiteGives(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        ResinBed bed = new ResinBed(5 + 200 * random.nextDouble(), 0.15 + 0.4 * random.nextDouble());
        double drain = 0.1 + 20 * random.nextDouble();
        double supply = 0.1 + 20 * random.nextDouble();
        CycleFlows valve = random.nextBoolean() ? CycleFlows.UNKNOWN : new CycleFlows(OptionalDouble.of(20),
                random.nextBoolean() ? OptionalDouble.of(0.7) : OptionalDouble.empty(), OptionalDouble.of(2),
                OptionalDouble.of(12), OptionalDouble.of(2));
        Cycle cycle = new CycleDesign(bed, Salt.SODIUM_CHLORIDE, 100 * bed.resinLitres(), 15, 15,
                valve.onSite(OptionalDouble.of(drain), OptionalDouble.of(supply)), random.nextBoolean()).cycle();
        for (CycleStep step : cycle.steps()) {
            assertTrue(step.flowLitresPerMinute() <= supply * (1 + 1e-9), "seed " + repetition.getCurrentRepetition());
            assertTrue(step.kind() == Kind.REFILL || step.flowLitresPerMinute() <= drain * (1 + 1e-9),
                    "seed " + repetition.getCurrentRepetition());
        }
    }

    @Test
    void refusesAFlowThatIsNone() {
        assertThrows(IllegalArgumentException.class, () -> flows(null, 0.0, null));
        assertThrows(IllegalArgumentException.class, () -> flows(null, null, 0.0));
        assertThrows(IllegalArgumentException.class, () -> new BackwashFlow(0, BackwashRule.DRAIN, BackwashRule.DRAIN));
    }
}
