// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.brinebook.api.Operation;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;

/** JSON of messages, read strictly, and the committed files of this package. */
final class Json {

    /** Deep enough that the reader of a request reports slightly too deep nesting, and yet bounded. */
    private static final int MAX_DEPTH = 4 * Operation.MAX_DEPTH;

    /** Numbers keep their digits; one of a caller is written with its exponent, as written out it could be endless. */
    static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
            .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(MAX_DEPTH).build()).build())
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES).build();

    private Json() {
    }

    /** Bytes of our own answers, whose numbers are short, written out. */
    static byte[] bytes(Object value) {
        try {
            return MAPPER.writer().with(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN).writeValueAsBytes(value);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the message cannot be written", e);
        }
    }

    static String text(Object value) {
        return new String(bytes(value), StandardCharsets.UTF_8);
    }

    /** What we wrote ourselves, as a tree. */
    static JsonNode tree(byte[] json) {
        try {
            return MAPPER.readTree(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** An object with its members in their order, so that it is always written as the same bytes. */
    static Map<String, Object> object(Object... namesAndValues) {
        Map<String, Object> object = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            object.put((String) namesAndValues[i], namesAndValues[i + 1]);
        }
        return object;
    }

    /** The elements of a list of texts; none of null. */
    static List<String> texts(JsonNode list) {
        return list == null ? List.of() : StreamSupport.stream(list.spliterator(), false).map(JsonNode::textValue).toList();
    }

    /** The text of a committed file of this package. */
    static String file(String name) {
        try (InputStream file = Json.class.getResourceAsStream("/dev/brinebook/agent/" + name)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The lines of a committed file that hold something. */
    static List<String> lines(String name) {
        return file(name).lines().filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
    }

    /** A committed file that is JSON. */
    static JsonNode fileTree(String name) {
        return tree(file(name).getBytes(StandardCharsets.UTF_8));
    }
}
