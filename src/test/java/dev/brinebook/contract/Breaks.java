// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.swagger.v3.core.util.Json;
import io.swagger.v3.core.util.Yaml31;
import io.swagger.v3.oas.models.OpenAPI;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.openapitools.openapidiff.core.OpenApiCompare;
import org.openapitools.openapidiff.core.compare.OpenApiDiffOptions;
import org.openapitools.openapidiff.core.model.Changed;
import org.openapitools.openapidiff.core.model.ChangedOpenApi;
import org.openapitools.openapidiff.core.model.ChangedSchema;
import org.openapitools.openapidiff.core.model.ComposedChanged;

/**
 * What of a released contract a later one breaks under {@code /v1}. By openapi-diff, which does not see the types of OpenAPI
 * 3.1 and so gets both in the form of 3.0; what it misses is reported by {@link UnseenBreaks}.
 */
final class Breaks {

    /** Lists of values may grow in answers, as the contract says; generated clients take names from the operations' ids. */
    private static final OpenApiDiffOptions OPTIONS = OpenApiDiffOptions.builder()
            .configProperty("incompatible.response.enum.increased", "false")
            .configProperty("incompatible.operation.id.changed", "true").build();

    private final JsonNode released;
    private final OpenAPI releasedInForm30;

    Breaks(JsonNode released) {
        this.released = released;
        this.releasedInForm30 = inForm30(released);
    }

    /** A contract without its examples, which break nothing and are most of it. */
    static JsonNode read(Path yaml) {
        try {
            JsonNode contract = Yaml31.mapper().readTree(yaml.toFile());
            dropExamples(contract);
            ((ObjectNode) contract.path("paths")).properties().removeIf(path -> !path.getKey().startsWith("/v1/"));
            return contract;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    List<String> in(JsonNode now) {
        List<String> breaks = new ArrayList<>(UnseenBreaks.between(released, now));
        ChangedOpenApi changed = OpenApiCompare.fromSpecifications(releasedInForm30, inForm30(now), OPTIONS);
        changed.getMissingEndpoints().forEach(gone -> breaks.add(gone + ": gone"));
        changed.getChangedOperations().forEach(operation ->
                tell(operation.getHttpMethod() + " " + operation.getPathUrl(), operation, breaks));
        if (changed.isIncompatible() && breaks.isEmpty()) {
            breaks.add("somewhere");
        }
        return breaks;
    }

    /** Adds where it found a break, down to the property, and of what kind. */
    private static void tell(String at, Changed part, List<String> breaks) {
        if (part == null || !part.isIncompatible()) {
            return;
        }
        ComposedChanged whole = part instanceof ComposedChanged composed ? composed : null;
        if (whole == null || whole.isCoreChanged().isIncompatible()) {
            breaks.add(at + ": " + part.getClass().getSimpleName());
        }
        Map<Changed, String> names = new IdentityHashMap<>();
        if (part instanceof ChangedSchema schema) {
            schema.getChangedProperties().forEach((name, property) -> names.put(property, "/" + name));
        }
        if (whole != null) {
            whole.getChangedElements().forEach(element -> tell(at + names.getOrDefault(element, ""), element, breaks));
        }
    }

    private static void dropExamples(JsonNode node) {
        if (node instanceof ObjectNode object) {
            object.remove(List.of("example", "examples"));
        }
        node.properties().forEach(child -> {
            if (child.getKey().equals("properties")) {
                child.getValue().forEach(Breaks::dropExamples);
            } else {
                dropExamples(child.getValue());
            }
        });
        if (node.isArray()) {
            node.forEach(Breaks::dropExamples);
        }
    }

    private static OpenAPI inForm30(JsonNode contract) {
        ObjectNode older = contract.deepCopy();
        older.put("openapi", "3.0.3");
        rewrite(older);
        try {
            return Json.mapper().treeToValue(older, OpenAPI.class);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void rewrite(JsonNode node) {
        if (node instanceof ObjectNode object) {
            if (object.get("type") instanceof ArrayNode types) {
                types.forEach(type -> object.set(type.asText().equals("null") ? "nullable" : "type", type));
                object.replace("nullable", object.has("nullable") ? object.booleanNode(true) : null);
            }
            if (object.path("const").isValueNode()) {
                object.putArray("enum").add(object.remove("const"));
            }
            rewriteBound(object, "exclusiveMinimum", "minimum");
            rewriteBound(object, "exclusiveMaximum", "maximum");
        }
        node.forEach(Breaks::rewrite);
    }

    private static void rewriteBound(ObjectNode schema, String exclusive, String bound) {
        if (schema.path(exclusive).isNumber()) {
            schema.set(bound, schema.get(exclusive));
            schema.put(exclusive, true);
        }
    }
}
