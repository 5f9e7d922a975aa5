// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.api.Operation;
import io.modelcontextprotocol.spec.McpSchema.ErrorCodes;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;

/**
 * One message of JSON-RPC 2.0, read strictly.
 *
 * @param id a string or whole number, or null for a notification
 * @param method name of the method
 * @param params all parameters but {@code arguments}
 * @param arguments the arguments of a call, as the original text, so that they are read once and by one reader
 */
record RpcMessage(Object id, String method, Map<String, Object> params, String arguments) {

    private static final String NONE = "{}";
    /** Deep enough that the reader of the arguments reports slightly too deep nesting, and yet bounded. */
    private static final int MAX_DEPTH = 4 * Operation.MAX_DEPTH;
    private static final ObjectMapper JSON = new ObjectMapper(JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(MAX_DEPTH).build()).build());

    /**
     * The message in {@code text}.
     *
     * @throws RpcFault when it is none
     */
    static RpcMessage read(String text) {
        try (JsonParser parser = JSON.createParser(text)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                throw new RpcFault(parser.currentToken() == null ? ErrorCodes.PARSE_ERROR : ErrorCodes.INVALID_REQUEST,
                        "A message is one JSON object; a batch is not taken.");
            }
            Map<String, Object> members = new HashMap<>();
            Map<String, Object> params = new HashMap<>();
            String arguments = NONE;
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                String name = parser.currentName();
                if (parser.nextToken() == JsonToken.START_OBJECT && name.equals("params")) {
                    arguments = readParams(parser, text, params);
                } else {
                    members.put(name, JSON.readValue(parser, Object.class));
                }
            }
            if (parser.nextToken() != null) {
                throw new RpcFault(ErrorCodes.PARSE_ERROR, "There is text after the end of the message.");
            }
            return of(members, params, arguments);
        } catch (JsonProcessingException e) {
            throw new RpcFault(ErrorCodes.PARSE_ERROR,
                    "The message is not valid JSON, is cut off, nested too deeply, or holds a key twice.");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String readParams(JsonParser parser, String text, Map<String, Object> params) throws IOException {
        String arguments = NONE;
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            boolean nested = parser.nextToken().isStructStart();
            if (!name.equals("arguments")) {
                params.put(name, JSON.readValue(parser, Object.class));
            } else if (nested) {
                int start = (int) parser.currentTokenLocation().getCharOffset();
                parser.skipChildren();
                arguments = text.substring(start, (int) parser.currentLocation().getCharOffset());
            } else {
                arguments = JSON.writeValueAsString(JSON.readValue(parser, Object.class));
            }
        }
        return arguments;
    }

    private static RpcMessage of(Map<String, Object> members, Map<String, Object> params, String arguments) {
        if (!"2.0".equals(members.get("jsonrpc"))) {
            throw new RpcFault(ErrorCodes.INVALID_REQUEST, "A message has \"jsonrpc\": \"2.0\".");
        }
        Object id = members.get("id");
        boolean named = id instanceof String || id instanceof Integer || id instanceof Long;
        if (!named && members.containsKey("id")) {
            throw new RpcFault(ErrorCodes.INVALID_REQUEST, "The id of a request is a string or a whole number.");
        }
        if (!(members.get("method") instanceof String method)) {
            throw new RpcFault(ErrorCodes.INVALID_REQUEST, "A request or notification names its method.");
        }
        if (members.containsKey("params")) {
            throw new RpcFault(ErrorCodes.INVALID_REQUEST, "The params of a message are an object.");
        }
        return new RpcMessage(id, method, params, arguments);
    }
}
