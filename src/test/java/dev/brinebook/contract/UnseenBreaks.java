// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Breaks that openapi-diff 2.1.7 passes by: a property that a request no longer takes, although it takes no unknown ones;
 * values of an answer that are gone; values that are listed where any was taken; a null in an answer; a reference that
 * leads to another schema.
 */
final class UnseenBreaks {

    private enum Way { ASKED, ANSWERED }

    private final JsonNode released;
    private final JsonNode now;
    private final Set<String> seen = new HashSet<>();
    private final List<String> breaks = new ArrayList<>();

    private UnseenBreaks(JsonNode released, JsonNode now) {
        this.released = released;
        this.now = now;
    }

    static List<String> between(JsonNode released, JsonNode now) {
        UnseenBreaks comparison = new UnseenBreaks(released, now);
        released.path("paths").properties().forEach(path -> path.getValue().properties().forEach(operation ->
                comparison.compareOperations(operation.getKey() + " " + path.getKey(), operation.getValue(),
                        now.path("paths").path(path.getKey()).path(operation.getKey()))));
        return comparison.breaks;
    }

    private void compareOperations(String at, JsonNode old, JsonNode fresh) {
        for (JsonNode parameter : old.path("parameters")) {
            for (JsonNode same : fresh.path("parameters")) {
                if (same.path("name").equals(parameter.path("name"))) {
                    compare(Way.ASKED, at + " " + same.path("name").asText(), parameter.path("schema"), same.path("schema"));
                }
            }
        }
        compareContent(Way.ASKED, at + " request", old.path("requestBody"), fresh.path("requestBody"));
        old.path("responses").properties().forEach(response -> compareContent(Way.ANSWERED, at + " " + response.getKey(),
                target(released, response.getValue()), target(now, fresh.path("responses").path(response.getKey()))));
    }

    private void compareContent(Way way, String at, JsonNode old, JsonNode fresh) {
        old.path("content").properties().forEach(form -> compare(way, at, form.getValue().path("schema"),
                fresh.path("content").path(form.getKey()).path("schema")));
    }

    /** Missing elements are reported by openapi-diff. */
    private void compare(Way way, String at, JsonNode oldSchema, JsonNode freshSchema) {
        String pair = way + oldSchema.path("$ref").asText() + freshSchema.path("$ref").asText();
        boolean known = oldSchema.has("$ref") && freshSchema.has("$ref") && !seen.add(pair);
        JsonNode old = target(released, oldSchema);
        JsonNode fresh = target(now, freshSchema);
        if (known || old.isMissingNode() || fresh.isMissingNode()) {
            return;
        }
        compareTypes(way, at, types(old), types(fresh));
        compareValues(way, at, values(old), values(fresh));
        old.path("properties").properties().forEach(property -> {
            JsonNode same = fresh.path("properties").path(property.getKey());
            if (same.isMissingNode() && (way == Way.ANSWERED || !fresh.path("additionalProperties").asBoolean(true))) {
                breaks.add(at + " has lost " + property.getKey());
            }
            compare(way, at + "/" + property.getKey(), property.getValue(), same);
        });
        compare(way, at + "/-", old.path("items"), fresh.path("items"));
        for (int i = 0; i < old.path("oneOf").size(); i++) {
            compare(way, at, old.path("oneOf").path(i), fresh.path("oneOf").path(i));
        }
    }

    private void compareTypes(Way way, String at, Set<String> old, Set<String> fresh) {
        Set<String> allowed = way == Way.ASKED ? fresh : old;
        Set<String> used = new TreeSet<>(way == Way.ASKED ? old : fresh);
        used.removeAll(allowed);
        if (allowed.contains("number")) {
            used.remove("integer");
        }
        if (!allowed.isEmpty() && !used.isEmpty()) {
            breaks.add(at + " was " + old + " and is " + fresh);
        }
    }

    private void compareValues(Way way, String at, Set<String> old, Set<String> fresh) {
        Set<String> lost = new TreeSet<>(old);
        lost.removeAll(fresh);
        boolean open = way == Way.ASKED ? fresh.isEmpty() : old.isEmpty();
        boolean closed = way == Way.ASKED && old.isEmpty() && !fresh.isEmpty();
        if (closed || !open && !lost.isEmpty()) {
            breaks.add(at + " was one of " + old + " and is one of " + fresh);
        }
    }

    private static JsonNode target(JsonNode contract, JsonNode node) {
        return node.has("$ref") ? contract.at(node.path("$ref").asText().substring(1)) : node;
    }

    private static Set<String> types(JsonNode schema) {
        JsonNode type = schema.path("type");
        Set<String> types = new TreeSet<>();
        if (type.isTextual()) {
            types.add(type.asText());
        }
        type.forEach(one -> types.add(one.asText()));
        return types;
    }

    private static Set<String> values(JsonNode schema) {
        Set<String> values = new TreeSet<>();
        schema.path("enum").forEach(value -> values.add(value.asText()));
        if (schema.has("const")) {
            values.add(schema.path("const").asText());
        }
        return values;
    }
}
