// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Numbers of an answer that no entry of its basis points at: neither at the number nor at a part that holds it. */
public final class Unexplained {

    /** What an answer says about its results, and is not one. */
    private static final Set<String> TALK = Set.of("cautions", "assumptions", "basis");

    private final List<String[]> explained = new ArrayList<>();
    private final List<String> found = new ArrayList<>();

    private Unexplained() {
    }

    /** Their pointers. */
    public static List<String> in(JsonNode answer) {
        Unexplained numbers = new Unexplained();
        answer.path("basis").forEach(entry -> numbers.explained.add(entry.path("pointer").asText().split("/")));
        answer.properties().stream().filter(part -> !TALK.contains(part.getKey()))
                .forEach(part -> numbers.walk(part.getValue(), "/" + part.getKey()));
        return numbers.found;
    }

    private void walk(JsonNode value, String pointer) {
        boolean quantity = value.isObject() && value.size() == 2 && value.has("value") && value.has("unit");
        if (value.isNumber() || quantity) {
            if (explained.stream().noneMatch(entry -> holds(entry, pointer.split("/")))) {
                found.add(pointer);
            }
        } else if (value.isArray()) {
            for (int i = 0; i < value.size(); i++) {
                walk(value.get(i), pointer + "/" + i);
            }
        } else {
            value.properties().forEach(part -> walk(part.getValue(), pointer + "/" + part.getKey()));
        }
    }

    /** The whole answer is no part: an entry without a pointer explains nothing. */
    private static boolean holds(String[] entry, String[] pointer) {
        boolean holds = entry.length > 1 && entry.length <= pointer.length;
        for (int i = 0; holds && i < entry.length; i++) {
            holds = entry[i].equals("*") || entry[i].equals(pointer[i]);
        }
        return holds;
    }
}
