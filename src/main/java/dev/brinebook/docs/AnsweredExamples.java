// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.api.Operation;
import dev.brinebook.contract.Examples;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** Explanations in the committed answers of an operation: basis, assumptions and cautions. */
final class AnsweredExamples {

    private static final ObjectMapper JSON = new ObjectMapper();

    /**
     * An answer that a test checks.
     *
     * @param name name of the example
     * @param answer the whole answer
     */
    record Answered(String name, JsonNode answer) {

        String summary() {
            return answer.path("summary").asText();
        }

        Stream<JsonNode> entries(String list) {
            return StreamSupport.stream(answer.path(list).spliterator(), false);
        }
    }

    private AnsweredExamples() {
    }

    static List<Answered> of(Operation<?, ?> operation) {
        return operation.examples().stream().map(name -> new Answered(name, whole(operation, name))).toList();
    }

    /** The answer with its assumptions and basis, which are in a file of their own. */
    private static JsonNode whole(Operation<?, ?> operation, String name) {
        ObjectNode answer = read(operation, name, "response");
        return answer.setAll(read(operation, name, "explained").retain("assumptions", "basis"));
    }

    private static ObjectNode read(Operation<?, ?> operation, String name, String part) {
        try {
            return (ObjectNode) JSON.readTree(Examples.text(operation, name, part));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("example " + name + " of " + operation.id(), e);
        }
    }
}
