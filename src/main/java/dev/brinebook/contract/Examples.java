package dev.brinebook.contract;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.api.Operation;
import io.swagger.v3.oas.models.examples.Example;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Reads the committed examples, which the tests send and get back exactly. */
final class Examples {

    private final ObjectMapper json = new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

    Example read(Operation<?, ?> operation, String name, String part) {
        String file = "/openapi/examples/" + operation.exampleFile(name, part);
        try (InputStream stream = Examples.class.getResourceAsStream(file)) {
            if (stream == null) {
                throw new IllegalStateException("no example " + file);
            }
            return new Example().summary("Invented: " + name.replace('-', ' '))
                    .value(json.readTree(stream));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
