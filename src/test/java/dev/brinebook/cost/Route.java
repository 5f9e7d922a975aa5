// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.cost;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import dev.brinebook.api.Operation;
import dev.brinebook.fuzz.Call;
import dev.brinebook.fuzz.Call.Options;
import java.nio.charset.StandardCharsets;

/** How the body of a request reaches the service. */
enum Route {
    /** The body is JSON, answered in JSON or another form. */
    POST,
    /** The body is a line of JSON in bulk. */
    LINE,
    /** The body is the request that an agent has calculated. */
    TOOL,
    /** The body is a whole message of an agent. */
    MESSAGE,
    /** The body is a text: a table in bulk, of a header and rows. */
    TABLE,
    /** The body is a text: the query of the GET form. */
    QUERY,
    /** The body is a text: a line with the query, then the other form of the request, such as a table of readings. */
    TEXT;

    private static final String NDJSON = "application/x-ndjson";

    /** Whether the body is made of what the records of the operation say of themselves. */
    boolean isRequest() {
        return this == POST || this == LINE || this == TOOL;
    }

    /** Whether answers are sent as they are made, line by line, so that none is held whole. */
    boolean isStreamed() {
        return this == LINE || this == TABLE;
    }

    byte[] bytes(Operation<?, ?> operation, JsonNode body) {
        String text = body.isTextual() ? body.textValue() : body.toString();
        return (this == TOOL ? call(operation, body).toString() : text).getBytes(StandardCharsets.UTF_8);
    }

    Call call(Operation<?, ?> operation, Options options, byte[] bytes) {
        return switch (this) {
            case POST -> Call.post(operation.path(), options, Operation.JSON, bytes);
            case LINE -> Call.post("/v1/bulk/" + operation.id(), new Options(options.language(), NDJSON), NDJSON, bytes);
            case TABLE -> Call.post("/v1/bulk/" + operation.id(), new Options(options.language(), NDJSON), "text/csv", bytes);
            case TOOL, MESSAGE -> Call.post("/mcp", new Options(options.language(), Operation.JSON), Operation.JSON, bytes);
            case QUERY -> Call.get(operation.path() + "?" + Call.query(bytes), options);
            case TEXT -> Call.text(operation, options, bytes);
        };
    }

    /** A message that has an operation calculated. */
    static JsonNode call(Operation<?, ?> operation, JsonNode arguments) {
        JsonNodeFactory json = JsonNodeFactory.instance;
        return json.objectNode().put("jsonrpc", "2.0").put("id", 1).put("method", "tools/call")
                .set("params", json.objectNode().put("name", "calculate").set("arguments",
                        json.objectNode().put("operation", operation.id()).set("arguments", arguments)));
    }
}
