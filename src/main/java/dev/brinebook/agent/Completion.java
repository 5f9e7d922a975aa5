// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** Completes the arguments of prompts and templates that come from a list: by the start of the name, then by a word in it. */
final class Completion {

    /** As many as the protocol lets a server send (2025-06-18, "Completion"). */
    private static final int MOST = 100;

    private final ReferencePages pages;

    Completion(ReferencePages pages) {
        this.pages = pages;
    }

    Map<String, Object> complete(Map<String, JsonNode> params) {
        JsonNode argument = params.get("argument");
        if (argument == null || !argument.path("name").isTextual() || !argument.path("value").isTextual()
                || params.get("ref") == null || !params.get("ref").path("type").asText().matches("ref/(prompt|resource)")) {
            throw RpcFault.invalidParams("Completion needs ref, and argument with name and value.");
        }
        JsonNode context = params.get("context");
        String operation = context == null ? "" : context.path("arguments").path("operation").asText();
        String start = argument.get("value").asText().toLowerCase(Locale.ROOT);
        List<String> all = pages.values(argument.get("name").asText(), operation);
        List<String> found = Stream.concat(all.stream().filter(name -> lower(name).startsWith(start)),
                all.stream().filter(name -> !lower(name).startsWith(start) && lower(name).contains(start))).toList();
        return Json.object("completion", Json.object("values", found.subList(0, Math.min(MOST, found.size())), "total", found.size(),
                "hasMore", found.size() > MOST));
    }

    private static String lower(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
