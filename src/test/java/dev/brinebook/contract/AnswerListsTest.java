// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.Main;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.ListLength;
import dev.brinebook.api.Operation;
import dev.brinebook.http.RandomRequests;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.json.JsonWriter;
import dev.brinebook.operation.softener.SizeSoftener;
import dev.brinebook.resin.EfficiencyLine;
import dev.brinebook.text.Language;
import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No list of an answer is longer than the contract says of it, whatever was asked. */
class AnswerListsTest {

    private static final int REQUESTS = Integer.getInteger("requests", 30);
    private static final int REPAIRS = 12;
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Map<String, Integer> LONGEST = new TreeMap<>();

    private final JsonReader reader = new JsonReader();
    private final JsonWriter writer = new JsonWriter();

    static Stream<Operation<?, ?>> operations() {
        return Main.OPERATIONS.stream();
    }

    @ParameterizedTest
    @MethodSource("operations")
    <Q extends Record, A extends Record> void keepToTheirBounds(Operation<Q, A> operation) throws IOException {
        int answers = 0;
        try (Stream<Path> files = Files.list(Path.of("openapi/examples"))) {
            for (Path file : files
                    .filter(one -> one.getFileName().toString().matches(operation.id() + "\\..*\\.request\\.json")).toList()) {
                answers += answer(operation, (ObjectNode) JSON.readTree(file.toFile()), new RandomRequests(0));
            }
        }
        assertTrue(answers >= 2, "examples");
        for (long seed = 1; seed <= REQUESTS; seed++) {
            RandomRequests drawn = new RandomRequests(seed);
            answers += answer(operation, drawn.request(operation.requestType()), drawn);
        }
        assertTrue(answers > 2, "random requests");
    }

    /** Every list of a request as long as it may be, where elements have assumptions of their own. */
    @Test
    void keepToTheirBoundsInTheLongestRequests() throws IOException {
        ObjectNode sizing = (ObjectNode) JSON.readTree(Path.of("openapi/examples/sizeSoftener.well-family.request.json").toFile());
        ArrayNode candidates = sizing.putArray("candidates");
        for (int i = 1; i <= 250; i++) {
            candidates.add(JSON.readTree("{\"sku\": \"bed " + i + "\", \"resinVolume\": {\"value\": " + (1 + i / 100.0)
                    + ", \"unit\": \"ft3\"}}"));
        }
        assertEquals(1, answer(SizeSoftener.OPERATION, sizing, new RandomRequests(0)));
        assertEquals(250, LONGEST.get("SizingAnswer.candidates"));
    }

    /** A bound as high as this has a reason, which stands beside it. */
    @Test
    void areSeldomLong() throws IOException {
        JsonNode schemas = JSON.readTree(Path.of("openapi/openapi.json").toFile()).at("/components/schemas");
        Set<String> longest = new TreeSet<>();
        schemas.properties().forEach(schema -> schema.getValue().path("properties").properties().forEach(property -> {
            if (!schema.getKey().endsWith("Request") && property.getValue().path("maxItems").asInt() > 2_000) {
                longest.add(schema.getKey() + "." + property.getKey());
            }
        }));
        assertEquals(Set.of("ComparisonAnswer.differences", "MeterCoverage.gaps"), longest);
    }

    @Test
    void countTheEfficiencyLines() {
        assertEquals(EfficiencyLine.COUNT, EfficiencyLine.all().size());
    }

    private <Q extends Record, A extends Record> int answer(Operation<Q, A> operation, ObjectNode request, RandomRequests drawn)
            throws IOException {
        for (int i = 0; i < REPAIRS; i++) {
            try {
                A answer = operation.answer(reader.read(request.toString().getBytes(StandardCharsets.UTF_8), operation.requestType()));
                check(JSON.readTree(writer.write(answer, Language.ENGLISH)), operation.answerType(), request);
                return 1;
            } catch (InvalidRequest invalid) {
                drawn.repair(request, operation.requestType(), invalid.violations());
            }
        }
        return 0;
    }

    /** Every list of an answer, by the component that it is. */
    static void check(JsonNode answer, Class<?> type, Object request) {
        for (RecordComponent component : type.getRecordComponents()) {
            JsonNode value = answer.path(component.getName());
            boolean list = List.class.isAssignableFrom(component.getType());
            Class<?> each = list && component.getGenericType() instanceof ParameterizedType of
                    && of.getActualTypeArguments()[0] instanceof Class<?> element ? element : component.getType();
            if (list && value.isArray()) {
                String name = type.getSimpleName() + "." + component.getName();
                LONGEST.merge(name, value.size(), Math::max);
                int most = ListLength.most(component);
                assertTrue(value.size() <= most, () -> name + " has " + value.size() + " of " + most + ", of " + request);
            }
            if (each.isRecord()) {
                (list ? value : List.of(value)).forEach(one -> check(one, each, request));
            }
        }
    }
}
