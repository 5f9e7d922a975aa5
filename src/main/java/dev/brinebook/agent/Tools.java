// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.agent.RpcMessage.RawObject;
import dev.brinebook.api.Operation;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The four tools: the same list for every caller. How many there are does not grow with the operations; the quick assessment is one of
 * them where assess is served.
 */
final class Tools {

    private static final String ARGUMENTS = "arguments";
    private static final String QUICK = "quick_assess";

    private final Map<String, Operation<?, ?>> operations = new LinkedHashMap<>();
    private final Map<String, ObjectNode> definitions = new LinkedHashMap<>();
    private final Notation notation;
    private final OperationSearch search;
    private final QuickAssess quick;
    private final Calculate calculate;

    Tools(List<Operation<?, ?>> operations) {
        operations.forEach(operation -> this.operations.put(operation.id(), operation));
        this.notation = new Notation(operations);
        this.search = new OperationSearch(operations);
        this.calculate = new Calculate(this.operations, notation.parts().byName().keySet());
        Operation<?, ?> assess = this.operations.get("assess");
        Json.fileTree("tools.json").valueStream().filter(tool -> assess != null || !tool.get("name").asText().equals(QUICK))
                .forEach(tool -> definitions.put(tool.get("name").asText(), define((ObjectNode) tool)));
        this.quick = assess == null ? null : new QuickAssess(assess, definitions.get(QUICK).get("inputSchema"));
    }

    /** Completes a definition: the operations, parts and countries that there are, and that no call changes anything. */
    private ObjectNode define(ObjectNode tool) {
        tool.get("inputSchema").get("properties").forEach(property -> {
            String marker = property.path("enum").path(0).asText();
            if (marker.equals("<countries>")) {
                fill((ArrayNode) property.get("enum"), new Countries(operations.get("assess")).names());
            } else if (marker.equals("<operations>")) {
                fill((ArrayNode) property.get("enum"), operations.keySet());
            } else if (marker.equals("<parts>")) {
                fill((ArrayNode) property.get("enum"), notation.parts().byName().keySet());
            }
        });
        tool.putObject("annotations").put("title", tool.get("title").asText()).put("readOnlyHint", true)
                .put("destructiveHint", false).put("idempotentHint", true).put("openWorldHint", false);
        return tool;
    }

    private static void fill(ArrayNode choices, Collection<String> names) {
        choices.removeAll();
        names.forEach(choices::add);
    }

    Notation notation() {
        return notation;
    }

    Map<String, Object> list() {
        return Json.object("tools", List.copyOf(definitions.values()));
    }

    /** The result of a call; throws {@link RpcFault} where there is no such tool. */
    Map<String, Object> call(RpcMessage message, Caller caller) {
        JsonNode definition = message.text("name") == null ? null : definitions.get(message.text("name"));
        if (definition == null) {
            throw RpcFault.invalidParams("Unknown tool: name must be one of " + String.join(", ", definitions.keySet()) + ".");
        }
        RawObject arguments = RawObject.read(message.arguments().arguments());
        if (!arguments.isObject()) {
            throw RpcFault.invalidParams("The arguments of a tool are an object.");
        }
        Map<String, JsonNode> given = new LinkedHashMap<>(arguments.members());
        String name = message.text("name");
        if (name.equals(QUICK)) {
            return quick.call(given, message.params().get("inputResponses"), caller);
        }
        if (!arguments.arguments().equals(RawObject.NONE) || message.arguments().arguments().contains('"' + ARGUMENTS + '"')) {
            // Checked as any object here; its text is read where every request is.
            given.put(ARGUMENTS, arguments.arguments().startsWith("{") ? Json.MAPPER.createObjectNode()
                    : Json.MAPPER.getNodeFactory().nullNode());
        }
        List<Fault> faults = SchemaCheck.check(definition.get("inputSchema"), given);
        if (!faults.isEmpty()) {
            return ToolResult.fault(FaultText.of(faults, notation.parts().byName().keySet()));
        }
        return switch (name) {
            case "find_operation" -> ToolResult.text(search.answer(given.get("question").textValue()));
            case "describe_operation" -> describe(given);
            default -> calculate.call(arguments, caller);
        };
    }

    private Map<String, Object> describe(Map<String, JsonNode> given) {
        if (given.isEmpty()) {
            return ToolResult.fault("Give operation, or part. Operations: " + String.join(", ", operations.keySet()) + "\n");
        }
        String part = given.containsKey("part") ? notation.part(given.get("part").textValue()) : "";
        return ToolResult.text(part.isEmpty() ? notation.operation(operations.get(given.get("operation").textValue())) : part);
    }
}
