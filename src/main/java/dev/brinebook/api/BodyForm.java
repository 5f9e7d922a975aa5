// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.api.Operation.QueryParameter;
import dev.brinebook.model.Model;
import java.util.List;
import java.util.function.BiFunction;

/**
 * Another form of the request of an operation, beside JSON: a text, with further settings in the query.
 *
 * @param mediaType such as {@code text/csv}
 * @param description what the text holds
 * @param example a text that is answered
 * @param settingsType record that the query is read into, and held to as a JSON body is
 * @param query how the settings are written
 * @param calculate the calculation; gets a text in UTF-8 and settings without violations
 * @param <S> settings
 * @param <A> answer
 */
public record BodyForm<S extends Record, A extends Record>(String mediaType, String description, String example,
        Class<S> settingsType, List<QueryParameter> query, BiFunction<String, S, A> calculate) {

    public BodyForm {
        query = List.copyOf(query);
    }

    /** The answer to a text with settings without violations, with its version, and its whole basis where the parts have it. */
    public A answer(String text, S settings, Model model, AnswerParts parts) {
        return AnswerBasis.complete(calculate.apply(text, settings), model, parts);
    }
}
