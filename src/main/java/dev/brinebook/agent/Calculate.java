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

/** The tool that runs one operation: the answer of the REST operation of that name, as text of a bounded length or as JSON. */
final class Calculate {

    /** About 6,000 tokens. */
    private static final int LONGEST_JSON = 18_000;
    private static final List<String> HEAD = List.of("cautions", "modelVersion", "summary");

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
        return UnlikelyUnit.of(outcome.answer(), texts(arguments, UnlikelyUnit.CONFIRMED))
                .orElseGet(() -> shown(operation, outcome.answer(), arguments, caller));
    }

    private static Map<String, Object> shown(Operation<?, ?> operation, Record answer, RawObject arguments, Caller caller) {
        Detail detail = Detail.valueOf(text(arguments, "detail", "standard").toUpperCase(Locale.ROOT));
        if (text(arguments, "format", "text").equals("json")) {
            ObjectNode json = json(caller.calculation().write(answer), detail);
            return ToolResult.structured(bounded(json, texts(arguments, "show"), operation.path()), caller.revision());
        }
        AnswerText text = new AnswerText(operation, answer, caller.calculation());
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
        return Json.texts(arguments.members().get(name));
    }

    /** As much of an answer as the detail says; stop, warning and the version of the model in any. */
    private static ObjectNode json(byte[] answer, Detail detail) {
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

    /** The whole, or the parts to show, up to the length that all keep to; the cautions and the version of the model always. */
    private static ObjectNode bounded(ObjectNode whole, List<String> pointers, String path) {
        if (pointers.isEmpty() && Json.text(whole).length() <= LONGEST_JSON) {
            return whole;
        }
        ObjectNode head = whole.deepCopy().retain(HEAD);
        int room = LONGEST_JSON - Json.text(head).length();
        ObjectNode shown = pointers.isEmpty() ? head : head.putObject("shown");
        List<String> left = new ArrayList<>();
        for (String pointer : pointers.isEmpty() ? names(whole) : pointers) {
            JsonNode part = whole.at(pointer);
            int length = part.isMissingNode() ? 0 : Json.text(part).length() + pointer.length();
            if (length > room) {
                left.add(pointer);
            } else if (!part.isMissingNode()) {
                shown.set(pointers.isEmpty() ? pointer.substring(1) : pointer, part);
                room -= length;
            }
        }
        if (!left.isEmpty()) {
            head.put("leftOut", PartLines.leftOut(left, path));
        }
        return head;
    }

    private static List<String> names(ObjectNode whole) {
        List<String> names = new ArrayList<>();
        whole.fieldNames().forEachRemaining(name -> names.add("/" + name));
        names.removeIf(name -> HEAD.contains(name.substring(1)));
        return names;
    }
}
