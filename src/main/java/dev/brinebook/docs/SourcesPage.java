// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.WireNames;
import java.util.List;

/** The content of the page of the register of sources. */
record SourcesPage(List<Cited> sources) {

    /** A source, with its kind as answers name it. */
    record Cited(String key, String kind, String cited, String url, String takes, List<SourceUsageAnswer> restsOn) {
    }

    static SourcesPage of(SourcesAnswer register) {
        return new SourcesPage(register.sources().stream().map(source -> new Cited(source.key(), WireNames.of(source.kind()),
                source.cited(), source.url() == null ? "" : source.url(), source.takes(), source.restsOn())).toList());
    }
}
