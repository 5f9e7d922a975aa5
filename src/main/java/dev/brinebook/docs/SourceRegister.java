// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import com.fasterxml.jackson.databind.JsonNode;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.docs.AnsweredExamples.Answered;
import dev.brinebook.source.Source;
import dev.brinebook.source.Sources;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** All registered sources, each with what rests on it, as far as the committed examples show. */
final class SourceRegister {

    private record Resting(Set<String> results, Set<String> cautions) {
    }

    private final Map<Source, Map<String, Resting>> bySource = new LinkedHashMap<>();

    private SourceRegister() {
    }

    static SourcesAnswer of(List<Operation<?, ?>> operations) {
        SourceRegister register = new SourceRegister();
        for (Operation<?, ?> operation : operations) {
            for (Answered example : AnsweredExamples.of(operation)) {
                example.entries("basis").forEach(entry -> register.at(entry, operation).results()
                        .add(Formulas.pattern(entry.path("pointer").asText())));
                example.entries("cautions").forEach(entry -> register.at(entry, operation).cautions()
                        .add(entry.path("code").asText()));
            }
        }
        return new SourcesAnswer(Sources.all().values().stream().map(register::answer).toList(), ModelVersion.CURRENT);
    }

    private Resting at(JsonNode entry, Operation<?, ?> operation) {
        return bySource.computeIfAbsent(CitedSources.get(entry.path("source").asText()), key -> new LinkedHashMap<>())
                .computeIfAbsent(operation.id(), key -> new Resting(new TreeSet<>(), new TreeSet<>()));
    }

    private SourceAnswer answer(Source source) {
        List<SourceUsageAnswer> restsOn = bySource.getOrDefault(source, Map.of()).entrySet().stream()
                .map(entry -> new SourceUsageAnswer(entry.getKey(), List.copyOf(entry.getValue().results()),
                        List.copyOf(entry.getValue().cautions()))).toList();
        return new SourceAnswer(source.key(), source.cited(), source.citation(), source.edition(), source.url(),
                source.kind(), source.takes(), restsOn);
    }
}
