// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.TemperatureQuantity;
import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.FlowUnit;
import dev.brinebook.quantity.TemperatureUnit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** Ranges are stated in the caller's unit, and no number is accepted that leaves the range once converted. */
class CheckerTest {

    private static final double MIN = 3;
    private static final double MAX = 7;
    private static final Pattern TOLD = Pattern.compile("from (\\S+) to (\\S+)\u00a0\\S+");

    @SchemaDescription("A flow and a temperature.")
    record Bounded(@Property(value = "A flow.", min = MIN, max = MAX, unit = "L/min") FlowQuantity flow,
            @Property(value = "A temperature.", min = MIN, max = MAX, unit = "C") TemperatureQuantity temperature,
            @Property(value = "A number.", max = MAX) BigDecimal number) {
    }

    @RepeatedTest(300)
    void passesExactlyWhatPassesTheGuardOnceConverted(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        FlowUnit unit = FlowUnit.values()[random.nextInt(FlowUnit.values().length)];
        double edge = unit.fromBase(random.nextBoolean() ? MIN : MAX);
        double off = random.nextInt(-3, 4) * (random.nextBoolean() ? Math.ulp(edge) : Guard.ROUNDING * edge / 2.5);
        FlowQuantity flow = new FlowQuantity(BigDecimal.valueOf(edge + off), unit);
        assertEquals(passesTheGuard(flow.inBase()), check(new Bounded(flow, null, null)).isEmpty(), flow + " of seed "
                + repetition.getCurrentRepetition());
    }

    private static boolean passesTheGuard(double litresPerMinute) {
        try {
            Guard.within(litresPerMinute, MIN, MAX, "flow");
            return true;
        } catch (IllegalArgumentException refused) {
            return false;
        }
    }

    @Test
    void takesABoundThatIsARoundNumberInAnotherUnit() {
        TemperatureQuantity temperature = new TemperatureQuantity(new BigDecimal("37.4"), TemperatureUnit.FAHRENHEIT);
        assertEquals(List.of(), check(new Bounded(null, temperature, null)), "37.4 F is 3 C");
        FlowQuantity flow = new FlowQuantity(new BigDecimal("0.42"), FlowUnit.CUBIC_METRE_PER_HOUR);
        assertEquals(List.of(), check(new Bounded(flow, null, null)), "0.42 m3/h is 7 L/min");
    }

    @Test
    void acceptsEveryBoundThatItStates() {
        for (FlowUnit unit : FlowUnit.values()) {
            Matcher told = told(check(new Bounded(new FlowQuantity(BigDecimal.valueOf(1000), unit), null, null)));
            for (int bound = 1; bound <= 2; bound++) {
                FlowQuantity flow = new FlowQuantity(new BigDecimal(told.group(bound)), unit);
                assertEquals(List.of(), check(new Bounded(flow, null, null)));
            }
        }
        for (TemperatureUnit unit : TemperatureUnit.values()) {
            Matcher told = told(check(new Bounded(null, new TemperatureQuantity(BigDecimal.valueOf(1000), unit), null)));
            for (int bound = 1; bound <= 2; bound++) {
                TemperatureQuantity temperature = new TemperatureQuantity(new BigDecimal(told.group(bound)), unit);
                assertEquals(List.of(), check(new Bounded(null, temperature, null)));
            }
        }
    }

    @Test
    void echoesTheNumberAsItCameUnlessThatIsLong() {
        assertEquals("Must be at most 7. Given: 7.0000001.", number("7.0000001"));
        assertEquals("Must be at most 7. Given: 1E+300.", number("1e300"));
        assertEquals("Must be at most 7. Given: 1.23457E+49.", number("12345678901234567890123456789012345678901234567890"));
    }

    private static String number(String text) {
        return check(new Bounded(null, null, new BigDecimal(text))).get(0).message().toString();
    }

    private static Matcher told(List<Violation> violations) {
        Matcher told = TOLD.matcher(violations.get(0).allowed().get(0).toString());
        assertTrue(told.matches(), told.toString());
        return told;
    }

    private static List<Violation> check(Bounded request) {
        Violations violations = new Violations();
        Checker.check(request, violations);
        return violations.sorted();
    }
}
