// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.brinebook.api.Operation;
import dev.brinebook.contract.OperationSchemas;
import io.modelcontextprotocol.common.McpTransportContext;
import io.modelcontextprotocol.json.jackson2.JacksonMcpJsonMapper;
import io.modelcontextprotocol.json.schema.JsonSchemaValidator.ValidationResponse;
import io.modelcontextprotocol.server.McpServer;
import io.modelcontextprotocol.server.McpStatelessServerFeatures.SyncToolSpecification;
import io.modelcontextprotocol.spec.McpSchema.ErrorCodes;
import io.modelcontextprotocol.spec.McpSchema.JSONRPCNotification;
import io.modelcontextprotocol.spec.McpSchema.JSONRPCRequest;
import io.modelcontextprotocol.spec.McpSchema.JSONRPCResponse;
import io.modelcontextprotocol.spec.McpSchema.ServerCapabilities;
import io.modelcontextprotocol.spec.McpSchema.Tool;
import io.modelcontextprotocol.spec.McpSchema.ToolAnnotations;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Answers the messages of the Model Context Protocol, without sessions: each operation is a tool of the same name. */
public final class ToolServer {

    /** Where agents send their messages. */
    public static final String PATH = "/mcp";

    private static final String CALL = "call";
    private static final String CALL_A_TOOL = "tools/call";

    private final JsonMapper json = JsonMapper.builder().enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN).build();
    private final Map<String, Operation<?, ?>> operations = new LinkedHashMap<>();
    private final Dispatch dispatch = new Dispatch();

    /**
     * Builds the tools with their schemas; this takes some hundred milliseconds.
     *
     * @param version of the service
     */
    public ToolServer(List<Operation<?, ?>> operations, String version) {
        operations.forEach(operation -> this.operations.put(operation.id(), operation));
        OperationSchemas schemas = new OperationSchemas(operations);
        // Arguments are checked where those of every caller are, and the tests check the answers against their schemas.
        McpServer.sync(dispatch).serverInfo("brinebook", version).instructions(Guide.INSTRUCTIONS)
                .capabilities(ServerCapabilities.builder().tools(false).build())
                .tools(operations.stream().map(operation -> tool(operation, schemas)).toList())
                .jsonMapper(new JacksonMcpJsonMapper(json)).validateToolInputs(false)
                .jsonSchemaValidator((schema, content) -> ValidationResponse.asValid(null)).immediateExecution(true).build();
    }

    /** Versions of the protocol that it speaks. */
    public static List<String> protocolVersions() {
        return new Dispatch().protocolVersions();
    }

    /** The reply to the message in {@code text}; exceptions of {@code calculation} are passed on. */
    public Reply answer(String text, Calculation calculation) {
        RpcMessage message;
        try {
            message = RpcMessage.read(text);
        } catch (RpcFault fault) {
            return new Reply(400, write(new Unanswerable("2.0", error(fault))));
        }
        if (message.id() == null) {
            dispatch.handler().handleNotification(McpTransportContext.EMPTY,
                    new JSONRPCNotification(message.method(), message.params())).block();
            return new Reply(202, null);
        }
        try {
            return new Reply(200, write(respond(message, calculation)));
        } catch (RpcFault fault) {
            return new Reply(200, write(JSONRPCResponse.error(message.id(), error(fault))));
        }
    }

    private JSONRPCResponse respond(RpcMessage message, Calculation calculation) {
        boolean calls = message.method().equals(CALL_A_TOOL);
        Map<String, Object> params = calls ? Map.of("name", toolName(message)) : message.params();
        Call call = new Call(message.arguments(), calculation);
        JSONRPCResponse response = dispatch.handler().handleRequest(McpTransportContext.create(Map.of(CALL, call)),
                new JSONRPCRequest(message.method(), message.id(), params)).blockOptional().orElseThrow();
        call.rethrow();
        if (response.error() != null && response.error().code() == ErrorCodes.INTERNAL_ERROR) {
            // Calculation errors are handled separately, so the SDK fails only at params that it cannot convert.
            throw new RpcFault(ErrorCodes.INVALID_PARAMS, "The params do not match " + message.method() + ".");
        }
        return response;
    }

    private String toolName(RpcMessage message) {
        if (message.params().get("name") instanceof String name && operations.containsKey(name)) {
            return name;
        }
        throw new RpcFault(ErrorCodes.INVALID_PARAMS, "Unknown tool: name must be one of "
                + String.join(", ", operations.keySet()) + ".");
    }

    private static SyncToolSpecification tool(Operation<?, ?> operation, OperationSchemas schemas) {
        ToolAnnotations annotations = ToolAnnotations.builder().title(operation.summary()).readOnlyHint(true)
                .destructiveHint(false).idempotentHint(true).openWorldHint(false).build();
        Tool tool = Tool.builder(operation.id(), schemas.request(operation)).title(operation.summary())
                .description(operation.description()).outputSchema(schemas.answer(operation)).annotations(annotations).build();
        return new SyncToolSpecification(tool, (context, request) -> ((Call) context.get(CALL)).run(operation));
    }

    private static JSONRPCResponse.JSONRPCError error(RpcFault fault) {
        return new JSONRPCResponse.JSONRPCError(fault.code(), fault.getMessage());
    }

    private byte[] write(Object response) {
        try {
            return json.writeValueAsBytes(response);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the response cannot be written", e);
        }
    }

    /** An error of a message whose id is not known. */
    private record Unanswerable(String jsonrpc, JSONRPCResponse.JSONRPCError error) {
    }
}
