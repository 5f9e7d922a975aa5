package dev.brinebook.contract;

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
 * @param cached whether it may be kept and asked for again by its ETag
 * @param whenStopping what the same answer says with 503 when the service stops, or null where it says a problem
 */
public record PageRoute(String id, String path, String summary, String description, String mediaType,
        Class<? extends Record> answerType, String parameter, boolean cached, String whenStopping) {
}
