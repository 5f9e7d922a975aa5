// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.log;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.io.PrintWriter;
import java.io.StringWriter;
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
    private static final int NANOSECONDS_PER_MILLISECOND = 1_000_000;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ss").withZone(ZoneOffset.UTC);

    /** The second of the last line, as most lines of one share it. */
    private static volatile Second second = new Second(Long.MIN_VALUE, "");

    private record Second(long epochSecond, String text) {
    }

    LogLine {
        message = shortened(message);
    }

    /** Writes the line with its end behind {@code text}. */
    void appendTo(StringBuilder text) {
        text.append("{\"time\":\"");
        appendTime(text, time);
        append(text.append('"'), "level", level.name());
        append(text, "logger", logger);
        append(text, "message", message);
        for (KeyValuePair one : about) {
            append(text, one.key, one.value);
        }
        if (error != null) {
            append(text, "error", stackOf(error));
        }
        text.append("}\n");
    }

    private static void appendTime(StringBuilder text, Instant time) {
        Second now = second;
        if (now.epochSecond() != time.getEpochSecond()) {
            now = new Second(time.getEpochSecond(), TIME.format(time));
            second = now;
        }
        int milliseconds = time.getNano() / NANOSECONDS_PER_MILLISECOND;
        text.append(now.text()).append(milliseconds < 10 ? ".00" : milliseconds < 100 ? ".0" : ".").append(milliseconds).append('Z');
    }

    private static void append(StringBuilder text, String name, Object value) {
        if (value == null) {
            return;
        }
        quote(text.append(','), name);
        text.append(':');
        if (value instanceof Integer || value instanceof Float number && Float.isFinite(number)) {
            text.append(value);
        } else {
            quote(text, shortened(value.toString()));
        }
    }

    private static void quote(StringBuilder text, String said) {
        text.append('"');
        JsonStringEncoder.getInstance().quoteAsString(said, text);
        text.append('"');
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
