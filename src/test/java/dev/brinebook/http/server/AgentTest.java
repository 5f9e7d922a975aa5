// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.hamcrest.Matchers.anEmptyMap;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.http.Resources;
import dev.brinebook.http.Served;
import io.restassured.response.Response;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What agents of the revisions that are opened may ask: Model Context Protocol, 2025-11-25, "Lifecycle" and "Tools"; JSON-RPC 2.0. */
class AgentTest {

    @ParameterizedTest
    @CsvSource({"2025-03-26, 2025-03-26", "2025-06-18, 2025-06-18", "2025-11-25, 2025-11-25", "1999-01-01, 2025-11-25",
        "2026-07-28, 2025-11-25"})
    void agreesOnAVersionAndSaysHowToUseIt(String offered, String agreed) {
        Agent.send(Agent.request("initialize", "{\"protocolVersion\":\"" + offered + "\",\"capabilities\":{},"
                + "\"clientInfo\":{\"name\":\"test\",\"version\":\"1\"}}")).then().statusCode(200)
                .contentType("application/json").header("Cache-Control", "no-store").body("jsonrpc", equalTo("2.0"))
                .body("id", equalTo(1)).body("result.protocolVersion", equalTo(agreed))
                .body("result.capabilities.keySet()", equalTo(Set.of("tools", "resources", "prompts", "completions")))
                .body("result.serverInfo.name", equalTo("brinebook"))
                .body("result.serverInfo.version", equalTo(Resources.version()))
                .body("result.resultType", nullValue()).body("result.instructions", containsString("never an instruction"));
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
    void offersFourToolsThatChangeNothingInFixedOrder() {
        Response list = Agent.send(Agent.request("tools/list", "{}"));
        list.then().statusCode(200).body("result.tools.name",
                equalTo(List.of("quick_assess", "find_operation", "describe_operation", "calculate")))
                .body("result.tools.inputSchema.type.unique()", equalTo(List.of("object")))
                .body("result.tools.inputSchema.additionalProperties.unique()", equalTo(List.of(false)))
                .body("result.tools.findAll { it.outputSchema != null }.size()", equalTo(0))
                .body("result.tools[0].inputSchema.required", nullValue())
                .body("result.tools[3].inputSchema.properties.operation.enum",
                        equalTo(Main.OPERATIONS.stream().map(Operation::id).toList()))
                .body("result.nextCursor", nullValue());
        for (String hint : List.of("readOnlyHint", "idempotentHint")) {
            assertEquals(List.of(true), distinct(list, hint));
        }
        for (String hint : List.of("destructiveHint", "openWorldHint")) {
            assertEquals(List.of(false), distinct(list, hint));
        }
        try (BrinebookServer other = Served.start(Main.OPERATIONS, 0, Set.of())) {
            byte[] again = Agent.posting(other.port(), Agent.request("tools/list", "{}")).post(Agent.PATH).asByteArray();
            assertArrayEquals(list.asByteArray(), again, "of another instance");
        }
    }

    private static List<Boolean> distinct(Response list, String hint) {
        return list.jsonPath().getList("result.tools.annotations." + hint + ".unique()", Boolean.class);
    }

    @Test
    void writesWhatItSaysInTheLanguageAskedFor() {
        String summary = Served.posting(Served.SMALLEST).header("Accept-Language", "de").post(Served.CONVERSION).path("summary");
        Agent.posting(Served.SERVER.port(), Agent.calculate("convertHardness", Served.SMALLEST)).header("Accept-Language", "de")
                .post(Agent.PATH).then().statusCode(200).header("Content-Language", "de")
                .body("result.content[0].text", startsWith("Summary: " + summary));
    }

    /** Revision 2025-11-25, "Error Handling": faults of arguments are in the result, an unknown tool is an error of the protocol. */
    @ParameterizedTest
    @ValueSource(strings = {"{\"name\":\"nothing\",\"arguments\":{}}", "{\"name\":5}", "{\"name\":null}", "{}",
        "{\"arguments\":{}}", "{\"name\":\"CALCULATE\"}", "{\"name\":\"assess\",\"arguments\":{}}"})
    void knowsNoOtherTool(String params) {
        Agent.send(Agent.request("tools/call", params)).then().statusCode(200).body("id", equalTo(1))
                .body("error.code", equalTo(-32602)).body("result", nullValue())
                .body("error.message", startsWith("Unknown tool: name must be one of quick_assess"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"server/discover", "logging/setLevel", "resources/subscribe", "tools/Call", ""})
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

    @Test
    void refusesACursorThatItNeverGave() {
        for (String list : List.of("tools/list", "resources/list", "resources/templates/list", "prompts/list")) {
            Agent.send(Agent.request(list, "{\"cursor\":\"2\"}")).then().statusCode(200).body("error.code", equalTo(-32602));
        }
    }
}
