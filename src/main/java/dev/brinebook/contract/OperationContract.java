// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Cuts the document of one operation out of the whole contract. */
final class OperationContract {

    private static final String COMPONENTS = "#/components/";

    private OperationContract() {
    }

    /** The path of the operation with all that it refers to; empty where no operation has the id. */
    static Optional<JsonNode> of(JsonNode contract, String operationId) {
        return contract.path("paths").properties().stream()
                .filter(path -> path.getValue().findValuesAsText("operationId").contains(operationId)).findFirst()
                .map(path -> cut(contract, path));
    }

    private static JsonNode cut(JsonNode contract, Map.Entry<String, JsonNode> path) {
        ObjectNode document = contract.deepCopy();
        JsonNode own = document.path("paths").path(path.getKey());
        document.putObject("paths").set(path.getKey(), own);
        moveExamples(own);
        Set<String> used = new TreeSet<>();
        gather(own, contract, used);
        own.findValues("security").forEach(schemes -> schemes.forEach(scheme ->
                scheme.fieldNames().forEachRemaining(name -> used.add(COMPONENTS + "securitySchemes/" + name))));
        Set<String> tags = new TreeSet<>();
        own.findValues("tags").forEach(names -> names.forEach(name -> tags.add(name.asText())));
        var kept = JsonNodeFactory.instance.arrayNode();
        contract.path("tags").forEach(tag -> {
            if (tags.contains(tag.path("name").asText())) {
                kept.add(tag);
            }
        });
        document.set("tags", kept);
        ObjectNode components = (ObjectNode) document.path("components");
        components.properties().forEach(kind -> ((ObjectNode) kind.getValue()).properties()
                .removeIf(one -> !used.contains(COMPONENTS + kind.getKey() + "/" + one.getKey())));
        components.properties().removeIf(kind -> kind.getValue().isEmpty());
        return document;
    }

    /** Adds each component that {@code from} leads to. */
    private static void gather(JsonNode from, JsonNode contract, Set<String> used) {
        for (String reference : from.findValuesAsText("$ref")) {
            if (used.add(reference)) {
                gather(contract.at(reference.substring(1)), contract, used);
            }
        }
    }

    /** References to examples stay right, one folder further down. */
    private static void moveExamples(JsonNode path) {
        path.findParents(Examples.BY_REFERENCE).forEach(example -> ((ObjectNode) example).put(Examples.BY_REFERENCE,
                "../" + example.path(Examples.BY_REFERENCE).asText()));
    }
}
