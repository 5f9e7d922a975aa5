package dev.brinebook.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class SourcesTest {

    @Test
    void findsASourceByItsKey() {
        assertEquals(Source.Kind.COMMON_PRACTICE, Sources.get("CP-TANKS").kind());
        assertThrows(IllegalArgumentException.class, () -> Sources.get("NO-SUCH"));
    }

    @Test
    void refusesATableWithARaggedRow() {
        assertThrows(IllegalStateException.class, () -> Table.read("/sources.csv", '|', 4));
        assertThrows(NullPointerException.class, () -> Table.read("/no-such.csv", '|', 4));
    }
}
