// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;

/** Prompts that a person can choose. What the person enters stands between quotation marks. */
final class Prompts {

    private static final int LONGEST_ARGUMENT = 2_000;

    private final Map<String, JsonNode> prompts = new LinkedHashMap<>();
    private final List<JsonNode> list;

    Prompts() {
        Json.fileTree("prompts.json").forEach(prompt -> prompts.put(prompt.get("name").asText(), prompt));
        this.list = prompts.values().stream().map(Prompts::listed).toList();
    }

    private static JsonNode listed(JsonNode prompt) {
        ObjectNode listed = prompt.deepCopy();
        listed.remove("text");
        listed.get("arguments").forEach(argument -> ((ObjectNode) argument).remove("default"));
        return listed;
    }

    Map<String, Object> list() {
        return Json.object("prompts", list);
    }

    /** The messages of a prompt. */
    Map<String, Object> get(RpcMessage message) {
        JsonNode prompt = message.text("name") == null ? null : prompts.get(message.text("name"));
        if (prompt == null) {
            throw RpcFault.invalidParams("Unknown prompt: name must be one of " + String.join(", ", prompts.keySet()) + ".");
        }
        JsonNode given = Json.tree(message.arguments().arguments().getBytes(StandardCharsets.UTF_8));
        String text = prompt.get("text").asText();
        Map<String, String> values = new LinkedHashMap<>();
        for (JsonNode argument : prompt.get("arguments")) {
            String name = argument.get("name").asText();
            values.put(name, quoted(name, given.get(name), argument));
        }
        // One pass, so that what was entered is not filled in again.
        text = FigureTable.SLOT.matcher(text).replaceAll(slot ->
                Matcher.quoteReplacement(values.get(slot.group(1))));
        return Json.object("description", prompt.get("description"), "messages", List.of(Json.object("role", "user",
                "content", Json.object("type", "text", "text", text))));
    }

    private static String quoted(String name, JsonNode given, JsonNode argument) {
        if (given == null && argument.path("required").asBoolean()) {
            throw RpcFault.invalidParams("The argument " + name + " is missing.");
        }
        if (given != null && !given.isTextual()) {
            throw RpcFault.invalidParams("The argument " + name + " must be a text.");
        }
        String value = given == null ? argument.get("default").asText() : given.textValue();
        if (value.length() > LONGEST_ARGUMENT || value.codePoints().anyMatch(Prompts::isInvisible)) {
            throw RpcFault.invalidParams("The argument " + name + " is longer than " + LONGEST_ARGUMENT
                    + " characters, or holds a control or format character.");
        }
        return '"' + value.replace("\"", "\"\"") + '"';
    }

    /** Line breaks are allowed, as people enter them; they stand inside the quotation marks. */
    private static boolean isInvisible(int character) {
        int type = Character.getType(character);
        return character != '\n' && (type == Character.CONTROL || type == Character.FORMAT || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR);
    }
}
