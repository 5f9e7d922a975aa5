// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

/** Blanks around the values of a table, with those that spreadsheets put in for layout. */
final class Blanks {

    private Blanks() {
    }

    /** The text without blanks at its ends, also no-break ones, which the standard library leaves. */
    static String strip(String text) {
        int start = 0;
        int end = text.length();
        while (start < end && isBlank(text.charAt(start))) {
            start++;
        }
        while (end > start && isBlank(text.charAt(end - 1))) {
            end--;
        }
        return text.substring(start, end);
    }

    private static boolean isBlank(char sign) {
        return Character.isWhitespace(sign) || Character.isSpaceChar(sign);
    }
}
