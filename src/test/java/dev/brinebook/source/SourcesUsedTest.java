// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** All citations of the code and the tables are in the register of sources, and nothing else is. */
class SourcesUsedTest {

    private static final Path CODE = Path.of("src/main/java");
    private static final Path TABLES = Path.of("src/main/resources");
    private static final Pattern CITED = Pattern.compile("\\[([A-Z][A-Z0-9]*(?:-[A-Z0-9]+)*)]");

    @Test
    void everyKeyThatIsCitedIsRegistered() throws IOException {
        Set<String> unknown = new TreeSet<>();
        int seen = 0;
        for (Path file : files(CODE, ".java")) {
            Matcher citation = CITED.matcher(javadocOf(file));
            while (citation.find()) {
                seen++;
                if (!Sources.all().containsKey(citation.group(1))) {
                    unknown.add(CODE.relativize(file) + " cites " + citation.group(1));
                }
            }
        }
        assertEquals(Set.of(), unknown);
        assertTrue(seen > 100, "it saw " + seen + " citations");
    }

    @Test
    void everyTableNamesItsSource() throws IOException {
        for (Path table : files(TABLES, ".csv")) {
            if (!table.endsWith("sources.csv")) {
                Matcher citation = CITED.matcher(headerOf(table));
                assertTrue(citation.find(), table + " names no source");
                do {
                    assertTrue(Sources.all().containsKey(citation.group(1)), table + " cites " + citation.group(1));
                } while (citation.find());
            }
        }
    }

    /** Cited in a comment of the code or of the texts as [KEY], or named in the code, such as for the basis of an answer. */
    @Test
    void everySourceOfTheRegisterIsCited() throws IOException {
        StringBuilder code = new StringBuilder();
        for (Path file : files(CODE, ".java")) {
            code.append(Files.readString(file));
        }
        for (Path texts : files(TABLES.resolve("text"), ".properties")) {
            code.append(Files.readString(texts));
        }
        Set<String> unused = new TreeSet<>(Sources.all().keySet());
        unused.removeIf(key -> code.indexOf("[" + key + "]") >= 0 || code.indexOf('"' + key + '"') >= 0);
        assertEquals(Set.of(), unused);
    }

    private static String headerOf(Path table) throws IOException {
        return String.join("\n", Files.readAllLines(table).stream().filter(line -> line.startsWith("#")).toList());
    }

    private static List<Path> files(Path root, String ending) throws IOException {
        try (Stream<Path> all = Files.walk(root)) {
            return all.filter(file -> file.toString().endsWith(ending)).sorted().toList();
        }
    }

    /** Comments only: in code, brackets hold indexes and patterns. */
    private static String javadocOf(Path file) {
        try {
            StringBuilder comments = new StringBuilder();
            Matcher comment = Pattern.compile("/\\*.*?\\*/|//[^\n]*", Pattern.DOTALL).matcher(Files.readString(file));
            while (comment.find()) {
                comments.append(comment.group()).append('\n');
            }
            return comments.toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
