// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.model.Model;
import dev.brinebook.text.Language;
import java.nio.charset.StandardCharsets;

/**
 * A further form in which an operation answers, beside JSON, to callers whose {@code Accept} asks for it.
 *
 * @param mediaType type and subtype, such as {@code text/csv}; a text is sent in UTF-8
 * @param description what the form contains and omits
 * @param extension how the names of its files end, such as {@code csv}
 * @param example name of the operation's example that the contract shows it by
 * @param contentPolicy what a browser that shows it may load, as a Content-Security-Policy; null where none shows it
 * @param write the answer to a request without violations, by a model, in a language
 * @param <Q> request
 */
public record AnswerForm<Q extends Record>(String mediaType, String description, String extension, String example,
        String contentPolicy, Writer<Q, byte[]> write) {

    /** Writes the answer to a request by a model, in a language. */
    @FunctionalInterface
    public interface Writer<Q, T> {

        T write(Q request, Model model, Language language);
    }

    /** A form that is a text. */
    public static <Q extends Record> AnswerForm<Q> text(String mediaType, String description, String extension, String example,
            Writer<Q, String> write) {
        return new AnswerForm<>(mediaType, description, extension, example, null,
                (request, model, language) -> bytes(write.write(request, model, language)));
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
