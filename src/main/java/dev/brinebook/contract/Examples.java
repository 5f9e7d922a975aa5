package dev.brinebook.contract;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.Operation;
import io.swagger.v3.oas.models.examples.Example;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Reads the committed examples, which the tests send and get back exactly. */
public final class Examples {

    private final ObjectMapper json = new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

    Example read(Operation<?, ?> operation, String name, String part) {
        try {
            return invented(name).value(json.readTree(text(operation, name, part)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Example read(Operation<?, ?> operation, AnswerForm<?> form) {
        return invented(form.example()).value(text(operation, form));
    }

    /** A real answer, cut short. */
    static Example excerpt(byte[] answer) {
        try {
            return new Example().summary("The first entries.").value(new ObjectMapper().readTree(answer));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The committed request or answer as it stands in its file: {@code part} is request or response. */
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
