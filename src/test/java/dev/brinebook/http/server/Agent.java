// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import dev.brinebook.http.Served;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.nio.charset.StandardCharsets;

/** Sends messages of the Model Context Protocol as they are written. */
public final class Agent {

    public static final String PATH = "/mcp";

    private Agent() {
    }

    static Response send(String message) {
        return posting(Served.SERVER.port(), message).post(PATH);
    }

    /** What an agent sends with every message (streamable HTTP, "Sending Messages to the Server"). */
    public static RequestSpecification posting(int port, String message) {
        return Served.given(port).contentType("application/json").accept("application/json, text/event-stream")
                .body(message.getBytes(StandardCharsets.UTF_8));
    }

    /** A request with the id 1. */
    static String request(String method, String params) {
        return "{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":\"" + method + "\",\"params\":" + params + "}";
    }

    public static String call(String tool, String arguments) {
        return request("tools/call", "{\"name\":\"" + tool + "\",\"arguments\":" + arguments + "}");
    }
}
