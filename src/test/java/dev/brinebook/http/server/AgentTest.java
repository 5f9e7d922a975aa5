// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.hamcrest.Matchers.anEmptyMap;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.http.Resources;
import dev.brinebook.http.Served;
import dev.brinebook.http.TestServer;
import dev.brinebook.http.json.JsonReader;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What agents may ask: Model Context Protocol, revision 2025-11-25, "Lifecycle" and "Tools"; JSON-RPC 2.0. */
class AgentTest {

    static List<Operation<?, ?>> operations() {
        return Main.OPERATIONS;
    }

    @ParameterizedTest
    @CsvSource({"2025-03-26, 2025-03-26", "2025-06-18, 2025-06-18", "2025-11-25, 2025-11-25", "1999-01-01, 2025-11-25"})
    void agreesOnAVersionAndSaysHowToUseIt(String offered, String agreed) {
        Agent.send(Agent.request("initialize", "{\"protocolVersion\":\"" + offered + "\",\"capabilities\":{},"
                + "\"clientInfo\":{\"name\":\"test\",\"version\":\"1\"}}")).then().statusCode(200)
                .contentType("application/json").header("Cache-Control", "no-store").body("jsonrpc", equalTo("2.0"))
                .body("id", equalTo(1)).body("result.protocolVersion", equalTo(agreed))
                .body("result.capabilities.keySet()", equalTo(java.util.Set.of("tools")))
                .body("result.serverInfo.name", equalTo("brinebook"))
                .body("result.serverInfo.version", equalTo(Resources.version()))
                .body("result.instructions", containsString("invented"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"notifications/initialized", "notifications/cancelled", "notifications/unheard-of"})
    void takesNoteOfNotifications(String method) {
        Response response = Agent.send("{\"jsonrpc\":\"2.0\",\"method\":\"" + method + "\",\"params\":{\"requestId\":\"x\"}}");
        response.then().statusCode(202).header("Content-Type", nullValue());
        assertEquals(0, response.asByteArray().length);
    }

    @Test
    void answersAPingByTheIdOfTheAsker() {
        for (String id : List.of("0", "\"a-1\"", "9007199254740993")) {
            Response response = Agent.send("{\"jsonrpc\":\"2.0\",\"id\":" + id + ",\"method\":\"ping\"}");
            response.then().statusCode(200).body("result", anEmptyMap());
            assertTrue(response.asString().contains("\"id\":" + id), response.asString());
        }
    }

    @Test
    void offersEachOperationAsAToolThatChangesNothing() {
        Response list = Agent.send(Agent.request("tools/list", "{}"));
        list.then().statusCode(200).body("result.tools.name", equalTo(Main.OPERATIONS.stream().map(Operation::id).toList()))
                .body("result.tools.title", equalTo(Main.OPERATIONS.stream().map(Operation::summary).toList()))
                .body("result.tools.description", equalTo(Main.OPERATIONS.stream().map(Operation::description).toList()))
                .body("result.nextCursor", nullValue());
        for (String hint : List.of("readOnlyHint", "idempotentHint")) {
            assertEquals(List.of(true), distinct(list, hint));
        }
        for (String hint : List.of("destructiveHint", "openWorldHint")) {
            assertEquals(List.of(false), distinct(list, hint));
        }
        for (String schema : List.of("inputSchema", "outputSchema")) {
            list.then().body("result.tools." + schema + ".type.unique()", equalTo(List.of("object")));
        }
    }

    private static List<Boolean> distinct(Response list, String hint) {
        return list.jsonPath().getList("result.tools.annotations." + hint + ".unique()", Boolean.class);
    }

    @ParameterizedTest
    @MethodSource("operations")
    void answersACallByTheVeryBytesOfTheOperation(Operation<?, ?> operation) {
        String arguments = TestServer.example(operation.id() + "." + operation.examples().get(0));
        Response direct = Served.posting(arguments).post(operation.path());
        Response called = Agent.send(Agent.call(operation.id(), arguments));
        called.then().statusCode(200).body("result.isError", equalTo(false))
                .body("result.content.type", equalTo(List.of("text", "text")))
                .body("result.content[0].text", equalTo(direct.path("summary")))
                .body("result.content[1].text", equalTo(direct.asString()));
        assertTrue(called.asString().contains("\"structuredContent\":" + direct.asString() + "}"), operation.id());
    }

    @Test
    void writesWhatItSaysInTheLanguageAskedFor() {
        Agent.posting(Served.SERVER.port(), Agent.call("convertHardness", Served.SMALLEST)).header("Accept-Language", "de")
                .post(Agent.PATH).then().statusCode(200).header("Content-Language", "de")
                .body("result.content[0].text", equalTo(Served.posting(Served.SMALLEST).header("Accept-Language", "de")
                        .post(Served.CONVERSION).path("summary")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"{}", "null", "[]", "5", "\"text\"",
        "{\"hardness\": {\"value\": -4.50, \"unit\": \"gpg\"}, \"hardnes\": 1}",
        "{\"hardness\": {\"value\": 1e-3, \"unit\": \"dH\"}, \"magnesium\": {\"value\": -1e3, \"unit\": \"mg/L\"}}",
        "{\"hardness\": {\"value\": \"NaN\", \"unit\": null}}"})
    void reportsFaultsOfArgumentsAsTheOperationDoes(String arguments) {
        Response direct = Served.posting(arguments).post(Served.CONVERSION);
        direct.then().statusCode(422);
        Response called = Agent.send(Agent.call("convertHardness", arguments));
        called.then().statusCode(200).body("result.isError", equalTo(true)).body("result.structuredContent", nullValue())
                .body("result.content.size()", equalTo(1));
        String problem = called.path("result.content[0].text");
        String errors = direct.asString().substring(direct.asString().indexOf("\"errors\":"));
        assertTrue(problem.endsWith(errors), problem);
        assertTrue(problem.contains("\"type\":\"/problems/invalid-request\""), problem);
        assertTrue(problem.contains("\"instance\":\"/mcp\""), problem);
        assertTrue(problem.contains("\"requestId\":\"" + called.header("X-Request-Id") + "\""), problem);
    }

    @Test
    void takesACallWithoutArgumentsAsOneWithNone() {
        String problem = Agent.send(Agent.request("tools/call", "{\"name\":\"assess\"}")).then().statusCode(200)
                .body("result.isError", equalTo(true)).extract().path("result.content[0].text");
        assertTrue(problem.contains("\"pointer\":\"/water\"") || problem.contains("\"/softener\""), problem);
    }

    @Test
    void reportsArgumentsBeyondTheLimitsOfJson() {
        for (String value : List.of("1" + "0".repeat(JsonReader.MAX_NUMBER_LENGTH), "[".repeat(40) + "]".repeat(40))) {
            String problem = Agent.send(Agent.call("convertHardness", "{\"hardness\":{\"value\":" + value + "}}")).then()
                    .statusCode(200).body("result.isError", equalTo(true)).extract().path("result.content[0].text");
            assertTrue(problem.startsWith("{\"type\":\"/problems/malformed-body\""), problem);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"{\"name\":\"nothing\",\"arguments\":{}}", "{\"name\":5}", "{\"name\":null}", "{}",
        "{\"arguments\":{}}", "{\"name\":\"CONVERTHARDNESS\"}"})
    void knowsNoOtherTool(String params) {
        Agent.send(Agent.request("tools/call", params)).then().statusCode(200).body("id", equalTo(1))
                .body("error.code", equalTo(-32602)).body("result", nullValue())
                .body("error.message", startsWith("Unknown tool: name must be one of convert"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"resources/list", "prompts/list", "completion/complete", "logging/setLevel", "tools/Call", ""})
    void knowsNoOtherMethod(String method) {
        Agent.send(Agent.request(method, "{}")).then().statusCode(200).body("id", equalTo(1))
                .body("error.code", equalTo(-32601));
    }

    @ParameterizedTest
    @ValueSource(strings = {"{\"protocolVersion\":5,\"capabilities\":7}", "{\"capabilities\":[[]]}", "{\"clientInfo\":\"x\"}"})
    void refusesParametersOfTheWrongShape(String params) {
        Response response = Agent.send(Agent.request("initialize", params));
        response.then().statusCode(200).body("error.code", equalTo(-32602))
                .body("error.message", equalTo("The params do not match initialize."));
        assertFalse(response.asString().contains("jackson") || response.asString().contains("Exception"));
    }
}
