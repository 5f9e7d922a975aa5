package dev.brinebook.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class MessageTest {

    /** Another language: all in capitals, a comma before the decimals, nothing spoken of in the singular. */
    private static final Wording LOUD = new Wording() {
        @Override
        public String template(String english) {
            return english.toUpperCase(java.util.Locale.ROOT);
        }

        @Override
        public String number(BigDecimal number) {
            return number.toPlainString().replace('.', ',');
        }

        @Override
        public boolean isOne(BigDecimal count) {
            return false;
        }
    };

    @Test
    void putsValuesInTheirPlaces() {
        Message message = Message.of("{1} of {0}", Message.of("use"), new BigDecimal("1.50"));
        assertEquals("1.50 of use", message.toString());
        assertEquals("1,50 OF USE", message.in(LOUD));
    }

    @Test
    void leavesVerbatimTextAndSignsOfReplacementAsTheyAre() {
        assertEquals("$1 {0} \\", Message.of("{0}", "$1 {0} \\").in(LOUD));
        assertEquals("name: NO", Message.of("{0}: {1}", "name", Message.of("no")).in(LOUD));
    }

    @Test
    void saysWhatAWordedThingSays() {
        Worded tap = () -> "a tap";
        assertEquals("a tap", Message.saying(tap).toString());
        assertEquals("a tap", tap.metricWords());
    }

    @Test
    void speaksOfOneInTheSingular() {
        assertEquals("1 day of rain", Message.counted("{0} day of {1}", "{0} days of {1}", 1, "rain").toString());
        assertEquals("2 days of rain", Message.counted("{0} day of {1}", "{0} days of {1}", 2, "rain").toString());
        assertEquals("1 DAYS OF rain", Message.counted("{0} day of {1}", "{0} days of {1}", 1, "rain").in(LOUD));
    }

    @Test
    void joinsMessages() {
        assertEquals("A, B, C", Message.joined(", ", List.of(Message.of("a"), Message.of("b"), Message.of("c"))).in(LOUD));
        assertEquals("", Message.joined(", ", List.of()).toString());
    }

    @Test
    void refusesNumbersThatWereNotRounded() {
        Message message = Message.of("{0}", 1.5);
        assertThrows(IllegalArgumentException.class, message::toString);
    }

    @Test
    void knowsTemplatesWithoutWords() {
        assertTrue(Message.isWordless("{0} {1}, {2}"));
        assertFalse(Message.isWordless("{0} or {1}"));
    }

    @Test
    void isEqualWhenItSaysTheSame() {
        assertEquals(Message.of("a {0}", 1), Message.of("a {0}", 1));
        assertEquals(Message.of("a {0}", 1).hashCode(), Message.of("a {0}", 1).hashCode());
        assertNotEquals(Message.of("a {0}", 1).hashCode(), Message.of("a {0}", 2).hashCode(), "or sets would be slow");
        assertFalse(Message.of("a {0}", 1).equals(Message.of("a {0}", 2)));
        assertFalse(Message.of("a").equals("a"));
    }
}
