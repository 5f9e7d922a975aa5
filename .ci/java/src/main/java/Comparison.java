// SPDX-License-Identifier: Apache-2.0
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.yaml.snakeyaml.LoaderOptions;

/** Holds what the generated classes write to what was read, each number by its value. */
final class Comparison {

    private static final ObjectMapper EXACT =
            new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

    private static final ObjectMapper YAML = YAMLMapper.builder(YAMLFactory.builder().loaderOptions(longDocuments()).build())
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS).build();

    private final ObjectMapper generated;
    private int count;

    Comparison(ObjectMapper generated) {
        this.generated = generated;
    }

    private static LoaderOptions longDocuments() {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(1 << 25);
        return options;
    }

    int count() {
        return count;
    }

    JsonNode read(Path file) throws IOException {
        return (file.toString().endsWith(".yaml") ? YAML : EXACT).readTree(file.toFile());
    }

    JsonNode read(String json) throws IOException {
        return EXACT.readTree(json);
    }

    JsonNode tree(Object value) throws IOException {
        return EXACT.readTree(generated.writeValueAsString(value));
    }

    void assertSame(String what, JsonNode expected, Object value) throws IOException {
        assertSame(what + " at ", expected, tree(value));
        count++;
    }

    void assertTrue(boolean condition, String what) {
        if (!condition) {
            throw new AssertionError(what);
        }
    }

    private void assertSame(String at, JsonNode expected, JsonNode actual) {
        if (expected.isNumber() && actual.isNumber()) {
            assertTrue(expected.decimalValue().compareTo(actual.decimalValue()) == 0, at + ": " + expected + ", " + actual);
        } else if (expected.isObject() && actual.isObject()) {
            assertTrue(names(expected).equals(names(actual)), at + ": " + names(expected) + ", " + names(actual));
            names(expected).forEach(name -> assertSame(at + "/" + name, expected.get(name), actual.get(name)));
        } else if (expected.isArray() && actual.isArray()) {
            assertTrue(expected.size() == actual.size(), at + ": " + expected.size() + ", " + actual.size());
            for (int i = 0; i < expected.size(); i++) {
                assertSame(at + "/" + i, expected.get(i), actual.get(i));
            }
        } else {
            assertTrue(expected.equals(actual), at + ": " + expected + ", " + actual);
        }
    }

    private static Set<String> names(JsonNode object) {
        Set<String> names = new TreeSet<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }
}
