// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import dev.brinebook.http.json.JsonReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Supplier;

/**
 * A line or row as it was sent: what its answer repeats, and the request in it.
 *
 * @param number its number, from 1 on
 * @param bytes its bytes; null when it is too long
 * @param repeated what its answer repeats, in the order of {@link RequestLines#repeats}: texts of cells, or of JSON with null where
 *         there is none; null when the line is no row
 * @param cells all its cells; null when it is no row
 * @param sent the request on it as it was sent, where that is JSON; else null
 * @param request the request in it; throws what the line has for an error
 */
record SentLine(long number, byte[] bytes, List<String> repeated, List<String> cells, byte[] sent, Supplier<JsonReader.Source> request) {

    /** The line as text, without blanks around it. */
    String text() {
        return new String(bytes, StandardCharsets.UTF_8).strip();
    }

    /** A line with an error of its own, of which nothing is known but its bytes. */
    static SentLine faulty(BoundedLines.Line line, RuntimeException fault) {
        return new SentLine(line.number(), line.bytes(), null, null, null, () -> {
            throw fault;
        });
    }
}
