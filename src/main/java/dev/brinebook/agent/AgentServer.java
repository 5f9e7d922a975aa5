// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import com.fasterxml.jackson.databind.JsonNode;
import dev.brinebook.api.Operation;
import java.io.ByteArrayOutputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Answers the messages of the Model Context Protocol, without sessions and streams: the revisions that are opened by
 * {@code initialize}, and that of 2026-07-28, whose requests stand alone, at one place.
 */
public final class AgentServer {

    /** Where agents send their messages. */
    public static final String PATH = "/mcp";

    /** Messages of a batch, which revision 2025-03-26 obliges a server to take. */
    static final int MOST_IN_BATCH = 10;
    /** Lists change with a release only. */
    private static final int LIST_MILLISECONDS = 300_000;
    private static final int RESOURCE_MILLISECONDS = 86_400_000;
    private static final Set<String> NAMED = Set.of("tools/call", "resources/read", "prompts/get");
    private static final Set<String> LISTS = Set.of("tools/list", "resources/list", "resources/templates/list", "prompts/list");

    private final Tools tools;
    private final ReferencePages pages;
    private final Prompts prompts = new Prompts();
    private final Completion completion;
    private final Map<String, Object> identity;
    private final String cacheScope;

    /**
     * The server.
     *
     * @param version of the service
     * @param keyed whether callers need a key, so that no cache may be shared
     */
    public AgentServer(List<Operation<?, ?>> operations, String version, boolean keyed) {
        this.tools = new Tools(operations);
        this.pages = new ReferencePages(operations, tools.notation());
        this.completion = new Completion(pages);
        this.identity = Json.object("name", "brinebook", "title", "Brinebook", "version", version, "description",
                "Calculates household water softeners.");
        this.cacheScope = keyed ? "private" : "public";
    }

    /** The reply to the body {@code text}; exceptions of {@code calculation} are passed on. */
    public Reply answer(Headers headers, String text, Calculation calculation) {
        boolean batches = headers.version() == null || headers.version().equals(Revision.MARCH_2025.date());
        try {
            List<RpcMessage> messages = RpcMessage.read(text, batches, MOST_IN_BATCH);
            boolean batch = text.stripLeading().startsWith("[");
            return batch ? answerAll(messages, headers, calculation) : answer(messages.get(0), headers, calculation);
        } catch (RpcFault fault) {
            return new Reply(fault.status(), Json.bytes(response(null, "error", fault.error())));
        }
    }

    private Reply answerAll(List<RpcMessage> messages, Headers headers, Calculation calculation) {
        ByteArrayOutputStream replies = new ByteArrayOutputStream();
        for (RpcMessage message : messages) {
            Reply reply = message.method().equals("initialize")
                    ? failed(message, RpcFault.badRequest(RpcFault.INVALID_REQUEST, "A batch cannot hold initialize."))
                    : answer(message, headers, calculation);
            if (reply.json() != null) {
                replies.write(replies.size() == 0 ? '[' : ',');
                replies.writeBytes(reply.json());
            }
        }
        if (replies.size() == 0) {
            return new Reply(202, null);
        }
        replies.write(']');
        return new Reply(200, replies.toByteArray());
    }

    private Reply answer(RpcMessage message, Headers headers, Calculation calculation) {
        if (message.id() == null) {
            return new Reply(202, null);
        }
        try {
            Revision revision = revision(message, headers);
            Caller caller = new Caller(revision, takesForms(message), calculation);
            Map<String, Object> result = new LinkedHashMap<>(result(message, caller));
            if (!revision.isOpened()) {
                result.putIfAbsent("resultType", "complete");
                result.put("_meta", Map.of("io.modelcontextprotocol/serverInfo", identity));
                cacheable(message.method(), result);
            }
            return new Reply(200, Json.bytes(response(message.id(), "result", result)));
        } catch (RpcFault fault) {
            return failed(message, fault);
        }
    }

    private static Reply failed(RpcMessage message, RpcFault fault) {
        return new Reply(fault.status(), Json.bytes(response(message.id(), "error", fault.error())));
    }

    private static Map<String, Object> response(Object id, String kind, Object value) {
        return Json.object("jsonrpc", "2.0", "id", id, kind, value);
    }

    /** The revision that a request is in; head and body must agree on it where the revision says so. */
    private static Revision revision(RpcMessage message, Headers headers) {
        JsonNode inBody = message.meta("protocolVersion");
        if (inBody == null) {
            if (message.method().equals("initialize")) {
                return Revision.UNSAID;
            }
            Revision revision = headers.version() == null ? Revision.UNSAID : known(headers.version());
            if (!revision.isOpened()) {
                throw mismatch(Headers.VERSION);
            }
            return revision;
        }
        if (headers.version() == null || !headers.version().equals(inBody.textValue())) {
            throw mismatch(Headers.VERSION);
        }
        Revision revision = known(inBody.textValue());
        if (!revision.isOpened()) {
            check(message, headers);
        }
        return revision;
    }

    private static void check(RpcMessage message, Headers headers) {
        if (!message.method().equals(headers.method())) {
            throw mismatch(Headers.METHOD);
        }
        String name = message.text(message.method().equals("resources/read") ? "uri" : "name");
        if (NAMED.contains(message.method()) && (name == null || !name.equals(headers.plainName()))) {
            throw mismatch(Headers.NAME);
        }
        JsonNode capabilities = message.meta("clientCapabilities");
        if (capabilities == null || !capabilities.isObject()) {
            throw RpcFault.badRequest(RpcFault.INVALID_PARAMS, "A request says its clientCapabilities in _meta.");
        }
    }

    private static Revision known(String version) {
        return Revision.of(version).orElseThrow(() -> new RpcFault(RpcFault.UNSUPPORTED_VERSION, 400,
                "This version of the protocol is not spoken.", Json.object("supported", Revision.dates(), "requested",
                version.matches("[\\w.-]{1,40}") ? version : "unreadable")));
    }

    private static RpcFault mismatch(String header) {
        return RpcFault.badRequest(RpcFault.HEADER_MISMATCH, "The header " + header + " is missing, or does not equal the body.");
    }

    /** A client that names no mode can show forms (2026-07-28, "Elicitation"). */
    private static boolean takesForms(RpcMessage message) {
        JsonNode capabilities = message.meta("clientCapabilities");
        JsonNode elicitation = capabilities == null ? null : capabilities.get("elicitation");
        return elicitation != null && elicitation.isObject() && (elicitation.isEmpty() || elicitation.has("form"));
    }

    private void cacheable(String method, Map<String, Object> result) {
        boolean fixed = method.equals("resources/read");
        if (fixed || LISTS.contains(method) || method.equals("server/discover")) {
            result.put("ttlMs", fixed ? RESOURCE_MILLISECONDS : LIST_MILLISECONDS);
            result.put("cacheScope", cacheScope);
        }
    }

    private Map<String, Object> result(RpcMessage message, Caller caller) {
        if (LISTS.contains(message.method()) && message.params().containsKey("cursor")) {
            throw RpcFault.invalidParams("There is no further page: every list is answered whole.");
        }
        return switch (message.method()) {
            case "tools/list" -> tools.list();
            case "tools/call" -> tools.call(message, caller);
            case "resources/list" -> pages.list();
            case "resources/templates/list" -> pages.templates();
            case "resources/read" -> pages.read(message.text("uri"), caller);
            case "prompts/list" -> prompts.list();
            case "prompts/get" -> prompts.get(message);
            case "completion/complete" -> completion.complete(message.params());
            default -> ofOneEra(message, caller.revision().isOpened());
        };
    }

    private Map<String, Object> ofOneEra(RpcMessage message, boolean opened) {
        if (opened && message.method().equals("initialize")) {
            return initialize(message);
        }
        if (opened && message.method().equals("ping")) {
            return Map.of();
        }
        if (!opened && message.method().equals("server/discover")) {
            return described(Json.object("supportedVersions", Revision.dates()));
        }
        throw new RpcFault(RpcFault.METHOD_NOT_FOUND, opened ? 200 : 404, "There is no such method.", Map.of());
    }

    private Map<String, Object> initialize(RpcMessage message) {
        if (message.text("protocolVersion") == null) {
            throw RpcFault.invalidParams("The params do not match initialize.");
        }
        Revision agreed = Revision.of(message.text("protocolVersion")).filter(Revision::isOpened).orElse(Revision.NEWEST_OPENED);
        return described(Json.object("protocolVersion", agreed.date(), "serverInfo", identity));
    }

    private static Map<String, Object> described(Map<String, Object> result) {
        result.put("capabilities", Json.object("tools", Map.of(), "resources", Map.of(), "prompts", Map.of(), "completions", Map.of()));
        result.put("instructions", Guide.INSTRUCTIONS);
        return result;
    }
}
