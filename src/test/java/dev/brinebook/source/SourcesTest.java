// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.brinebook.Rows;
import dev.brinebook.text.Language;
import dev.brinebook.text.Message;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class SourcesTest {

    @Test
    void findsASourceByItsKey() {
        assertEquals(Source.Kind.COMMON_PRACTICE, Sources.get("CP-TANKS").kind());
        assertThrows(IllegalArgumentException.class, () -> Sources.get("NO-SUCH"));
    }

    @Test
    void readsTheRegisterInItsOrder() {
        Map<String, Source> read = Sources.read("/sources.csv");
        assertEquals(Sources.all(), read);
        assertEquals(List.of("REQUEST", "NIST-SP811"), read.keySet().stream().limit(2).toList(), "as the file begins");
        assertEquals(Rows.in("/sources.csv"), read.size());
    }

    @Test
    void citesTheEditionWhereThereIsOne() {
        assertEquals("The request itself", Sources.get("REQUEST").cited());
        assertEquals("DIN 38409-6, hardness of a water (1986)", Sources.get("DIN38409-6").cited());
    }

    /** What has no title of its own is said in the language of the reader; in English as the register has it. */
    @Test
    void saysPracticeInTheLanguageOfTheReader() {
        List<Source> ours = Sources.all().values().stream().filter(Source::isInOurWords).toList();
        assertEquals(25, ours.size(), "a new one is counted here");
        ours.forEach(source -> assertEquals(source.citation(), Message.of(source).toString().replace('\u00a0', ' ')));
        assertEquals("Richtwerte der Branche für Harzbetten", Sources.get("CP-HYDRAULICS").inWords().in(Language.of("de")));
        assertEquals("DIN 38409-6, hardness of a water (1986)", Sources.get("DIN38409-6").inWords().in(Language.of("fr")));
    }

    /** A DOI as its registry writes it (ISO 26324: prefix 10, registrant, suffix), or a page by https without a session in it. */
    @Test
    void addressesOfWorksHaveTheirForm() {
        List<String> urls = Sources.all().values().stream().map(Source::url).filter(Objects::nonNull).toList();
        List<String> dois = urls.stream().filter(url -> url.startsWith("https://doi.org/")).toList();
        assertEquals(List.of(), dois.stream().filter(url -> !url.matches("https://doi\\.org/10\\.\\d{4,9}/[-._;()/:A-Za-z0-9]+")).toList());
        assertEquals(List.of(), urls.stream()
                .filter(url -> !url.matches("https://[-a-z0-9.]+\\.[a-z]{2,}/[-._~/?&=%();:A-Za-z0-9]*")).toList());
        assertEquals(46, urls.size(), "a new one is counted here");
        assertEquals(31, dois.size());
        List<Source.Kind> without = List.of(Source.Kind.COMMON_PRACTICE, Source.Kind.COMPUTED, Source.Kind.GIVEN);
        assertEquals(List.of(), Sources.all().values().stream().filter(source -> without.contains(source.kind()) && source.url() != null)
                .map(Source::key).toList(), "no work to point at");
    }

    @Test
    void leavesOutCommentsAndBlankLinesOfATable() throws IOException {
        String table = "# source\n\nkey\n \n one\n# more\ntwo # three\n";
        try (InputStream stream = new ByteArrayInputStream(table.getBytes(StandardCharsets.UTF_8))) {
            assertEquals(List.of("key", " one", "two # three"), Table.lines(stream));
        }
    }

    @Test
    void refusesATableWithARaggedRow() {
        assertThrows(IllegalStateException.class, () -> Table.read("/sources.csv", '|', 4));
        assertThrows(NullPointerException.class, () -> Table.read("/no-such.csv", '|', 4));
    }

    @Test
    void refusesATableWithoutRowsAndADuplicateKey() {
        assertThrows(IllegalStateException.class, () -> Table.read("/source/no-rows.csv", '|', 6));
        var refusal = assertThrows(IllegalStateException.class, () -> Sources.read("/source/key-twice.csv"));
        assertEquals("two sources have the key A-1", refusal.getMessage());
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
