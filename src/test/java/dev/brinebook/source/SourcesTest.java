package dev.brinebook.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
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

    @Test
    void refusesATableWithoutRowsAndAKeyThatStandsTwice() {
        assertThrows(IllegalStateException.class, () -> Table.read("/source/no-rows.csv", '|', 5));
        assertThrows(IllegalStateException.class, () -> Sources.read("/source/key-twice.csv"));
    }

    @Test
    void failsLoudlyWhenATableCannotBeRead() {
        assertThrows(UncheckedIOException.class, () -> Table.lines(new InputStream() {
            @Override
            public int read() {
                return 'a';
            }

            @Override
            public int read(byte[] bytes, int offset, int length) {
                return -1;
            }

            @Override
            public void close() throws IOException {
                throw new IOException("cut off");
            }
        }));
    }
}
