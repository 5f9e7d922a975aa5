package dev.brinebook.guard;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class NoAnswerTest {

    private static final double US_GALLON_LITRES = 3.785411784;
    private static final double POUND_GRAMS = 453.59237;
    private static final double CUBIC_FOOT_LITRES = 28.316846592;

    /** The exact factors of NIST SP 811. */
    @Test
    void saysTheSameInBothSystems() {
        assertSays(NoAnswer.CAPACITY_ABOVE_TABLE, "20 lb/ft3", format("%.0f g/L", 20 * POUND_GRAMS / CUBIC_FOOT_LITRES));
        assertSays(NoAnswer.BELOW_DESIGN_FLOWS, format("%.2f gpm", 60 * 0.2 / US_GALLON_LITRES), "0.2 L/s");
        assertSays(NoAnswer.ABOVE_DESIGN_FLOWS, format("%,.0f gpm", 60 * 500 / US_GALLON_LITRES), "500 L/s");
    }

    @Test
    void endsWithoutAFullStop() {
        for (NoAnswer reason : NoAnswer.values()) {
            assertFalse(reason.words().endsWith("."));
            assertFalse(reason.metricWords().endsWith("."));
        }
    }

    private static String format(String format, double number) {
        return String.format(Locale.ROOT, format, number);
    }

    private static void assertSays(NoAnswer reason, String us, String metric) {
        assertTrue(reason.words().contains(us));
        assertTrue(reason.metricWords().contains(metric));
    }
}
