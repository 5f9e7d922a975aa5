// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;

/** The lines or rows of a stream, one after the other, none longer than a limit in memory. */
final class BoundedLines {

    /** What some spreadsheets write before UTF-8; in a JSON body it is refused, but this is how they save a table. */
    private static final byte[] BYTE_ORDER_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};
    private static final int BUFFER_BYTES = 8_192;
    private static final int TOO_LONG = -1;

    private final InputStream stream;
    private final int maxLineBytes;
    private byte[] buffer = new byte[BUFFER_BYTES];
    /** Where the next line begins in the buffer. */
    private int start;
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
        return start == filled && !fill() ? null : line(lineFrom(0));
    }

    /**
     * The next row of a table, or null at the end. Where a quote is not closed within the limit, or text follows the closing quote
     * on a later line, the row is the first line alone, so that one stray quote swallows no rows.
     */
    Line next(RowScan scan) throws IOException {
        if (start == filled && !fill()) {
            return null;
        }
        if (number == 0 && lineFrom(0) >= BYTE_ORDER_MARK.length && Arrays.equals(buffer, 0, BYTE_ORDER_MARK.length, BYTE_ORDER_MARK, 0,
                BYTE_ORDER_MARK.length)) {
            start = BYTE_ORDER_MARK.length;
        }
        int first = lineFrom(0);
        int read = 0;
        int end = first;
        scan.begin();
        while (end != TOO_LONG) {
            scan.read(buffer, start + read, start + end);
            if (!scan.isOpen()) {
                return line(scan.isFaulty() ? first : end);
            }
            read = end;
            end = start + end == filled ? TOO_LONG : lineFrom(end + 1);
        }
        return line(first);
    }

    /** Bytes from {@link #start} to the first line feed at or behind {@code from}, or to the end of the stream. */
    private int lineFrom(int from) throws IOException {
        int end = from;
        while (true) {
            while (start + end < filled && buffer[start + end] != '\n') {
                end++;
            }
            if (end > maxLineBytes) {
                return TOO_LONG;
            }
            if (start + end < filled || !fill()) {
                return end;
            }
        }
    }

    /** Takes {@code length} bytes, and the line feed behind, out of the buffer. */
    private Line line(int length) throws IOException {
        number++;
        if (length == TOO_LONG) {
            skipLine();
            return new Line(number, null);
        }
        byte[] bytes = Arrays.copyOfRange(buffer, start, start + length);
        start = Math.min(filled, start + length + 1);
        return new Line(number, bytes);
    }

    private void skipLine() throws IOException {
        while (start < filled || fill()) {
            if (buffer[start++] == '\n') {
                return;
            }
        }
    }

    /** The number of the line that is read now, or was last. */
    long number() {
        return number;
    }

    /** Whether a read would wait for the caller. */
    boolean waits() throws IOException {
        return start == filled && stream.available() == 0;
    }

    /** Reads more behind what is there; false at the end of the stream. */
    private boolean fill() throws IOException {
        if (start > 0) {
            System.arraycopy(buffer, start, buffer, 0, filled - start);
            filled -= start;
            start = 0;
        }
        if (filled == buffer.length) {
            buffer = Arrays.copyOf(buffer, Math.min(2 * filled, maxLineBytes + BUFFER_BYTES));
        }
        int more = stream.read(buffer, filled, buffer.length - filled);
        filled += Math.max(0, more);
        return more > 0;
    }
}
