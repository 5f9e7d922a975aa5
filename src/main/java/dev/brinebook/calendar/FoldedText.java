// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.calendar;

/** Content lines no longer than RFC 5545, section 3.1, asks: counted in octets of UTF-8, and never cut inside a letter. */
final class FoldedText {

    private static final int MAX_OCTETS = 75;

    private FoldedText() {
    }

    static String of(String lines) {
        StringBuilder folded = new StringBuilder(lines.length() + lines.length() / 16);
        int octets = 0;
        int letter;
        for (int i = 0; i < lines.length(); i += Character.charCount(letter)) {
            letter = lines.codePointAt(i);
            boolean lineBreak = letter == '\r' || letter == '\n';
            int size = octets(letter);
            if (!lineBreak && octets + size > MAX_OCTETS) {
                folded.append("\r\n ");
                octets = 1;
            }
            folded.appendCodePoint(letter);
            octets = lineBreak ? 0 : octets + size;
        }
        return folded.toString();
    }

    /** Of a letter in UTF-8 (RFC 3629, section 3). */
    private static int octets(int letter) {
        return letter < 0x80 ? 1 : letter < 0x800 ? 2 : letter < 0x10000 ? 3 : 4;
    }
}
