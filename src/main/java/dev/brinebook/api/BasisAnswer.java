// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.source.Source;
import dev.brinebook.source.Sources;
import dev.brinebook.text.Message;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

@SchemaDescription("The formula and the source behind a number.")
public record BasisAnswer(
        @Property(value = "JSON pointer to the result, or to the part of the answer, that it explains. `*` means every element of a "
                + "list.",
                example = "\"/total\"") String pointer,
        @Property(value = "The formula, in words.", example = "\"hardness plus 4 gpg for each mg/L of iron\"")
        Message formula,
        @Property(value = "Key of its source in the register of sources.", example = "\"NSDWR\"") String key,
        @Property(value = "The publication or practice it comes from.", example = "\"40 CFR 143.3 (2023)\"")
        Message source,
        @Property("Reliability of the source.") Source.Kind kind) {

    /** Words of sources by key, of which there are no more than the register has. */
    private static final Map<String, Message> IN_WORDS = new ConcurrentHashMap<>();

    static BasisAnswer of(String pointer, Message formula, String sourceKey) {
        Source source = Sources.get(sourceKey);
        return new BasisAnswer(pointer, formula, sourceKey, IN_WORDS.computeIfAbsent(sourceKey, key -> source.inWords()), source.kind());
    }

    /** The same entry for a pointer. */
    BasisAnswer at(String place) {
        return new BasisAnswer(place, formula, key, source, kind);
    }

    static String cite(String sourceKey) {
        return Sources.get(sourceKey).cited();
    }
}
