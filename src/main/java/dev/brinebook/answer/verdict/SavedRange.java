// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.verdict;

import dev.brinebook.api.Text;
import dev.brinebook.text.Message;
import java.util.Currency;

/** A saving of a year that lies between two amounts, either of which may be a loss, in words and without a sign. */
final class SavedRange {

    private SavedRange() {
    }

    /**
     * The range as a sentence.
     *
     * @param least the least saving, negative for a loss
     * @param most the most, at least {@code least}
     */
    static Message inWords(double least, double most, Currency currency) {
        int low = Text.whole(least).signum();
        int high = Text.whole(most).signum();
        Message one = Text.rounded(Math.abs(least), currency);
        Message other = Text.rounded(Math.abs(most), currency);
        if (low < 0) {
            return high > 0 ? Message.of("verdict.costsMoreOrLess", one, other)
                    : high < 0 ? Message.of("verdict.costsMoreDepending", other, one) : Message.of("verdict.costsUpToMore", one);
        }
        return low > 0 ? Message.of("verdict.savesDepending", one, other)
                : high > 0 ? Message.of("verdict.savesUpTo", other) : Message.of("verdict.savesNothingDepending");
    }
}
