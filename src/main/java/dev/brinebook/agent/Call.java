// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.util.RawValue;
import dev.brinebook.api.Operation;
import io.modelcontextprotocol.spec.McpSchema.CallToolResult;
import io.modelcontextprotocol.spec.McpSchema.TextContent;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * One call of a tool within the SDK. The SDK would send the message of any exception to the caller. So it is kept here, and the server
 * answers it like that of every other request.
 */
final class Call {

    private static final JsonFactory JSON = new JsonFactory();

    private final byte[] arguments;
    private final Calculation calculation;
    private RuntimeException thrown;

    Call(String arguments, Calculation calculation) {
        this.arguments = arguments.getBytes(StandardCharsets.UTF_8);
        this.calculation = calculation;
    }

    CallToolResult run(Operation<?, ?> operation) {
        try {
            return result(calculation.answer(operation, arguments));
        } catch (RuntimeException e) {
            thrown = e;
            throw e;
        }
    }

    /** Throws what the calculation threw, if it did. */
    void rethrow() {
        if (thrown != null) {
            throw thrown;
        }
    }

    /**
     * The answer both as structured content, to the byte, and as text for clients that show their model only text; before
     * that the sentence to quote.
     */
    private static CallToolResult result(ToolAnswer answer) {
        String json = new String(answer.json(), StandardCharsets.UTF_8);
        CallToolResult.Builder result = CallToolResult.builder().isError(answer.faulty());
        if (!answer.faulty()) {
            String summary = summary(json);
            if (summary != null) {
                result.addContent(TextContent.builder(summary).build());
            }
            result.structuredContent(new RawValue(json));
        }
        return result.addContent(TextContent.builder(json).build()).build();
    }

    /** The summary of an answer, its first property. */
    private static String summary(String json) {
        try (JsonParser parser = JSON.createParser(json)) {
            parser.nextToken();
            boolean first = parser.nextToken() == JsonToken.FIELD_NAME && parser.currentName().equals("summary");
            return first ? parser.nextTextValue() : null;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
