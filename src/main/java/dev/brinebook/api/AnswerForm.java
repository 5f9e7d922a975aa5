package dev.brinebook.api;

import dev.brinebook.wording.Wording;
import java.util.function.BiFunction;

/**
 * A further form in which an operation answers, beside JSON, to callers whose {@code Accept} asks for it.
 *
 * @param mediaType type and subtype, such as {@code text/csv}; what is written is sent in UTF-8
 * @param description what the form holds and leaves out
 * @param extension how the names of its files end, such as {@code csv}
 * @param example name of the operation's example that the contract shows it by
 * @param write the answer to a request without violations, in a language
 * @param <Q> request
 */
public record AnswerForm<Q extends Record>(String mediaType, String description, String extension, String example,
        BiFunction<Q, Wording, String> write) {
}
