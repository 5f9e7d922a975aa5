// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.guard;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.text.Message;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class NoResultReasonTest {

    private static final double US_GALLON_LITRES = 3.785411784;
    private static final double POUND_GRAMS = 453.59237;
    private static final double CUBIC_FOOT_LITRES = 28.316846592;

    /** The exact factors of NIST SP 811. */
    @Test
    void saysTheSameInBothSystems() {
        assertSays(NoResultReason.CAPACITY_ABOVE_TABLE, "20\u00a0lb/ft³", format("%.0f\u00a0g/L", 20 * POUND_GRAMS / CUBIC_FOOT_LITRES));
        assertSays(NoResultReason.BELOW_DESIGN_FLOWS, format("%.2f\u00a0gpm", 60 * 0.2 / US_GALLON_LITRES), "0.2\u00a0L/s");
        assertSays(NoResultReason.ABOVE_DESIGN_FLOWS, format("%,.0f\u00a0gpm", 60 * 500 / US_GALLON_LITRES), "500\u00a0L/s");
    }

    @Test
    void isWholeSentences() {
        for (NoResultReason reason : NoResultReason.values()) {
            assertTrue(Message.of(reason).toString().matches("[A-Z].*[^.]\\."), reason.name());
            assertTrue(Message.of(reason).inMetricUnits(true).toString().matches("[A-Z].*[^.]\\."), reason.name());
        }
    }

    private static String format(String format, double number) {
        return String.format(Locale.ROOT, format, number);
    }

    private static void assertSays(NoResultReason reason, String us, String metric) {
        assertTrue(Message.of(reason).toString().contains(us));
        assertTrue(Message.of(reason).inMetricUnits(true).toString().contains(metric));
    }
}
