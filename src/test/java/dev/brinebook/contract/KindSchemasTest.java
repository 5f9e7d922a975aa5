// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.http.server.BrinebookServer;
import io.restassured.RestAssured;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which properties go with which kind: the contract, read by another's validator, and the service say the same. */
class KindSchemasTest {

    private static final int TRIALS = 150;

    private static BrinebookServer server;
    private static JsonNode document;
    private static ContractSchemas schemas;

    @BeforeAll
    static void start() {
        server = Committed.server();
        byte[] contract = Committed.get(server, "/openapi.json");
        document = Committed.tree(contract);
        schemas = new ContractSchemas(contract);
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    @Test
    void everyChoiceNamesSchemasOfOneKindAndTheirDiscriminator() {
        Set<String> choices = new TreeSet<>();
        document.at("/components/schemas").properties().forEach(schema -> {
            JsonNode choice = schema.getValue();
            if (choice.has("oneOf")) {
                choices.add(schema.getKey());
                List<String> references = choice.path("oneOf").findValuesAsText("$ref");
                assertEquals(Set.copyOf(references).size(), references.size());
                Map<String, String> mapping = new LinkedHashMap<>();
                references.forEach(reference -> schema(reference).at("/properties/" + kind(choice) + "/enum")
                        .forEach(name -> assertEquals(null, mapping.put(name.asText(), reference), "stated once")));
                Map<String, String> told = new LinkedHashMap<>();
                choice.at("/discriminator/mapping").properties().forEach(
                        entry -> told.put(entry.getKey(), entry.getValue().asText()));
                assertEquals(mapping, told);
            }
        });
        assertEquals(Set.of("AlternativeAnswer", "AlternativeRequest", "CompensationRequest", "ControlRequest", "CycleStepLine",
                "FixtureRequest", "OccupancyRequest", "ReserveRequest", "ReserveResult", "UncertainInputRequest"), choices);
    }

    /**
     * Sends the part with some of the properties that any kind has, most of which contradict each other, and asks both whether
     * they take it. The values fit, each by itself, so that nothing but their belonging decides.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ControlRequest        | reviewSettings     | /softener/control        | {"kind": "clock", "everyDays": 4, \
            "hardnessSetting": {"value": 20, "unit": "gpg"}, "capacitySetting": {"value": 20000, "unit": "gr"}, \
            "reserve": {"rule": "meanDay"}, "dayOverride": 14}
            ReserveRequest        | reviewSettings     | /softener/control/reserve | {"rule": "volume", "share": 0.2, \
            "volume": {"value": 200, "unit": "L"}, "probability": 0.9}
            CompensationRequest   | compensateHardness | /water/compensation      | {"set": "own", "ironFactor": 4, \
            "manganeseFactor": 2}
            OccupancyRequest      | reviewSettings     | /household/occupancy     | {"pattern": "chain", "leavePerDay": 0.02, \
            "returnPerDay": 0.3, "spells": [{"from": "2026-07-01", "to": "2026-07-14"}]}
            FixtureRequest        | estimatePeakFlow   | /fixtures/0              | {"kind": "shower", "count": 2, \
            "flow": {"value": 2, "unit": "gpm"}, "busyProbability": 0.05, "fixtureUnits": 1.4}
            AlternativeRequest    | compareAlternatives | /alternatives/1         | {"kind": "metered", "name": "other", \
            "softener": {"sku": "a", "resinVolume": {"value": 42, "unit": "L"}}, "lifeYears": 10}
            UncertainInputRequest | compareAlternatives | /uncertainty            | {"input": "saltPrice", \
            "shape": "triangular", "least": 0.8, "likeliest": 1, "most": 1.2, "variation": 0.1}
            """)
    void takesTheSamePropertiesAsTheService(String schema, String operationId, String pointer, String values)
            throws IOException {
        Operation<?, ?> operation = Main.OPERATIONS.stream().filter(one -> one.id().equals(operationId)).findFirst()
                .orElseThrow();
        ObjectNode all = (ObjectNode) Committed.tree(values.getBytes(StandardCharsets.UTF_8));
        JsonNode choice = document.at("/components/schemas/" + schema);
        List<String> kinds = kinds(choice);
        Random random = new Random(1);
        int taken = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            ObjectNode part = JsonNodeFactory.instance.objectNode();
            all.properties().forEach(property -> {
                if (random.nextInt(3) > 0) {
                    part.set(property.getKey(), property.getValue());
                }
            });
            if (random.nextInt(10) > 0) {
                part.put(kind(choice), kinds.get(random.nextInt(kinds.size())));
            }
            boolean valid = schemas.faults(schema, part).isEmpty();
            boolean answered = post(operation, pointer, part);
            assertTrue(valid == answered || isSaidOtherwise(schema, part), operationId + " with " + part);
            taken += answered ? 1 : 0;
        }
        assertTrue(taken > TRIALS / 50 && taken < TRIALS, taken + " taken");
    }

    /**
     * What the contract says in words only: a clock needs its days or its weekdays; and what it does not say: without a factor
     * set, which it asks for, the service takes the standard one, as it always did.
     */
    private static boolean isSaidOtherwise(String schema, ObjectNode part) {
        return part.path("kind").asText().equals("clock") && !part.has("everyDays")
                || schema.equals("CompensationRequest") && part.isEmpty();
    }

    /** Whether the service answers the example with the part put in. */
    private static boolean post(Operation<?, ?> operation, String pointer, ObjectNode part) throws IOException {
        byte[] example = Files.readAllBytes(Committed.EXAMPLES.resolve(operation.exampleFile("well-family", "request")));
        ObjectNode request = (ObjectNode) Committed.tree(example);
        request.remove("uncertainty");
        while (request.path("alternatives").size() > 2) {
            request.withArray("alternatives").remove(2);
        }
        put(request, pointer, part);
        int status = RestAssured.given().baseUri("http://127.0.0.1").port(server.port()).contentType("application/json")
                .body(request.toString()).post(operation.path()).statusCode();
        assertTrue(status == 200 || status == 422, status + " of " + part);
        return status == 200;
    }

    private static void put(ObjectNode request, String pointer, ObjectNode part) {
        int last = pointer.lastIndexOf('/');
        String name = pointer.substring(last + 1);
        JsonNode owner = request.at(pointer.substring(0, last));
        if (pointer.equals("/uncertainty")) {
            request.putObject(name).put("draws", 1000).putArray("inputs").add(part);
        } else if (pointer.endsWith("/control/reserve")) {
            request.withObject("/softener/control").removeAll().put("kind", "meteredDelayed").set(name, part);
        } else if (owner.isArray()) {
            ((ArrayNode) owner).set(Integer.parseInt(name), part);
        } else {
            ((ObjectNode) owner).set(name, part);
        }
    }

    private static List<String> kinds(JsonNode choice) {
        List<String> kinds = new ArrayList<>();
        choice.path("oneOf").findValuesAsText("$ref").forEach(reference ->
                schema(reference).at("/properties/" + kind(choice) + "/enum").forEach(name -> kinds.add(name.asText())));
        return kinds;
    }

    private static String kind(JsonNode choice) {
        return choice.at("/discriminator/propertyName").asText();
    }

    private static JsonNode schema(String reference) {
        return document.at(reference.substring(1));
    }
}
