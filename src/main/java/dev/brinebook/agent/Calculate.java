// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.agent.AnswerText.Detail;
import dev.brinebook.agent.RpcMessage.RawObject;
import dev.brinebook.api.Operation;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.StreamSupport;

/** The tool that runs one operation: the answer of the REST operation of that name, as text of a bounded length or as JSON. */
final class Calculate {

    private final Map<String, Operation<?, ?>> operations;
    private final Set<String> parts;

    Calculate(Map<String, Operation<?, ?>> operations, Set<String> parts) {
        this.operations = operations;
        this.parts = parts;
    }

    /** The result for arguments that fit the input schema. */
    Map<String, Object> call(RawObject arguments, Caller caller) {
        Operation<?, ?> operation = operations.get(arguments.members().get("operation").textValue());
        Outcome outcome = caller.calculation().calculate(operation, arguments.arguments().getBytes(StandardCharsets.UTF_8));
        if (outcome.answer() == null) {
            return failed(outcome, parts);
        }
        Detail detail = Detail.valueOf(text(arguments, "detail", "standard").toUpperCase(Locale.ROOT));
        if (text(arguments, "format", "text").equals("json")) {
            return ToolResult.structured(json(caller.calculation().write(outcome.answer()), detail), caller.revision());
        }
        AnswerText text = new AnswerText(operation.id(), outcome.answer(), caller.calculation());
        List<String> shown = text.shown(texts(arguments, "show"));
        List<String> explained = texts(arguments, "explain");
        if (!explained.isEmpty()) {
            List<String> lines = new ArrayList<>(text.warnings());
            lines.addAll(text.explained(explained));
            lines.addAll(shown);
            return ToolResult.text(String.join("\n", lines) + "\n");
        }
        return ToolResult.text(text.of(detail, shown));
    }

    /** The faults of a request, or why the calculation ended. */
    static Map<String, Object> failed(Outcome outcome, Set<String> parts) {
        return outcome.problem() != null ? ToolResult.fault("Nothing was calculated. " + outcome.problem() + "\n")
                : ToolResult.fault(FaultText.of(outcome.violations().stream().map(Fault::of).toList(), parts));
    }

    private static String text(RawObject arguments, String name, String byDefault) {
        JsonNode value = arguments.members().get(name);
        return value == null ? byDefault : value.textValue();
    }

    private static List<String> texts(RawObject arguments, String name) {
        JsonNode values = arguments.members().get(name);
        return values == null ? List.of() : StreamSupport.stream(values.spliterator(), false).map(JsonNode::textValue).toList();
    }

    /** As much of an answer as the detail says; stop, warning and the version of the model in any. */
    private static JsonNode json(byte[] answer, Detail detail) {
        ObjectNode json = (ObjectNode) Json.tree(answer);
        if (detail != Detail.FULL) {
            json.remove(List.of("assumptions", "basis"));
        }
        if (detail == Detail.NUMBERS) {
            json.remove(List.of("summary", "verdict"));
            ArrayNode cautions = json.withArray("cautions");
            cautions.removeIf(caution -> caution.path("severity").asText().equals("info"));
        }
        return json;
    }
}
