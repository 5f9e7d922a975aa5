// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** JSON Schema draft 2020-12, section 8 (references and $defs), and its meta-schema. */
class OperationSchemasTest {

    private static final SchemaRegistry DRAFT = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final OperationSchemas SCHEMAS = new OperationSchemas(Main.OPERATIONS);

    static List<Operation<?, ?>> operations() {
        return Main.OPERATIONS;
    }

    @ParameterizedTest
    @MethodSource("operations")
    void eachIsASchemaCompleteInItself(Operation<?, ?> operation) {
        for (Map<String, Object> schema : List.of(SCHEMAS.request(operation), SCHEMAS.answer(operation))) {
            JsonNode tree = new ObjectMapper().valueToTree(schema);
            assertEquals("object", tree.path("type").asText());
            assertEquals(List.of(), DRAFT.getSchema(com.networknt.schema.SchemaLocation.of(tree.path("$schema").asText()))
                    .validate(tree));
            Set<String> named = new TreeSet<>(tree.findValuesAsText("$ref"));
            Set<String> defined = new TreeSet<>();
            tree.path("$defs").fieldNames().forEachRemaining(name -> defined.add("#/$defs/" + name));
            assertEquals(defined, named, "no reference is open and no definition is idle");
            assertFalse(tree.toString().contains("#/components") || tree.toString().contains("\"discriminator\""));
        }
    }

    @ParameterizedTest
    @MethodSource("operations")
    void takesTheCommittedExamplesAndNothingUnknown(Operation<?, ?> operation) throws IOException {
        Schema request = DRAFT.getSchema(new ObjectMapper().<JsonNode>valueToTree(SCHEMAS.request(operation)));
        Schema answer = DRAFT.getSchema(new ObjectMapper().<JsonNode>valueToTree(SCHEMAS.answer(operation)));
        for (String name : operation.examples()) {
            assertEquals(List.of(), request.validate(example(operation, name, "request")));
            assertEquals(List.of(), answer.validate(example(operation, name, "response")));
        }
        assertFalse(request.validate(Committed.tree("{\"nonsense\": 1}".getBytes())).isEmpty());
        assertTrue(answer.validate(Committed.tree("{}".getBytes())).size() >= 3, "summary and the closing properties");
    }

    private static JsonNode example(Operation<?, ?> operation, String name, String part) throws IOException {
        return Committed.tree(Files.readAllBytes(Committed.EXAMPLES.resolve(operation.exampleFile(name, part))));
    }
}
