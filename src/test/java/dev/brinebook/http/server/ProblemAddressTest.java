// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.brinebook.Main;
import dev.brinebook.http.Served;
import dev.brinebook.http.Settings;
import io.restassured.RestAssured;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a program reads in a problem: its type, this occurrence of it, and what to write instead (RFC 9457, section 3.1). */
class ProblemAddressTest {

    @Test
    void theTypeIsAbsoluteWhereTheAddressOfTheServiceIsSet() {
        Settings settings = new Settings(0, 0, "127.0.0.1", 262_144, 1, 0, Set.of(), 10, 2_000, 0, "", 10_000, "https://api.example.org");
        try (BrinebookServer server = new BrinebookServer(settings, Main.OPERATIONS).start()) {
            RestAssured.given().baseUri("http://127.0.0.1").port(server.port()).header("X-Request-Id", "b1946ac9").get("/v1/nothing").then()
                    .statusCode(404).body("type", equalTo("https://api.example.org/problems/not-found"))
                    .body("instance", equalTo("https://api.example.org/v1/nothing#b1946ac9"));
        }
    }

    @Test
    void thePublicAddressIsAnOrigin() {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class,
                () -> Settings.from(Map.of("PUBLIC_URL", "example")));
        assertEquals("PUBLIC_URL must be an address such as https://api.example.org, was example", refused.getMessage());
    }

    /** It resolves to a page about the type, as HTML for people and as JSON for programs. */
    @Test
    void theTypeResolves() {
        String type = Served.given().get("/v1/nothing").then().statusCode(404).extract().path("type");
        Served.given().accept("application/json").get(type).then().statusCode(200).contentType("application/json")
                .body("type", equalTo(type)).body("status", equalTo(404)).body("title", equalTo("Nothing is at this path"))
                .body("remedy.length()", greaterThan(10));
        Served.given().accept("text/html").get(type).then().statusCode(200).contentType(startsWith("text/html"));
        Served.given().accept("image/png").get(type).then().statusCode(406);
    }

    /** Words of the trade and the beginnings of names are suggested, never taken (common practice of command lines). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"water": {"hardness": {"value": 20, "unit": "grains"}}}  | /water/hardness/unit      | gpg
            {"water": {"hardness": {"value": 20, "unit": "ppm"}}}     | /water/hardness/unit      | mg/L
            {"water": {"hardness": {"value": 20, "unit": "degrees"}}} | /water/hardness/unit      | dH
            {"softener": {"resinVolume": {"value": 1, "unit": "cuft"}}} | /softener/resinVolume/unit | ft3
            {"softener": {"salt": "NaCl"}}                            | /softener/salt            | sodiumChloride
            {"softener": {"control": {"kind": "meter"}}}              | /softener/control/kind    | meteredDelayed
            {"softener": {"control": {"kind": "timer"}}}              | /softener/control/kind    | clock
            {"softener": {"control": {"kind": "meteredDelayed", "hardness": 1}}} | /softener/control/hardness | hardnessSetting
            """)
    void suggestsWhatIsMeant(String request, String pointer, String name) {
        Served.given().contentType("application/json").body(request).post("/v1/settings-review").then().statusCode(422)
                .body("errors.find { it.pointer == '" + pointer + "' }.didYouMean", equalTo(name))
                .body("errors.find { it.pointer == '" + pointer + "' }.allowed", hasItem(name));
    }

    @Test
    void knowsTheFieldsOfTheKindAlone() {
        String clock = "{\"softener\": {\"control\": {\"kind\": \"clock\", \"zzzzzz\": 1}}}";
        assertEquals(Set.of("kind", "dayOverride", "everyDays", "weekdays", "regenerationHour"), Set.copyOf(Served.given()
                .contentType("application/json").body(clock).post("/v1/settings-review").then().statusCode(422).extract()
                .path("errors.find { it.pointer == '/softener/control/zzzzzz' }.allowed")));
    }
}
