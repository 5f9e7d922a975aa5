// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.Operation;
import io.swagger.v3.oas.models.examples.Example;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Reads the committed examples, which the tests send and get back exactly. */
public final class Examples {

    private final ObjectMapper json = JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES).build();

    Example read(Operation<?, ?> operation, String name, String part) {
        return readJson(operation.exampleFile(name, part), name);
    }

    Example read(Operation<?, ?> operation, AnswerForm<?> form) {
        return readText(operation.exampleFile(form), form.example());
    }

    Example readJson(String file, String name) {
        return invented(name).value(tree(text(file)));
    }

    Example readText(String file, String name) {
        return invented(name).value(text(file));
    }

    /** A real answer, cut short. */
    Example excerpt(byte[] answer) {
        return new Example().summary("The first entries.").value(tree(new String(answer, StandardCharsets.UTF_8)));
    }

    /** The committed request or answer in its file: {@code part} is request, response or explained. */
    public static String text(Operation<?, ?> operation, String name, String part) {
        return text(operation.exampleFile(name, part));
    }

    /** The committed answer in a further form. */
    public static String text(Operation<?, ?> operation, AnswerForm<?> form) {
        return text(operation.exampleFile(form));
    }

    private static String text(String file) {
        try (InputStream stream = open(file)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private JsonNode tree(String text) {
        try {
            return json.readTree(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Example invented(String name) {
        return new Example().summary("Invented: " + name.replace('-', ' '));
    }

    private static InputStream open(String file) {
        InputStream stream = Examples.class.getResourceAsStream("/openapi/examples/" + file);
        if (stream == null) {
            throw new IllegalStateException("no example " + file);
        }
        return stream;
    }
}
