// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class MessageTest {

    private static final Language OTHER = new Language("xx", Map.of("rain", "{0, plural, one {# day} other {# days}} of {1}",
            "none", "{0, plural, =0 {no day} one {# day} other {# days}}", "gap", "{units, select, us {1 inch} other {25 mm}}",
            "kind", "{0, select, less {less salt} other {more salt}}", "quoted", "the '{'slot'}' of {0}, it''s", "two", "{1} of {0}",
            "language.decimalSign", ","), Language.ENGLISH);

    @Test
    void putsValuesInTheirSlots() {
        assertEquals("1,50 of use", Message.of("two", Message.verbatim("use"), new BigDecimal("1.50")).in(OTHER));
        assertEquals("2\u00a0gpg of 3", Message.of("two", 3, new Measure(BigDecimal.valueOf(2), "gpg")).in(OTHER));
    }

    @Test
    void leavesVerbatimTextAsItIs() {
        assertEquals("$1 {0} \\ '", Message.verbatim("$1 {0} \\ '").in(OTHER));
        assertEquals("the {slot} of a {0}, it's", Message.of("quoted", "a {0}").in(OTHER));
    }

    @Test
    void quotesNames() {
        assertEquals("\u201cA-1\u201d", Message.named("A-1").in(Language.ENGLISH));
        assertEquals("\u201ca\u2019b\u2019c\u2019\u201d", Message.named("a\"b\u201dc\u00bb").in(Language.ENGLISH));
        assertEquals("\u201cA-1\u201d", Message.verbatim("A-1").quoted().in(Language.ENGLISH));
        assertEquals("Now", Message.of("policy.now").quoted().in(Language.ENGLISH));
    }

    @Test
    void choosesByCountCodeAndUnits() {
        assertEquals("1 day of sun", Message.of("rain", 1, "sun").in(OTHER));
        assertEquals("1,5 days of sun", Message.of("rain", new BigDecimal("1.5"), "sun").in(OTHER));
        assertEquals("no day", Message.of("none", BigDecimal.ZERO).in(OTHER));
        assertEquals("less salt", Message.of("kind", "less").in(OTHER));
        assertEquals("more salt", Message.of("kind", "same").in(OTHER));
        assertEquals("1 inch", Message.of("gap").in(OTHER));
        assertEquals("25 mm", Message.of("gap").inMetricUnits(true).in(OTHER));
    }

    /** The text of a message differs by language; only the code itself is the same in all. */
    @Test
    void choosesByNoMessage() {
        Message wrong = Message.of("kind", Message.verbatim("less"));
        assertThrows(IllegalArgumentException.class, () -> wrong.in(OTHER));
    }

    @Test
    void joinsInARow() {
        List<Message> names = List.of(Message.verbatim("a"), Message.verbatim("b"), Message.verbatim("c"));
        assertEquals("a b c", Message.sentences(names).toString());
        assertEquals("a, b, c", Message.joined(Joint.COMMA, names).toString());
        assertEquals("", Message.sentences(List.of()).toString());
    }

    @Test
    void refusesWhatCannotBeWritten() {
        assertThrows(IllegalArgumentException.class, () -> Message.of("two", 1.5, 2).in(OTHER));
        assertThrows(IllegalArgumentException.class, () -> Message.of("two", 1).in(OTHER));
        assertThrows(IllegalArgumentException.class, () -> Message.of("noSuchText").in(OTHER));
        assertThrows(IllegalArgumentException.class, () -> TextPattern.parse("{0"));
        assertThrows(IllegalArgumentException.class, () -> TextPattern.parse("{name}"));
        assertThrows(IllegalArgumentException.class, () -> TextPattern.parse("{0, number}"));
    }

    @Test
    void isMadeWhenItIsReadWhereThatIsAskedFor() {
        Message late = Message.later(() -> Message.of("two", 1, 2));
        assertEquals(Message.of("two", 1, 2), late);
        assertEquals(late, Message.of("two", 1, 2));
        assertEquals(Message.of("two", 1, 2).hashCode(), late.hashCode());
        assertEquals(Message.of("two", 1, 2).in(OTHER), late.in(OTHER));
        assertEquals(Message.of("two", 1, 2).numbers(), late.numbers());
        assertNull(Message.later(() -> Message.of("gap")).constantKey());
        assertEquals(Message.of("gap").inMetricUnits(true), Message.later(() -> Message.of("gap")).inMetricUnits(true));
        assertEquals(Message.verbatim("a").quoted(), Message.later(() -> Message.verbatim("a")).quoted());
        Message.later(() -> {
            throw new IllegalStateException("nobody reads it");
        });
    }

    @Test
    void isAValue() {
        assertEquals(Message.of("two", 1, 2), Message.of("two", 1, 2));
        assertNotEquals(Message.of("gap"), Message.of("gap").inMetricUnits(true));
        assertEquals("gap metric", Message.of("gap").inMetricUnits(true).constantKey());
        assertNull(Message.of("two", 1, 2).constantKey());
    }
}
