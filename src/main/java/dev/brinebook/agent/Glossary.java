// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Terms that answers use, each with a plain meaning. */
final class Glossary {

    private static final Map<String, String> TERMS = read();

    private Glossary() {
    }

    private static Map<String, String> read() {
        Map<String, String> terms = new LinkedHashMap<>();
        for (String line : Json.lines("glossary.txt")) {
            int bar = line.indexOf(" | ");
            terms.put(line.substring(0, bar), line.substring(bar + 3));
        }
        return terms;
    }

    /** Meanings by term, in alphabetical order. */
    static Map<String, String> terms() {
        return Collections.unmodifiableMap(TERMS);
    }
}
