// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.sheet;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.Locale;

/** Where a line may end: as Unicode has it, but never after an apostrophe within a word. */
final class WordBreaker implements FSTextBreaker {

    private static final String APOSTROPHES = "'\u2019";

    private final BreakIterator breaks = BreakIterator.getLineInstance(Locale.ROOT);
    private String text = "";

    @Override
    public void setText(String newText) {
        text = newText;
        breaks.setText(newText);
    }

    @Override
    public int next() {
        int end = breaks.next();
        while (end != BreakIterator.DONE && withinWord(end)) {
            end = breaks.next();
        }
        return end;
    }

    private boolean withinWord(int at) {
        return at > 0 && at < text.length() && APOSTROPHES.indexOf(text.charAt(at - 1)) >= 0 && Character.isLetterOrDigit(text.charAt(at));
    }
}
