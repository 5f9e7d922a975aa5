// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.Main;
import dev.brinebook.source.Source;
import dev.brinebook.source.Sources;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What rests on a source, counted a second time from the committed files. */
class SourceRegisterTest {

    private final SourcesAnswer register = SourceRegister.of(Main.OPERATIONS);
    private final Map<String, SourceAnswer> byCitation = register.sources().stream()
            .collect(Collectors.toMap(SourceAnswer::cited, Function.identity()));

    @Test
    void listsEverySourceOfTheRegisterInItsOrder() {
        assertEquals(List.copyOf(Sources.all().keySet()), register.sources().stream().map(SourceAnswer::key).toList());
        for (SourceAnswer answer : register.sources()) {
            Source source = Sources.get(answer.key());
            assertEquals(List.of(source.citation(), source.edition(), Optional.ofNullable(source.url()), source.kind(), source.takes()),
                    List.of(answer.citation(), answer.edition(), Optional.ofNullable(answer.url()), answer.kind(), answer.takes()));
        }
    }

    @Test
    void listsWhatRestsOnEverySourceThatAnExampleCites() throws IOException {
        Set<String> cited = new TreeSet<>();
        try (Stream<Path> files = Files.list(Path.of("openapi", "examples"))) {
            for (Path file : files
                    .filter(each -> each.toString().matches("(?!.*explainResult).*\\.(response|explained)\\.json")).toList()) {
                String operation = file.getFileName().toString().split("\\.")[0];
                JsonNode answer = new ObjectMapper().readTree(file.toFile());
                for (JsonNode entry : answer.path("basis")) {
                    cited.add(entry.path("source").asText().replace('\u00a0', ' '));
                    String pointer = entry.path("pointer").asText().replaceAll("/\\d+", "/*");
                    assertTrue(resting(entry, operation).results().contains(pointer), file + " " + pointer);
                }
                for (JsonNode entry : answer.path("cautions")) {
                    cited.add(entry.path("source").asText().replace('\u00a0', ' '));
                    assertTrue(resting(entry, operation).cautions().contains(entry.path("code").asText()));
                }
            }
        }
        assertTrue(cited.size() > 50, "it saw some");
        for (SourceAnswer source : register.sources()) {
            assertEquals(cited.contains(source.cited()), !source.restsOn().isEmpty(), source.key());
        }
        assertFalse(cited.size() == register.sources().size(), "some are cited by tables alone, and are reported as such");
    }

    private SourceUsageAnswer resting(JsonNode entry, String operation) {
        return byCitation.get(entry.path("source").asText().replace('\u00a0', ' ')).restsOn().stream()
                .filter(each -> each.operation().equals(operation)).findFirst().orElseThrow();
    }
}
