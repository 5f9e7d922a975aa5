// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import java.util.List;
import java.util.Map;

/** Results of tools: one text, so that every host shows the same thing once. */
final class ToolResult {

    private ToolResult() {
    }

    static Map<String, Object> text(String text) {
        return of(text, false);
    }

    /** What a model can correct or ask for; nothing was calculated. */
    static Map<String, Object> fault(String text) {
        return of(text, true);
    }

    private static Map<String, Object> of(String text, boolean faulty) {
        return Json.object("content", List.of(Json.object("type", "text", "text", text)), "isError", faulty);
    }

    /** An answer for a program: as structured content where the revision knows it, and the same as text. */
    static Map<String, Object> structured(Object content, Revision revision) {
        Map<String, Object> result = text(Json.text(content));
        if (revision.isStructured()) {
            result.put("structuredContent", content);
        }
        return result;
    }

    /** Asks the person with a form: revision 2026-07-28, "Elicitation". */
    static Map<String, Object> form(Map<String, Object> params) {
        return Json.object("resultType", "input_required", "inputRequests",
                Json.object("facts", Json.object("method", "elicitation/create", "params", params)));
    }
}
