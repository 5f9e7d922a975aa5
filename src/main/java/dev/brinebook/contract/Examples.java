package dev.brinebook.contract;

import com.fasterxml.jackson.databind.DeserializationFeature;
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
final class Examples {

    private final ObjectMapper json = JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES).build();

    Example read(Operation<?, ?> operation, String name, String part) {
        return readJson(operation.exampleFile(name, part), name);
    }

    Example read(Operation<?, ?> operation, AnswerForm<?> form) {
        return readText(operation.exampleFile(form), form.example());
    }

    Example readJson(String file, String name) {
        try (InputStream stream = open(file)) {
            return invented(name).value(json.readTree(stream));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Example readText(String file, String name) {
        try (InputStream stream = open(file)) {
            return invented(name).value(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
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
