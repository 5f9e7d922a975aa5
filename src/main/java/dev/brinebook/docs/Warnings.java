// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import com.fasterxml.jackson.databind.JsonNode;
import dev.brinebook.docs.AnsweredExamples.Answered;
import dev.brinebook.source.Source;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Assumptions and cautions in the committed answers of an operation, each once. */
final class Warnings {

    /** A value taken where the request left it out. */
    record Assumed(String name, String value) {
    }

    /** A caution of an answer. */
    record Warned(String code, String severity, String message, Source source) {
    }

    private Warnings() {
    }

    /** The defaults, each with the value of the first example that takes it. */
    static List<Assumed> assumed(List<Answered> examples) {
        Map<String, Assumed> assumed = new LinkedHashMap<>();
        entries(examples, "assumptions").stream().filter(entry -> entry.path("origin").asText().equals("default"))
                .map(entry -> new Assumed(entry.path(entry.has("pointer") ? "pointer" : "name").asText(), inWords(entry)))
                .forEach(each -> assumed.putIfAbsent(each.name(), each));
        return List.copyOf(assumed.values());
    }

    private static String inWords(JsonNode assumed) {
        String used = Stream.of("value", "unit", "code").filter(assumed::has).map(part -> assumed.path(part).asText())
                .collect(Collectors.joining(" "));
        return Stream.of(used, assumed.path("note").asText("")).filter(part -> !part.isEmpty()).collect(Collectors.joining(", "));
    }

    static List<Warned> cautions(List<Answered> examples) {
        Map<String, Warned> warned = new LinkedHashMap<>();
        entries(examples, "cautions").stream().map(entry -> new Warned(entry.path("code").asText(),
                entry.path("severity").asText(), entry.path("message").asText(),
                CitedSources.get(entry.path("source").asText()))).forEach(each -> warned.putIfAbsent(each.code(), each));
        return List.copyOf(warned.values());
    }

    private static List<JsonNode> entries(List<Answered> examples, String list) {
        return examples.stream().flatMap(example -> example.entries(list)).toList();
    }
}
