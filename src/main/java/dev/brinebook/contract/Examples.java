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
        try (InputStream stream = open(operation.exampleFile(name, part))) {
            return invented(name).value(json.readTree(stream));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Example read(Operation<?, ?> operation, AnswerForm<?> form) {
        try (InputStream stream = open(operation.exampleFile(form))) {
            return invented(form.example()).value(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The requests of an operation, one on each line. */
    Example requestLines(Operation<?, ?> operation) {
        StringBuilder lines = new StringBuilder();
        operation.examples().forEach(name -> lines.append(read(operation, name, "request").getValue()).append('\n'));
        return invented("all requests of " + operation.id()).value(lines.toString());
    }

    /** What bulk answers to them. */
    Example answerLines(Operation<?, ?> operation) {
        StringBuilder lines = new StringBuilder();
        for (int i = 0; i < operation.examples().size(); i++) {
            lines.append("{\"line\":").append(i + 1).append(",\"status\":200,\"answer\":")
                    .append(read(operation, operation.examples().get(i), "response").getValue()).append("}\n");
        }
        return invented("their answers").value(lines.toString());
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
