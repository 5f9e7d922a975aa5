// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One message of JSON-RPC 2.0, read strictly.
 *
 * @param id a string or whole number, or null for a notification
 * @param method name of the method
 * @param params all parameters but {@code arguments}
 * @param arguments the arguments of a call
 */
record RpcMessage(Object id, String method, Map<String, JsonNode> params, RawObject arguments) {

    /**
     * An object whose member {@code arguments} is kept as the original text, so that a request is read once and by one reader.
     *
     * @param members all other members
     * @param arguments text of the member {@code arguments}, {@code {}} where there is none
     * @param isObject whether it is an object at all
     */
    record RawObject(Map<String, JsonNode> members, String arguments, boolean isObject) {

        static final String NONE = "{}";

        /** The object that {@code parser} is at in {@code text}, or that it is none. */
        static RawObject read(JsonParser parser, String text) throws IOException {
            if (parser.currentToken() != JsonToken.START_OBJECT) {
                parser.skipChildren();
                return new RawObject(Map.of(), NONE, false);
            }
            Map<String, JsonNode> members = new LinkedHashMap<>();
            String arguments = NONE;
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                String name = parser.currentName();
                boolean nested = parser.nextToken().isStructStart();
                if (!name.equals("arguments")) {
                    members.put(name, Json.MAPPER.readTree(parser));
                } else if (nested) {
                    int start = (int) parser.currentTokenLocation().getCharOffset();
                    parser.skipChildren();
                    arguments = text.substring(start, (int) parser.currentLocation().getCharOffset());
                } else {
                    arguments = Json.MAPPER.writeValueAsString(Json.MAPPER.readTree(parser));
                }
            }
            return new RawObject(members, arguments, true);
        }

        /** Reads {@code text}, which was read as JSON before. */
        static RawObject read(String text) {
            try (JsonParser parser = Json.MAPPER.createParser(text)) {
                parser.nextToken();
                return read(parser, text);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /**
     * The messages in {@code text}: one, or where {@code batches} are taken also a list of up to {@code most}.
     *
     * @throws RpcFault when there is none
     */
    static List<RpcMessage> read(String text, boolean batches, int most) {
        try (JsonParser parser = Json.MAPPER.createParser(text)) {
            JsonToken first = parser.nextToken();
            List<RpcMessage> messages = new ArrayList<>();
            if (first == JsonToken.START_ARRAY && batches) {
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    messages.add(read(parser, text));
                    if (messages.size() > most) {
                        throw RpcFault.badRequest(RpcFault.INVALID_REQUEST, "A batch holds at most " + most + " messages.");
                    }
                }
            } else {
                messages.add(read(parser, text));
            }
            if (messages.isEmpty()) {
                throw RpcFault.badRequest(RpcFault.INVALID_REQUEST, "A batch holds a message at least.");
            }
            if (parser.nextToken() != null) {
                throw RpcFault.badRequest(RpcFault.PARSE_ERROR, "There is text after the end of the message.");
            }
            return messages;
        } catch (JsonProcessingException e) {
            throw RpcFault.badRequest(RpcFault.PARSE_ERROR,
                    "The message is not valid JSON, is cut off, nested too deeply, or holds a key twice.");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static RpcMessage read(JsonParser parser, String text) throws IOException {
        if (parser.currentToken() != JsonToken.START_OBJECT) {
            throw RpcFault.badRequest(parser.currentToken() == null ? RpcFault.PARSE_ERROR : RpcFault.INVALID_REQUEST,
                    "A message is one JSON object.");
        }
        Map<String, JsonNode> members = new HashMap<>();
        RawObject params = new RawObject(Map.of(), RawObject.NONE, true);
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            parser.nextToken();
            if (name.equals("params")) {
                params = RawObject.read(parser, text);
            } else {
                members.put(name, Json.MAPPER.readTree(parser));
            }
        }
        return of(members, params);
    }

    private static RpcMessage of(Map<String, JsonNode> members, RawObject params) {
        if (!members.containsKey("jsonrpc") || !members.get("jsonrpc").asText().equals("2.0")) {
            throw RpcFault.badRequest(RpcFault.INVALID_REQUEST, "A message has \"jsonrpc\": \"2.0\".");
        }
        JsonNode id = members.get("id");
        boolean named = id == null || id.isTextual() || id.isIntegralNumber() && id.canConvertToLong();
        if (!named) {
            throw RpcFault.badRequest(RpcFault.INVALID_REQUEST, "The id of a request is a string or a whole number.");
        }
        if (members.get("method") == null || !members.get("method").isTextual()) {
            throw RpcFault.badRequest(RpcFault.INVALID_REQUEST, "A request or notification names its method.");
        }
        if (!params.isObject()) {
            throw RpcFault.badRequest(RpcFault.INVALID_REQUEST, "The params of a message are an object.");
        }
        return new RpcMessage(id == null ? null : id.isTextual() ? id.textValue() : (Object) id.longValue(),
                members.get("method").textValue(), params.members(), params);
    }

    /** A parameter that is a text, or null. */
    String text(String name) {
        JsonNode value = params.get(name);
        return value == null ? null : value.textValue();
    }

    /** A member of the metadata of the request, or null. */
    JsonNode meta(String name) {
        JsonNode meta = params.get("_meta");
        return meta == null ? null : meta.get("io.modelcontextprotocol/" + name);
    }
}
