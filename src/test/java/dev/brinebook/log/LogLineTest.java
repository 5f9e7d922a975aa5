// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slf4j.event.KeyValuePair;
import org.slf4j.event.Level;

/** RFC 8259 for each line; RFC 3339 for its time. */
class LogLineTest {

    private static final Instant TIME = Instant.parse("2026-03-01T02:03:04.050600Z");

    @Test
    void writesEveryFieldByName() throws IOException {
        JsonNode line = read(new LogLine(TIME, Level.WARN, "a.B", "said", List.of(new KeyValuePair("status", 503),
                new KeyValuePair("milliseconds", 1.5f), new KeyValuePair("traceId", null), new KeyValuePair("route", "/v1")),
                new IllegalStateException("outer", new IOException("inner"))));
        assertEquals(List.of("time", "level", "logger", "message", "status", "milliseconds", "route", "error"),
                List.copyOf(line.properties().stream().map(java.util.Map.Entry::getKey).toList()));
        assertEquals("2026-03-01T02:03:04.050Z", line.get("time").textValue());
        assertEquals("WARN", line.get("level").textValue());
        assertEquals(503, line.get("status").intValue());
        assertEquals(1.5, line.get("milliseconds").doubleValue());
        String error = line.get("error").textValue();
        assertTrue(error.startsWith("java.lang.IllegalStateException: outer\n\tat ")
                && error.contains("\nCaused by: java.io.IOException: inner\n\t"), error);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n{\"level\":\"ERROR\"}\n", "\r", "\"},{\"", "\\", "\u0000\u001b[31m", "\u2028\u2029\u0085", "é€😀", ""})
    void holdsWhateverIsSaidInOneLine(String said) throws IOException {
        JsonNode line = read(new LogLine(TIME, Level.INFO, said, said, List.of(new KeyValuePair("about", said)),
                new IOException(said)));
        for (String name : List.of("logger", "message", "about")) {
            assertEquals(said, line.get(name).textValue());
        }
        assertTrue(line.get("error").textValue().contains(said));
    }

    @ParameterizedTest
    @CsvSource({"2026-03-01T02:03:04Z, 2026-03-01T02:03:04.000Z", "2026-03-01T02:03:04.0509Z, 2026-03-01T02:03:04.050Z",
        "2026-03-01T02:03:04.999999999Z, 2026-03-01T02:03:04.999Z", "2026-03-01T02:03:05.007Z, 2026-03-01T02:03:05.007Z",
        "1969-12-31T23:59:59.5Z, 1969-12-31T23:59:59.500Z"})
    void tellsTheTimeToTheMillisecond(Instant time, String told) throws IOException {
        assertEquals(told, read(new LogLine(time, Level.INFO, "a", "b", List.of(), null)).get("time").textValue());
    }

    @Test
    void acceptsHalfCharactersAndIsNeverLong() throws IOException {
        assertEquals("?", read(new LogLine(TIME, Level.INFO, "a", "\ud800", List.of(), null)).get("message").textValue());
        StackTraceElement[] deep = new StackTraceElement[10_000];
        Arrays.fill(deep, new StackTraceElement("a.B", "c", "B.java", 1));
        StackOverflowError error = new StackOverflowError();
        error.setStackTrace(deep);
        String many = "x".repeat(1_000_000);
        assertTrue(text(new LogLine(TIME, Level.INFO, "a", many, List.of(new KeyValuePair("b", many)), error)).length() < 50_000);
    }

    /** What its only line says; a line of the log has one end of line, its last character. */
    private static JsonNode read(LogLine line) throws IOException {
        String text = text(line);
        assertEquals(text.length() - 1, text.indexOf('\n'));
        assertFalse(text.contains("\r"));
        return new ObjectMapper().readTree(text);
    }

    /** As it stands in the log, in UTF-8. */
    private static String text(LogLine line) {
        StringBuilder text = new StringBuilder();
        line.appendTo(text);
        return new String(text.toString().getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    }
}
