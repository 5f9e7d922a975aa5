// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.api.Operation;
import io.swagger.v3.core.util.Json31;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Requests and answers as JSON Schema (draft 2020-12), each complete in itself, from the same records as the contract. */
public final class OperationSchemas {

    private static final String DRAFT = "https://json-schema.org/draft/2020-12/schema";
    private static final String IN_CONTRACT = "#/components/schemas/";
    private static final String IN_SCHEMA = "#/$defs/";

    private final ObjectMapper json = Json31.mapper();
    private final Map<String, ObjectNode> schemas = new TreeMap<>();

    /** Reads the records of all operations; this takes some hundred milliseconds. */
    public OperationSchemas(List<Operation<?, ?>> operations) {
        Schemas records = new Schemas();
        operations.forEach(operation -> {
            records.addRequest(operation.requestType());
            records.addCalculated(operation.answerType());
        });
        records.build().forEach((name, schema) -> schemas.put(name, json.valueToTree(schema)));
        schemas.values().forEach(OperationSchemas::leaveTheContract);
    }

    public Map<String, Object> request(Operation<?, ?> operation) {
        return complete(operation.requestType().getSimpleName());
    }

    public Map<String, Object> answer(Operation<?, ?> operation) {
        return complete(operation.answerType().getSimpleName());
    }

    private Map<String, Object> complete(String name) {
        ObjectNode whole = json.createObjectNode().put("$schema", DRAFT);
        whole.setAll(schemas.get(name));
        Map<String, ObjectNode> definitions = new TreeMap<>();
        gather(whole, definitions);
        if (!definitions.isEmpty()) {
            definitions.forEach(whole.putObject("$defs")::set);
        }
        return json.convertValue(whole, new TypeReference<>() { });
    }

    /** Adds each schema that {@code from} leads to. */
    private void gather(JsonNode from, Map<String, ObjectNode> definitions) {
        for (String reference : from.findValuesAsText("$ref")) {
            String name = reference.substring(IN_SCHEMA.length());
            ObjectNode schema = schemas.get(name);
            if (definitions.putIfAbsent(name, schema) == null) {
                gather(schema, definitions);
            }
        }
    }

    /** References point into the schema itself; what only OpenAPI knows is left out. */
    private static void leaveTheContract(JsonNode node) {
        if (node instanceof ObjectNode object) {
            object.remove("discriminator");
            if (object.path("$ref").isTextual()) {
                object.put("$ref", object.path("$ref").textValue().replace(IN_CONTRACT, IN_SCHEMA));
            }
        }
        node.forEach(OperationSchemas::leaveTheContract);
    }
}
