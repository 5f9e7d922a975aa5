// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.source.Source;
import dev.brinebook.source.Sources;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Finds the source in the register by the words in which an answer cites it. */
final class CitedSources {

    private static final Map<String, Source> BY_CITATION = Sources.all().values().stream()
            .collect(Collectors.toUnmodifiableMap(Source::cited, Function.identity()));

    private CitedSources() {
    }

    static Source get(String cited) {
        Source source = BY_CITATION.get(cited.replace('\u00a0', ' '));
        if (source == null) {
            throw new IllegalStateException("an example cites a source that is not in the register: " + cited);
        }
        return source;
    }
}
