// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
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
        return operation.examples().stream().map(name -> new Answered(name, read(operation, name))).toList();
    }

    private static JsonNode read(Operation<?, ?> operation, String name) {
        try {
            return JSON.readTree(Examples.text(operation, name, "response"));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("example " + name + " of " + operation.id(), e);
        }
    }
}
