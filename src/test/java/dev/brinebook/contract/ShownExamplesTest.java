// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every example that the contract shows, wherever it is, matches the schema beside it, by an independent validator. */
class ShownExamplesTest {

    private static JsonNode document;
    private static ContractSchemas schemas;

    private final List<String> faults = new ArrayList<>();
    private int seen;

    @BeforeAll
    static void read() throws IOException {
        byte[] contract = Committed.contract();
        document = Committed.tree(contract);
        schemas = new ContractSchemas(contract);
    }

    @Test
    void ofRequestsAnswersAndErrors() {
        walk(document.path("paths"), "/paths");
        walk(document.at("/components/responses"), "/components/responses");
        assertEquals(List.of(), faults);
        assertTrue(seen > 100, seen + " seen");
    }

    @Test
    void ofEveryProperty() {
        document.at("/components/schemas").properties().forEach(schema -> schema.getValue().path("properties").properties()
                .forEach(property -> property.getValue().path("examples").forEach(example -> check("/components/schemas/"
                        + schema.getKey() + "/properties/" + property.getKey(), example))));
        assertEquals(List.of(), faults);
        assertTrue(seen > 300, seen + " seen");
    }

    /** The oracle itself: it must refuse what is wrong, below a path and below a property. */
    @Test
    void theValidatorSeesFaults() {
        JsonNode wrong = TextNode.valueOf("x");
        assertFalse(schemas.faultsAt("/components/parameters/calculator/schema", wrong).isEmpty());
        assertFalse(schemas.faultsAt("/paths/~1v1~1assessment/post/requestBody/content/application~1json/schema", wrong)
                .isEmpty());
        assertFalse(schemas.faultsAt("/components/schemas/WaterRequest/properties/ph", wrong).isEmpty());
    }

    /** What holds a schema and examples, as a media type, a header or a parameter does. */
    private void walk(JsonNode node, String pointer) {
        if (node.has("schema")) {
            node.path("examples").forEach(example -> check(pointer + "/schema", example.has("value") ? example.path("value")
                    : read(example.path("externalValue").asText())));
            if (node.has("example")) {
                check(pointer + "/schema", node.path("example"));
            }
            return;
        }
        node.properties().forEach(child -> walk(child.getValue(), pointer + "/"
                + child.getKey().replace("~", "~0").replace("/", "~1")));
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            walk(node.get(i), pointer + "/" + i);
        }
    }

    /** What an example refers to, relative to the contract. */
    private static JsonNode read(String reference) {
        try {
            byte[] file = Files.readAllBytes(Committed.CONTRACT.resolve(reference));
            return reference.endsWith(".json") ? Committed.tree(file) : TextNode.valueOf(new String(file, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void check(String pointer, JsonNode example) {
        seen++;
        schemas.faultsAt(pointer, example).forEach(fault -> faults.add(pointer + ": " + fault));
    }
}
