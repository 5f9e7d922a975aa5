package dev.brinebook.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.Map;

/** Validates documents by the schemas of the contract, each found by {@code $ref} in the whole of it. */
final class ContractSchemas {

    private static final String DOCUMENT = "https://brinebook.invalid/openapi.json";

    private final SchemaRegistry registry;

    /** The contract lets answers grow; here, though, nothing may stand in one that it does not describe. */
    ContractSchemas(byte[] contract) {
        JsonNode document = Committed.tree(contract);
        document.at("/components/schemas").forEach(schema -> {
            if (schema.has("properties")) {
                ((ObjectNode) schema).put("additionalProperties", false);
            }
        });
        this.registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12,
                builder -> builder.schemas(Map.of(DOCUMENT, document.toString())));
    }

    List<com.networknt.schema.Error> faults(String name, JsonNode value) {
        return registry.getSchema(SchemaLocation.of(DOCUMENT + "#/components/schemas/" + name)).validate(value);
    }

    void assertValid(Class<?> type, byte[] json) {
        assertEquals(List.of(), faults(type.getSimpleName(), Committed.tree(json)));
    }
}
