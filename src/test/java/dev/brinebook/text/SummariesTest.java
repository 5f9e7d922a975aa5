// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every committed summary can be read to a customer; {@code CornerSweepTest} asks the same of random requests. */
public class SummariesTest {

    private static final Path EXAMPLES = Path.of("openapi/examples");

    @Test
    void everyExampleSpeaksPlainly() throws IOException {
        List<String> faults = new ArrayList<>();
        int seen = 0;
        try (Stream<Path> files = Files.list(EXAMPLES)) {
            for (Path file : files.filter(file -> file.toString().endsWith(".response.json")).sorted().toList()) {
                JsonNode summary = new ObjectMapper().readTree(file.toFile()).path("summary");
                Path request = Path.of(file.toString().replace(".response.", ".request."));
                if (summary.isTextual() && Files.exists(request)) {
                    seen++;
                    faults.addAll(Summaries.faults(summary.asText(), given(new ObjectMapper().readTree(request.toFile()))));
                }
            }
        }
        assertTrue(seen > 30, "it saw " + seen);
        assertEquals(List.of(), faults);
    }

    /** Names that a request gives to what it compares, and numbers, which are repeated as they came. */
    public static Set<String> given(JsonNode request) {
        Set<String> given = new TreeSet<>((one, other) -> one.length() == other.length() ? one.compareTo(other)
                : other.length() - one.length());
        Stream.of("name", "sku").flatMap(key -> request.findValuesAsText(key).stream()).filter(name -> !name.isBlank()).forEach(given::add);
        numbers(request).filter(number -> number.scale() > 1).flatMap(number -> Stream.of(number, number.movePointRight(2),
                number.round(new MathContext(4))))
                .forEach(number -> given.add(Language.ENGLISH.number(number)));
        return given;
    }

    private static Stream<BigDecimal> numbers(JsonNode request) {
        return request.isNumber() ? Stream.of(request.decimalValue())
                : StreamSupport.stream(request.spliterator(), false).flatMap(SummariesTest::numbers);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"Set 27 gpg.| 0", "set 27 gpg.| 1", "It uses 26.9612 gpg.| 1", "It costs 428.8 a year; more.| 2",
            "Choose meteredDelayed.| 1", "One two three four five six seven eight nine ten 11 12 13 14 15 16 17 18 19 20 21.| 1"})
    void findsWhatIsWrong(String summary, int faults) {
        assertEquals(faults, Summaries.faults(summary, Set.of()).size(), () -> "" + Summaries.faults(summary, Set.of()));
    }
}
