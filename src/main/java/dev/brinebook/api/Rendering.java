// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.text.Language;
import java.util.List;

/**
 * How a form of an answer is to be written.
 *
 * @param language the language of its texts
 * @param chosen the values of its choices that were given
 */
public record Rendering(Language language, List<Enum<?>> chosen) {

    public Rendering {
        chosen = List.copyOf(chosen);
    }

    /** In a language, without a choice. */
    public static Rendering in(Language language, Enum<?>... chosen) {
        return new Rendering(language, List.of(chosen));
    }

    /** The value given of a choice, or {@code otherwise}. */
    public <E extends Enum<E>> E choice(Class<E> values, E otherwise) {
        return chosen.stream().filter(values::isInstance).map(values::cast).findFirst().orElse(otherwise);
    }
}
