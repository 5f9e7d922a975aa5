// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.path.NodePath;
import com.networknt.schema.path.PathType;
import java.util.List;
import java.util.Map;

/** Validates documents by the schemas of the contract, each found by {@code $ref} in the whole of it. */
public final class ContractSchemas {

    private static final String DOCUMENT = "https://brinebook.invalid/openapi.json";

    /** Read once: the registry would read the whole of it again for each pointer. */
    private final Schema document;
    private final JsonNode whole;

    /** The contract lets answers grow; here, though, an answer may hold nothing that it does not describe. */
    public ContractSchemas(byte[] contract) {
        this.whole = Committed.tree(contract);
        whole.at("/components/schemas").forEach(schema -> {
            if (schema.has("properties")) {
                ((ObjectNode) schema).put("additionalProperties", false);
            }
        });
        this.document = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12,
                builder -> builder.schemas(Map.of(DOCUMENT, whole.toString()))).getSchema(SchemaLocation.of(DOCUMENT));
    }

    public List<com.networknt.schema.Error> faults(String name, JsonNode value) {
        return faultsAt("/components/schemas/" + name, value);
    }

    /** The faults of a value by the schema at a JSON pointer into the contract. */
    List<com.networknt.schema.Error> faultsAt(String pointer, JsonNode value) {
        NodePath path = new NodePath(PathType.JSON_POINTER);
        for (JsonPointer at = JsonPointer.compile(pointer); !at.matches(); at = at.tail()) {
            boolean element = whole.at(pointer.substring(0, pointer.length() - at.toString().length())).isArray();
            path = element ? path.append(at.getMatchingIndex()) : path.append(at.getMatchingProperty());
        }
        return document.getRefSchema(path).validate(value);
    }

    void assertValid(Class<?> type, byte[] json) {
        assertEquals(List.of(), faults(type.getSimpleName(), Committed.tree(json)));
    }
}
