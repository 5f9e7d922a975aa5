// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.PrettyPrinter;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter.NopIndenter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.core.util.Separators.Spacing;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/** JSON made shorter for a page that only introduces it. */
final class Excerpt {

    private static final ObjectMapper JSON = JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN).disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();
    private static final DefaultPrettyPrinter ONE_LINE = new DefaultPrettyPrinter(Separators.createDefaultInstance()
            .withObjectFieldValueSpacing(Spacing.AFTER).withObjectEntrySpacing(Spacing.AFTER)
            .withArrayValueSpacing(Spacing.AFTER)).withObjectIndenter(new NopIndenter()).withArrayIndenter(new NopIndenter());
    private static final DefaultPrettyPrinter LINES = new DefaultPrettyPrinter(Separators.createDefaultInstance()
            .withObjectFieldValueSpacing(Spacing.AFTER)).withObjectIndenter(new DefaultIndenter("  ", "\n"))
            .withArrayIndenter(new DefaultIndenter("  ", "\n"));

    private Excerpt() {
    }

    /** Only these properties of an object. */
    static String of(String json, String... names) {
        return write(read(json).retain(List.of(names)), LINES);
    }

    /** A line for each property of an object. */
    static String lines(String json) {
        ObjectNode object = read(json);
        return StreamSupport.stream(object.properties().spliterator(), false)
                .map(entry -> "  \"" + entry.getKey() + "\": " + write(entry.getValue(), ONE_LINE))
                .collect(Collectors.joining(",\n", "{\n", "\n}"));
    }

    private static ObjectNode read(String json) {
        try {
            return (ObjectNode) JSON.readTree(json);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("no JSON object", e);
        }
    }

    private static String write(JsonNode value, PrettyPrinter printer) {
        try {
            return JSON.writer(printer).writeValueAsString(value);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the JSON that was read cannot be written", e);
        }
    }
}
