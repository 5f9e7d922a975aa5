// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.model.Model;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Supplier;

/**
 * A further form in which an operation answers, beside JSON, to callers whose {@code Accept} asks for it.
 *
 * @param mediaType type and subtype, such as {@code text/csv}; a text is sent in UTF-8
 * @param description what the form contains and omits
 * @param extension how the names of its files end, such as {@code csv}
 * @param example name of the operation's example that the contract shows it by
 * @param contentPolicy what a browser that shows it may load, as a Content-Security-Policy, asked for when it is shown; null where
 *         none shows it
 * @param choices what a caller may choose about it; equal for all forms of an operation
 * @param write the answer to a request without violations, by a model
 * @param <Q> request
 */
public record AnswerForm<Q extends Record>(String mediaType, String description, String extension, String example,
        Supplier<String> contentPolicy, List<FormChoice<?>> choices, Writer<Q, byte[]> write) {

    public AnswerForm {
        choices = List.copyOf(choices);
    }

    /** Writes the answer to a request by a model. */
    @FunctionalInterface
    public interface Writer<Q, T> {

        T write(Q request, Model model, Rendering as);
    }

    /** A form that is a text. */
    public static <Q extends Record> AnswerForm<Q> text(String mediaType, String description, String extension, String example,
            Writer<Q, String> write) {
        return new AnswerForm<>(mediaType, description, extension, example, null, List.of(),
                (request, model, as) -> bytes(write.write(request, model, as)));
    }

    /** Whether it is a text, of which an example is committed and shown. */
    public boolean isText() {
        return mediaType.startsWith("text/");
    }

    /** The media type as the answer names it. */
    public String contentType() {
        return isText() ? mediaType + "; charset=utf-8" : mediaType;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
