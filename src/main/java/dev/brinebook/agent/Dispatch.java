// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import io.modelcontextprotocol.server.McpStatelessServerHandler;
import io.modelcontextprotocol.spec.McpStatelessServerTransport;
import reactor.core.publisher.Mono;

/**
 * Where the SDK leaves what answers its messages. Its own servlet would bypass the router, without request id, limits,
 * log and metrics, and writes its exceptions with their stack traces.
 */
final class Dispatch implements McpStatelessServerTransport {

    private McpStatelessServerHandler handler;

    @Override
    public void setMcpHandler(McpStatelessServerHandler mcpHandler) {
        this.handler = mcpHandler;
    }

    McpStatelessServerHandler handler() {
        return handler;
    }

    @Override
    public Mono<Void> closeGracefully() {
        return Mono.empty();
    }
}
