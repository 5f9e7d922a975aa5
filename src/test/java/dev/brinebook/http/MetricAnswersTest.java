// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.Main;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.json.JsonWriter;
import dev.brinebook.quantity.Unit;
import dev.brinebook.text.Language;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Metric answers name no unit of the United States, but where the caller did. */
class MetricAnswersTest {

    private static final Pattern US_UNIT = Pattern.compile(
            "\\b(gpg|gr|kgr|gal|lb|ft|ft2|ft3|gpm|psi(?!\\()|gallons?|pounds?|grains?|inch(es)?)\\b");
    private static final int REQUESTS = 40;
    private static final int REPAIRS = 12;
    /** It answers in every unit there is, whatever is asked for. */
    private static final String CONVERTER = "convertHardness";
    private static final ObjectMapper JSON = new ObjectMapper();

    private final JsonReader reader = new JsonReader();
    private final JsonWriter writer = new JsonWriter();

    static Stream<Operation<?, ?>> operations() {
        return Main.OPERATIONS.stream().filter(operation -> Stream.of(operation.requestType().getRecordComponents())
                .anyMatch(component -> component.getName().equals("units"))).filter(operation -> !operation.id().equals(CONVERTER));
    }

    static List<Path> metricExamples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("openapi", "examples"))) {
            List<Path> metric = files.filter(file -> file.toString().endsWith(".request.json"))
                    .filter(file -> read(file).path("units").asText().equals("metric")).sorted().toList();
            assertTrue(metric.size() > 10, "only " + metric);
            return metric;
        }
    }

    @ParameterizedTest
    @MethodSource("metricExamples")
    void examplesNameNoUnitOfTheUnitedStates(Path request) {
        JsonNode answer = read(Path.of(request.toString().replace(".request.", ".response.")));
        assertEquals(List.of(), usUnits(answer), request.toString());
    }

    @Execution(ExecutionMode.CONCURRENT)
    @ParameterizedTest
    @MethodSource("operations")
    <Q extends Record, A extends Record> void noneDoes(Operation<Q, A> operation) throws IOException {
        int answered = 0;
        for (long seed = 1; seed <= REQUESTS; seed++) {
            RandomRequests drawn = new RandomRequests(new Random(seed), MetricAnswersTest::isMetric);
            ObjectNode request = drawn.request(operation.requestType());
            for (int i = 0; i < REPAIRS; i++) {
                request.put("units", "metric");
                try {
                    Q read = reader.read(request.toString().getBytes(StandardCharsets.UTF_8), operation.requestType());
                    if (US_UNIT.matcher(request.toString()).find()) {
                        break;
                    }
                    JsonNode answer = JSON.readTree(writer.write(operation.answer(read), Language.ENGLISH));
                    assertEquals(List.of(), usUnits(answer), () -> operation.id() + " " + request);
                    answered++;
                    break;
                } catch (InvalidRequest invalid) {
                    if (invalid.violations().stream().allMatch(violation -> violation.code() == Code.IMPOSSIBLE)) {
                        break;
                    }
                    drawn.repair(request, operation.requestType(), invalid.violations());
                }
            }
        }
        assertTrue(answered > 0, operation.id() + ": none answered");
    }

    private static boolean isMetric(Unit unit) {
        return !US_UNIT.matcher(unit.symbol()).find();
    }

    /** Units and texts of settings, findings, assumptions and all else that name one; citations are left out. */
    private static List<String> usUnits(JsonNode answer) {
        TreeSet<String> found = new TreeSet<>();
        gather(answer, "", found);
        return List.copyOf(found);
    }

    private static void gather(JsonNode node, String pointer, TreeSet<String> found) {
        if (node.isTextual() && US_UNIT.matcher(node.textValue()).find()) {
            found.add(pointer + ": " + node.textValue());
        }
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            gather(node.get(i), pointer + "/*", found);
        }
        for (Map.Entry<String, JsonNode> entry : node.isObject() ? node.properties() : List.<Map.Entry<String, JsonNode>>of()) {
            if (!pointer.startsWith("/basis") || !entry.getKey().equals("source")) {
                gather(entry.getValue(), pointer + "/" + entry.getKey(), found);
            }
        }
    }

    private static JsonNode read(Path file) {
        try {
            return JSON.readTree(Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
