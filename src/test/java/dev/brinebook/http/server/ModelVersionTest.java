// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.Served;
import dev.brinebook.http.TestServer;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A caller chooses a version of the model by a header, and every answer names its own (RFC 9110 sections 5.3, 12.5.5). */
class ModelVersionTest {

    private static final byte[] SMALLEST = Served.SMALLEST.getBytes(StandardCharsets.UTF_8);
    private static final String QUERY = Served.CONVERSION + "?value=18.5&unit=gpg";

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "none", textBlock = """
            # method | path                        | asked   | answered
            GET      | /v1/hardness-conversion     | none    | 2.3.0
            GET      | /v1/hardness-conversion     | 2.3.0   | 2.3.0
            GET      | /v1/hardness-conversion     | 2.2.0   | 2.2.0
            POST     | /v1/hardness-conversion     | none    | 2.3.0
            POST     | /v1/hardness-conversion     | ' 2.2.0 ' | 2.2.0
            POST     | /v1/bulk/convertHardness    | none    | 2.3.0
            POST     | /v1/bulk/convertHardness    | 2.2.0   | 2.2.0
            """)
    void everyAnswerNamesItsVersion(String method, String path, String asked, String answered) {
        Response answer = method.equals("GET") ? asking(asked).get(QUERY) : asking(asked)
                .contentType(path.contains("bulk") ? "application/x-ndjson" : "application/json").body(SMALLEST).post(path);
        answer.then().statusCode(200).header("Model-Version", answered)
                .body(containsString("\"modelVersion\":\"" + answered + "\""));
    }

    @ParameterizedTest
    @CsvSource({"text/html, 2.2.0", "text/html, 2.3.0", "text/calendar, 2.2.0", "text/calendar, 2.3.0"})
    void otherFormsNameItToo(String form, String version) {
        boolean sheet = form.equals("text/html");
        String request = TestServer.example(sheet ? "assess.apartment" : "scheduleRegeneration.apartment");
        asking(version).contentType("application/json").accept(form).body(request)
                .post(sheet ? "/v1/assessment" : "/v1/regeneration-schedule").then().statusCode(200).header("Model-Version", version)
                .body(containsString(version));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.0.0", "2.4.0", "latest", "2.2", "2.2.0, 2.3.0", "<b>"})
    void refusesAVersionThatCannotBeCalled(String asked) {
        for (String path : new String[] {Served.CONVERSION, "/v1/bulk/convertHardness"}) {
            asking(asked).contentType(path.contains("bulk") ? "application/x-ndjson" : "application/json").body(SMALLEST).post(path)
                    .then().statusCode(400).header("Model-Version", (String) null)
                    .body("type", equalTo("/problems/unknown-model-version"), "detail",
                            equalTo("`Model-Version` must be one of 2.3.0, 2.2.0."), "errors.header", equalTo(List.of("Model-Version")),
                            "errors[0].pointer", equalTo(""), "errors[0].code", equalTo("unknownValue"), "errors[0].allowed",
                            equalTo(List.of("2.3.0", "2.2.0")), "errors[0].received", equalTo(asked.matches("[\\w.]+") ? asked : null));
        }
        assertTrue(asking(asked).get(QUERY).headers().getValues("Vary").contains("Model-Version"));
    }

    @Test
    void cachesKeepTheVersionsApart() {
        Response current = asking(null).get(QUERY);
        Response before = asking("2.2.0").get(QUERY);
        for (Response answer : new Response[] {current, before}) {
            assertTrue(answer.headers().getValues("Vary").contains("Model-Version"), answer.headers().toString());
            assertEquals("public, max-age=300", answer.header("Cache-Control"));
        }
        assertNotEquals(current.header("ETag"), before.header("ETag"));
        Response kept = asking("2.2.0").header("If-None-Match", before.header("ETag")).get(QUERY);
        assertEquals(304, kept.statusCode());
        assertTrue(kept.headers().getValues("Vary").contains("Model-Version"));
        assertEquals("2.2.0", kept.header("Model-Version"));
    }

    @Test
    void thePagesThatCalculateNothingNameNone() {
        Served.given().get("/docs").then().statusCode(200).header("Model-Version", (String) null);
        String reference = "#/components/parameters/modelVersion";
        Served.given().get("/openapi.json").then().body("paths.'/v1/assessment'.post.parameters.'$ref'", hasItem(reference),
                "paths.'/v1/bulk/{calculator}'.post.parameters.'$ref'", hasItem(reference),
                "paths.'/v1/hardness-conversion'.get.parameters.'$ref'", hasItem(reference),
                "components.parameters.modelVersion.name", equalTo("Model-Version"),
                "components.parameters.modelVersion.schema.enum", equalTo(List.of("2.3.0", "2.2.0")));
    }

    private static RequestSpecification asking(String version) {
        return version == null ? Served.given() : Served.given().header("Model-Version", version);
    }
}
