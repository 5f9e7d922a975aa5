// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.sheet;

import dev.brinebook.text.Message;
import java.util.Arrays;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A sentence with numbers of the answer.
 *
 * @param at JSON pointers into the answer that its numbers are taken from, a space between two; null where there are none
 * @param text the sentence
 */
public record Sentence(String at, Message text) {

    /** A sentence with the values of {@code from}. */
    public static Sentence of(Message text, SheetCell... from) {
        String at = Arrays.stream(from).map(SheetCell::at).filter(Objects::nonNull).collect(Collectors.joining(" "));
        return new Sentence(at.isEmpty() ? null : at, text);
    }
}
