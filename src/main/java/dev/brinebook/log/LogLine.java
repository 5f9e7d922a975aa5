// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.log;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import org.slf4j.event.KeyValuePair;
import org.slf4j.event.Level;

/**
 * One line of the log, a JSON object: no message can add another line.
 *
 * @param time when
 * @param level severity
 * @param logger name of the logger
 * @param message what happened
 * @param about further fields by name; null values are omitted
 * @param error what was thrown, or null
 */
record LogLine(Instant time, Level level, String logger, String message, List<KeyValuePair> about, Throwable error) {

    /** Collectors of logs cut lines apart that are much longer; the start and the cause of an error are at its ends. */
    private static final int LONGEST_TEXT = 12_000;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ss.SSS'Z'")
            .withZone(ZoneOffset.UTC);
    private static final JsonFactory JSON = new JsonFactory();

    /** The line with its end, in UTF-8. */
    byte[] bytes() {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = JSON.createGenerator(text)) {
            json.writeStartObject();
            json.writeStringField("time", TIME.format(time));
            json.writeStringField("level", level.name());
            json.writeStringField("logger", logger);
            json.writeStringField("message", shortened(message));
            for (KeyValuePair one : about) {
                write(json, one.key, one.value);
            }
            if (error != null) {
                json.writeStringField("error", shortened(stackOf(error)));
            }
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.append('\n').toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void write(JsonGenerator json, String name, Object value) throws IOException {
        if (value instanceof Integer whole) {
            json.writeNumberField(name, whole);
        } else if (value instanceof Float number) {
            json.writeNumberField(name, number);
        } else if (value != null) {
            json.writeStringField(name, shortened(value.toString()));
        }
    }

    private static String stackOf(Throwable error) {
        StringWriter stack = new StringWriter();
        error.printStackTrace(new PrintWriter(stack));
        return stack.toString();
    }

    private static String shortened(String text) {
        return text == null || text.length() <= LONGEST_TEXT ? text
                : text.substring(0, LONGEST_TEXT / 2) + "…" + text.substring(text.length() - LONGEST_TEXT / 2);
    }
}
