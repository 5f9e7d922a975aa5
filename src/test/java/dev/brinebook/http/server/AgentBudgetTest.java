// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.http.Served;
import dev.brinebook.http.TestServer;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a model has to read, counted in tokens of the public encoding o200k_base. Other encodings differ by some percent: the limits
 * are for a context of 32,000 tokens of which less than 8,000 are spent before the first call.
 */
class AgentBudgetTest {

    private static final int DEFINITIONS = 2_500;
    private static final int INSTRUCTIONS = 250;
    private static final int OPERATION = 1_000;
    private static final int PART = 1_000;
    private static final int SMALLEST = 100;
    private static final int ANSWER = 800;
    private static final int FOUND = 450;
    private static final int FAULTS = 350;
    private static final int FULL = 6_500;

    static Stream<Operation<?, ?>> operations() {
        return Main.OPERATIONS.stream();
    }

    static Stream<String> parts() throws JsonProcessingException {
        return StreamSupport.stream(tools().get(2).at("/inputSchema/properties/part/enum").spliterator(), false).map(JsonNode::asText);
    }

    private static JsonNode tools() throws JsonProcessingException {
        return Agent.JSON.readTree(Agent.send(Agent.request("tools/list", "{}")).asString()).at("/result/tools");
    }

    private static void assertWithin(int most, String text) {
        int tokens = Agent.tokens(text);
        assertTrue(tokens <= most, tokens + " tokens of " + most + ": " + text);
    }

    /** The counter counts as others do: the words of a well-known pangram, counted by gpt-tokenizer 4.0.0 (npm). */
    @Test
    void countsAsOthersDo() {
        assertEquals(10, Agent.tokens("The quick brown fox jumps over the lazy dog."));
    }

    @Test
    void startsWithFewTokens() throws JsonProcessingException {
        String instructions = Agent.send(Agent.request("initialize", "{\"protocolVersion\":\"2025-11-25\"}")).path("result.instructions");
        assertWithin(DEFINITIONS, tools().toString());
        assertWithin(INSTRUCTIONS, instructions);
    }

    @ParameterizedTest
    @MethodSource("operations")
    void describesAnOperationWithAnExampleThatWorks(Operation<?, ?> operation) {
        String text = Agent.text(Agent.call("describe_operation", "{\"operation\":\"" + operation.id() + "\"}"));
        assertWithin(OPERATION, text);
        String example = text.lines().filter(line -> line.startsWith("example ")).findFirst().orElseThrow().substring(8);
        assertWithin(SMALLEST, example);
        Served.posting(example).post(operation.path()).then().statusCode(200);
        assertWithin(ANSWER, Agent.text(Agent.calculate(operation.id(), example)));
    }

    @ParameterizedTest
    @MethodSource("parts")
    void describesAPart(String part) {
        String text = Agent.text(Agent.call("describe_operation", "{\"part\":\"" + part + "\"}"));
        assertWithin(PART, text);
        assertTrue(text.lines().count() > 1, text);
    }

    /** What the notation says is what the contract says: every property of every part of a request is in it, and no other. */
    @Test
    void describesWhatTheContractHas() throws JsonProcessingException {
        JsonNode contract = Agent.JSON.readTree(Served.given().get("/openapi.json").asString());
        for (Operation<?, ?> operation : Main.OPERATIONS) {
            String name = operation.requestType().getSimpleName();
            Set<String> properties = new TreeSet<>();
            contract.at("/components/schemas/" + name + "/properties").fieldNames().forEachRemaining(properties::add);
            assertFalse(properties.isEmpty(), name);
            Set<String> described = Agent.text(Agent.call("describe_operation", "{\"operation\":\"" + operation.id() + "\"}")).lines()
                    .skip(1).filter(line -> line.matches("\\w+[!?]: .*")).map(line -> line.replaceAll("[!?]:.*", ""))
                    .collect(Collectors.toCollection(TreeSet::new));
            assertEquals(properties, described, name);
        }
    }

    @ParameterizedTest
    @MethodSource("operations")
    void answersInFewTokensByDefault(Operation<?, ?> operation) {
        for (String example : operation.examples()) {
            String request = TestServer.example(operation.id() + "." + example);
            assertWithin(ANSWER, Agent.text(Agent.calculate(operation.id(), request)));
            assertWithin(ANSWER, Agent.text(Agent.calculate(operation.id(), request, ",\"detail\":\"numbers\"")));
            assertWithin(FULL, Agent.text(Agent.calculate(operation.id(), request, ",\"detail\":\"full\"")));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"is a new meter worth its price", "how hard is water of 12 gpg in German degrees",
        "when does it regenerate and how much salt do I have to buy", "nothing of this kind at all"})
    void findsInFewTokens(String question) {
        assertWithin(FOUND, Agent.text(Agent.call("find_operation", "{\"question\":\"" + question + "\"}")));
    }

    static List<String> faulty() {
        String many = IntStream.range(0, 60).mapToObj(i -> "\"unheardOf" + i + "\":1").collect(Collectors.joining(",", "{", "}"));
        String units = "{\"water\":{\"hardness\":{\"value\":18,\"unit\":\"grains\"},\"iron\":{\"value\":1,\"unit\":\"ppm\"},\"supply\":"
                + "\"well\"},\"household\":{\"people\":99},\"softener\":{\"control\":{\"kind\":\"meter\",\"hardness\":1}}}";
        return List.of("{}", many, units, "{\"water\":" + many + ",\"household\":" + many + ",\"softener\":{\"control\":" + many + "}}");
    }

    @ParameterizedTest
    @MethodSource("faulty")
    void listsFaultsInFewTokens(String request) {
        for (Operation<?, ?> operation : Main.OPERATIONS) {
            assertWithin(FAULTS, Agent.text(Agent.calculate(operation.id(), request)));
        }
        assertWithin(FAULTS, Agent.text(Agent.call("quick_assess", request)));
    }
}
