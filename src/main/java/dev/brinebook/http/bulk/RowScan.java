// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

/** Follows the quotes of a table, to find out where a row ends: a cell in quotes may have line breaks (RFC 4180 section 2.6). */
final class RowScan {

    /** Where in a cell it is. */
    private enum In { START, PLAIN, QUOTED, CLOSED, BEHIND, FAULTY }

    private final String separators;
    private In in = In.START;

    /** A scan of a table whose cells have one of {@code separators} between. */
    RowScan(String separators) {
        this.separators = separators;
    }

    /** Begins a row. */
    void begin() {
        in = In.START;
    }

    /** Goes on over bytes of the row, from {@code start} to before {@code end}. */
    void read(byte[] bytes, int start, int end) {
        for (int i = start; i < end && in != In.FAULTY; i++) {
            in = after((char) bytes[i]);
        }
    }

    private In after(char sign) {
        if (in == In.QUOTED) {
            return sign == '"' ? In.CLOSED : In.QUOTED;
        }
        if (separators.indexOf(sign) >= 0) {
            return In.START;
        }
        if (sign == '"' && (in == In.START || in == In.CLOSED)) {
            return In.QUOTED;
        }
        if (in == In.START || in == In.PLAIN) {
            return In.PLAIN;
        }
        return Character.isWhitespace(sign) ? In.BEHIND : In.FAULTY;
    }

    /** Whether a quote is open. */
    boolean isOpen() {
        return in == In.QUOTED;
    }

    /** Whether text follows a closing quote. */
    boolean isFaulty() {
        return in == In.FAULTY;
    }
}
