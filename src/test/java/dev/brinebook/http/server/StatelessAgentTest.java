// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;

import dev.brinebook.http.Served;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Requests that stand alone: Model Context Protocol, revision 2026-07-28, "Streamable HTTP", "Versioning", "Discovery", "Caching",
 * "Multi Round-Trip Requests" and "Elicitation".
 */
class StatelessAgentTest {

    private static final String META = "\"_meta\":{\"io.modelcontextprotocol/protocolVersion\":\"%s\","
            + "\"io.modelcontextprotocol/clientCapabilities\":{}}";
    private static final String FACTS = "{\"name\":\"quick_assess\",\"arguments\":{\"hardness\":18.5,\"hardnessUnit\":\"gpg\",\"people\":4,"
            + "\"size\":1.5,\"sizeUnit\":\"ft3\",\"control\":\"clock\"}";

    @TempDir
    Path directory;

    @Test
    void isDiscovered() {
        Agent.sendNewest("server/discover", "{}", "{}").then().statusCode(200).body("result.resultType", equalTo("complete"))
                .body("result.supportedVersions", equalTo(List.of("2026-07-28", "2025-11-25", "2025-06-18", "2025-03-26")))
                .body("result.capabilities.keySet()", hasItem("completions"))
                .body("result.instructions", startsWith("Brinebook calculates"))
                .body("result._meta.'io.modelcontextprotocol/serverInfo'.name", equalTo("brinebook"))
                .body("result.ttlMs", equalTo(300_000)).body("result.cacheScope", equalTo("public"));
    }

    @ParameterizedTest
    @CsvSource({"tools/list, 300000", "resources/list, 300000", "resources/templates/list, 300000", "prompts/list, 300000"})
    void saysHowLongAListLasts(String method, int milliseconds) {
        Agent.sendNewest(method, "{}", "{}").then().statusCode(200).body("result.ttlMs", equalTo(milliseconds))
                .body("result.cacheScope", equalTo("public")).body("result.resultType", equalTo("complete"));
    }

    @Test
    void letsNoCacheShareWhatNeedsAKey() throws IOException {
        // The SHA-256 of abc: FIPS 180-4, appendix example.
        Path keys = Files.writeString(directory.resolve("keys"),
                "shop:ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        try (BrinebookServer server = Served.guarded(0, keys.toString())) {
            Agent.posting(server.port(), Agent.request("server/discover", "{" + META.formatted(Agent.NEWEST) + "}"))
                    .header("MCP-Protocol-Version", Agent.NEWEST).header("Mcp-Method", "server/discover")
                    .header("Authorization", "Bearer abc").post(Agent.PATH).then().statusCode(200)
                    .body("result.cacheScope", equalTo("private"));
        }
    }

    @Test
    void answersACallWithoutAnOpening() {
        String params = "{\"name\":\"calculate\",\"arguments\":{\"operation\":\"convertHardness\",\"arguments\":" + Served.SMALLEST + "}}";
        Agent.sendNewest("tools/call", params, "{}").then().statusCode(200).body("result.resultType", equalTo("complete"))
                .body("result.isError", equalTo(false)).body("result.ttlMs", nullValue())
                .body("result.content[0].text", containsString("18.5"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", value = {
        "2026-07-28 | 2026-07-28 | tools/list  | 200 | 0      | equal",
        "2026-07-28 | -          | tools/list  | 400 | -32020 | no version in the head",
        "2026-07-28 | 2025-11-25 | tools/list  | 400 | -32020 | another version in the head",
        "-          | 2026-07-28 | tools/list  | 400 | -32020 | no version in the body",
        "2026-07-28 | 2026-07-28 | -           | 400 | -32020 | no method in the head",
        "2026-07-28 | 2026-07-28 | prompts/list | 400 | -32020 | another method in the head",
        "2031-01-01 | 2031-01-01 | tools/list  | 400 | -32022 | a version that is not spoken"})
    void holdsTheHeadToTheBody(String inBody, String inHead, String method, int status, int code, String why) {
        String params = inBody == null ? "{}" : "{" + META.formatted(inBody) + "}";
        var request = Agent.posting(Served.SERVER.port(), Agent.request("tools/list", params));
        if (inHead != null) {
            request.header("MCP-Protocol-Version", inHead);
        }
        if (method != null) {
            request.header("Mcp-Method", method);
        }
        ValidatableResponse response = request.post(Agent.PATH).then().statusCode(status).contentType("application/json")
                .body("id", equalTo(1));
        response.body("error.code", code == 0 ? nullValue() : equalTo(code));
        if (code == -32_022) {
            response.body("error.data.requested", equalTo(inBody)).body("error.data.supported", hasItem("2026-07-28"));
        }
    }

    /** "Value Encoding" of the page of the transport. */
    @ParameterizedTest
    @CsvSource({"find_operation, 200", "calculate, 400", "FIND_OPERATION, 400"})
    void comparesTheNameOfATool(String named, int status) {
        String encoded = "=?base64?" + Base64.getEncoder().encodeToString(named.getBytes(StandardCharsets.UTF_8)) + "?=";
        for (String header : List.of(named, encoded)) {
            Agent.posting(Served.SERVER.port(), Agent.request("tools/call", "{\"name\":\"find_operation\",\"arguments\":{\"question\":"
                    + "\"size\"}," + META.formatted(Agent.NEWEST) + "}")).header("MCP-Protocol-Version", Agent.NEWEST)
                    .header("Mcp-Method", "tools/call").header("Mcp-Name", header).post(Agent.PATH).then().statusCode(status);
        }
    }

    @Test
    void needsTheCapabilitiesOfTheClient() {
        Agent.posting(Served.SERVER.port(), Agent.request("tools/list",
                "{\"_meta\":{\"io.modelcontextprotocol/protocolVersion\":\"2026-07-28\"}}"))
                .header("MCP-Protocol-Version", Agent.NEWEST).header("Mcp-Method", "tools/list").post(Agent.PATH).then()
                .statusCode(400).body("error.code", equalTo(-32602));
    }

    @ParameterizedTest
    @ValueSource(strings = {"ping", "initialize", "logging/setLevel", "resources/subscribe"})
    void knowsNoMethodThatWasRemoved(String method) {
        Agent.sendNewest(method, "{}", "{}").then().statusCode(404).contentType("application/json")
                .body("error.code", equalTo(-32601));
    }

    @Test
    void ignoresASessionAndHasNoStream() {
        Agent.posting(Served.SERVER.port(), Agent.request("tools/list", "{" + META.formatted(Agent.NEWEST) + "}"))
                .header("MCP-Protocol-Version", Agent.NEWEST).header("Mcp-Method", "tools/list").header("Mcp-Session-Id", "a")
                .post(Agent.PATH).then().statusCode(200).header("Mcp-Session-Id", nullValue());
        Served.given().header("MCP-Protocol-Version", Agent.NEWEST).get(Agent.PATH).then().statusCode(405);
    }

    @Test
    void asksThePersonByAFormWhereTheClientHasThem() {
        Response asked = Agent.sendNewest("tools/call", FACTS + "}", "{\"elicitation\":{}}");
        asked.then().statusCode(200).body("result.resultType", equalTo("input_required"))
                .body("result.inputRequests.facts.method", equalTo("elicitation/create"))
                .body("result.inputRequests.facts.params.mode", equalTo("form"))
                .body("result.inputRequests.facts.params.requestedSchema.required", equalTo(List.of("everyDays")))
                .body("result.inputRequests.facts.params.requestedSchema.properties.everyDays.type", equalTo("integer"));
        answering("{\"action\":\"accept\",\"content\":{\"everyDays\":3}}").body("result.resultType", equalTo("complete"))
                .body("result.isError", equalTo(false)).body("result.content[0].text", containsString("A year metered"));
        answering("{\"action\":\"decline\"}").body("result.isError", equalTo(true))
                .body("result.content[0].text", containsString("everyDays: Every how many days"));
        answering("{\"action\":\"accept\",\"content\":{\"everyDays\":\"three\"}}").body("result.isError", equalTo(true))
                .body("result.content[0].text", containsString("/everyDays wrongType"));
        answering("{\"action\":\"accept\",\"content\":{\"units\":\"x\"}}").body("result.resultType", equalTo("input_required"));
        Agent.sendNewest("tools/call", FACTS + "}", "{\"elicitation\":{\"url\":{}}}").then().body("result.isError", equalTo(true));
        Agent.sendNewest("tools/call", FACTS + "}", "{}").then().body("result.isError", equalTo(true));
    }

    private static ValidatableResponse answering(String response) {
        return Agent.sendNewest("tools/call", FACTS + ",\"inputResponses\":{\"facts\":" + response + "}}", "{\"elicitation\":{}}").then()
                .statusCode(200);
    }

    /** Of revision 2025-11-25 a client asks for structured content the same; that of 2025-03-26 does not know it. */
    @Test
    void answersProgramsWithStructuredContent() {
        String params = "{\"name\":\"calculate\",\"arguments\":{\"operation\":\"convertHardness\",\"arguments\":" + Served.SMALLEST
                + ",\"format\":\"json\"}}";
        Agent.sendNewest("tools/call", params, "{}").then().body("result.structuredContent.inEveryUnit.size()", equalTo(7));
        Agent.posting(Served.SERVER.port(), Agent.request("tools/call", params)).header("MCP-Protocol-Version", "2025-06-18")
                .post(Agent.PATH).then().body("result.structuredContent.inEveryUnit.size()", equalTo(7));
        Agent.posting(Served.SERVER.port(), Agent.request("tools/call", params)).header("MCP-Protocol-Version", "2025-03-26")
                .post(Agent.PATH).then().body("result.structuredContent", nullValue())
                .body("result.content[0].text", startsWith("{\"summary\""));
    }
}
