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
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Reads the committed examples, which the tests send and get back exactly. */
public final class Examples {

    /** Where they are, beside the contract. */
    public static final String FOLDER = "examples";
    static final String BY_REFERENCE = "externalValue";

    private final ObjectMapper json = JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES).build();

    /** By reference to its file. */
    static Example of(String file) {
        return new Example().externalValue(FOLDER + "/" + file);
    }

    /** Names of all files of examples, with their media types. */
    public static Map<String, String> files(List<Operation<?, ?>> operations) {
        Map<String, String> files = new TreeMap<>();
        for (Operation<?, ?> operation : operations) {
            for (String name : operation.examples()) {
                List.of("request", "response").forEach(part -> files.put(operation.exampleFile(name, part), Operation.JSON));
            }
            operation.forms().stream().filter(AnswerForm::isText)
                    .forEach(form -> files.put(operation.exampleFile(form), form.mediaType()));
        }
        files.put(ExplanationPath.EXAMPLE_FILE, Operation.JSON);
        files.putAll(BulkPaths.exampleFiles());
        return files;
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
        return new String(ContractFiles.example(file), StandardCharsets.UTF_8);
    }

    private JsonNode tree(String text) {
        try {
            return json.readTree(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
