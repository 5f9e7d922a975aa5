// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.source;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** The register of sources, read once from {@code sources.csv}. */
public final class Sources {

    private static final Map<String, Source> BY_KEY = read("/sources.csv");

    private Sources() {
    }

    /**
     * The source with this key.
     *
     * @throws IllegalArgumentException when the register has none
     */
    public static Source get(String key) {
        Source source = BY_KEY.get(key);
        if (source == null) {
            throw new IllegalArgumentException("no source has the key " + key);
        }
        return source;
    }

    /** All sources, in the order of the register. */
    public static Map<String, Source> all() {
        return BY_KEY;
    }

    static Map<String, Source> read(String register) {
        Map<String, Source> sources = new LinkedHashMap<>();
        for (String[] row : Table.read(register, '|', 6)) {
            String constant = row[1].replaceAll("([A-Z])", "_$1").toUpperCase(Locale.ROOT);
            Source source = new Source(row[0], Source.Kind.valueOf(constant), row[2], row[3], row[4].isEmpty() ? null : row[4], row[5]);
            if (sources.put(source.key(), source) != null) {
                throw new IllegalStateException("two sources have the key " + source.key());
            }
        }
        return Collections.unmodifiableMap(sources);
    }
}
