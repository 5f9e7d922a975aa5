package dev.brinebook.contract;

import java.util.List;
import java.util.function.Supplier;

/**
 * A route beside the operations: health, version, the contract itself, pages.
 *
 * @param id operationId of the contract
 * @param path path, with parameters in braces
 * @param summary one line
 * @param description what it answers
 * @param mediaType media type of the answer
 * @param answerType record of a JSON answer, or null
 * @param parameter name of the parameter in the path, or null
 * @param values what the parameter can be
 * @param example an example of a JSON answer, or null
 */
public record PageRoute(String id, String path, String summary, String description, String mediaType,
        Class<? extends Record> answerType, String parameter, List<String> values, Supplier<byte[]> example) {

    public PageRoute {
        values = List.copyOf(values);
    }

    /** A route without an example, and whose parameter, if it has one, is not a closed list. */
    public PageRoute(String id, String path, String summary, String description, String mediaType,
            Class<? extends Record> answerType, String parameter) {
        this(id, path, summary, description, mediaType, answerType, parameter, List.of(), null);
    }
}
