package dev.brinebook.regeneration.api;

import java.nio.charset.StandardCharsets;

/** Content lines no longer than RFC 5545, section 3.1, asks: counted in octets of UTF-8, and never cut inside a letter. */
final class FoldedText {

    private static final int MAX_OCTETS = 75;

    private FoldedText() {
    }

    static String of(String lines) {
        StringBuilder folded = new StringBuilder(lines.length() + lines.length() / 16);
        int octets = 0;
        for (int i = 0; i < lines.length(); i += Character.charCount(lines.codePointAt(i))) {
            String letter = Character.toString(lines.codePointAt(i));
            boolean lineBreak = letter.equals("\r") || letter.equals("\n");
            int size = letter.getBytes(StandardCharsets.UTF_8).length;
            if (!lineBreak && octets + size > MAX_OCTETS) {
                folded.append("\r\n ");
                octets = 1;
            }
            folded.append(letter);
            octets = lineBreak ? 0 : octets + size;
        }
        return folded.toString();
    }
}
