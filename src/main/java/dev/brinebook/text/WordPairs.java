// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.text;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Words that a variant of a language says in place of those of its parent, such as {@code coste>costo}. Only words of the same gender
 * and number may stand for each other, as nothing else in a text is changed; texts with other words are written out in the variant.
 */
final class WordPairs {

    private final List<Pair> pairs = new ArrayList<>();

    private record Pair(String word, Pattern whole, String instead) {
    }

    /** Pairs {@code from>to}, separated by semicolons; an earlier one is applied first. */
    WordPairs(String written) {
        for (String pair : written.split(";")) {
            if (!pair.isBlank()) {
                String[] words = pair.strip().split(">", 2);
                add(words[0], words[1]);
                add(capital(words[0]), capital(words[1]));
            }
        }
    }

    private void add(String word, String instead) {
        pairs.add(new Pair(word, Pattern.compile("(?<!\\p{L})" + Pattern.quote(word) + "(?!\\p{L})"), instead));
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    String in(String text) {
        String changed = text;
        for (Pair pair : pairs) {
            if (changed.contains(pair.word())) { // few texts have any, and to match takes long
                changed = pair.whole().matcher(changed).replaceAll(pair.instead());
            }
        }
        return changed;
    }
}
