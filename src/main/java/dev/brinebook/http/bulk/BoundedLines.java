// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;

/** The lines of a stream, one after the other, none longer than a limit in memory. */
final class BoundedLines {

    private static final int BUFFER_BYTES = 8_192;

    private final InputStream stream;
    private final int maxLineBytes;
    private final byte[] buffer = new byte[BUFFER_BYTES];
    private final ByteArrayOutputStream line = new ByteArrayOutputStream();
    private int at;
    private int filled;
    private long number;

    /** A line: its number, from 1 on, and its bytes; null when it is longer than the limit. */
    record Line(long number, byte[] bytes) {

        boolean isBlank() {
            if (bytes == null) {
                return false;
            }
            for (byte one : bytes) {
                if (one != ' ' && one != '\t' && one != '\r') {
                    return false;
                }
            }
            return true;
        }
    }

    BoundedLines(InputStream stream, int maxLineBytes) {
        this.stream = stream;
        this.maxLineBytes = maxLineBytes;
    }

    /** The next line, or null at the end. Of one that is too long the rest is read past. */
    Line next() throws IOException {
        line.reset();
        boolean tooLong = false;
        boolean any = false;
        while (fill()) {
            any = true;
            int end = at;
            while (end < filled && buffer[end] != '\n') {
                end++;
            }
            tooLong |= line.size() + end - at > maxLineBytes;
            if (!tooLong) {
                line.write(buffer, at, end - at);
            }
            boolean ended = end < filled;
            at = ended ? end + 1 : filled;
            if (ended) {
                break;
            }
        }
        return any ? new Line(++number, tooLong ? null : line.toByteArray()) : null;
    }

    /** The number of the line that is read now, or was last. */
    long number() {
        return number;
    }

    /** Whether a read would wait for the caller. */
    boolean waits() throws IOException {
        return at == filled && stream.available() == 0;
    }

    private boolean fill() throws IOException {
        if (at == filled) {
            at = 0;
            filled = Math.max(0, stream.read(buffer));
        }
        return at < filled;
    }
}
