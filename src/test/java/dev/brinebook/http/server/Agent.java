// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.knuddels.jtokkit.Encodings;
import com.knuddels.jtokkit.api.Encoding;
import com.knuddels.jtokkit.api.EncodingType;
import dev.brinebook.http.Served;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.nio.charset.StandardCharsets;

/** Sends messages of the Model Context Protocol as they are written, and counts what a model reads of them. */
public final class Agent {

    public static final String PATH = "/mcp";
    static final String NEWEST = "2026-07-28";
    static final ObjectMapper JSON = new ObjectMapper();

    private static final Encoding TOKENS = Encodings.newLazyEncodingRegistry().getEncoding(EncodingType.O200K_BASE);

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

    /** A call that has an operation calculated; {@code further} are members of its arguments, such as {@code ,"detail":"full"}. */
    public static String calculate(String operation, String request, String further) {
        return call("calculate", "{\"operation\":\"" + operation + "\",\"arguments\":" + request + further + "}");
    }

    public static String calculate(String operation, String request) {
        return calculate(operation, request, "");
    }

    /** A request of revision 2026-07-28, whose head repeats what the body says. */
    static Response sendNewest(String method, String params, String capabilities) {
        try {
            JsonNode given = JSON.readTree(params);
            String name = given.has("name") ? given.get("name").asText() : given.path("uri").asText(null);
            String meta = "\"_meta\":{\"io.modelcontextprotocol/protocolVersion\":\"" + NEWEST
                    + "\",\"io.modelcontextprotocol/clientCapabilities\":" + capabilities + "}";
            String whole = given.isEmpty() ? "{" + meta + "}" : params.substring(0, params.lastIndexOf('}')) + "," + meta + "}";
            RequestSpecification request = posting(Served.SERVER.port(), request(method, whole))
                    .header("MCP-Protocol-Version", NEWEST).header("Mcp-Method", method);
            return (name == null ? request : request.header("Mcp-Name", name)).post(PATH);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(e);
        }
    }

    /** The text of the result of a call. */
    static String text(String message) {
        return send(message).then().statusCode(200).extract().path("result.content[0].text");
    }

    /** Tokens of a text by the public encoding o200k_base. */
    static int tokens(String text) {
        return TOKENS.countTokensOrdinary(text);
    }
}
