// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.access;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.matchesPattern;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.Served;
import dev.brinebook.http.server.BrinebookServer;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Keys by RFC 6750 (sections 2.1 and 3), rates by RFC 6585 (section 4) and draft-ietf-httpapi-ratelimit-headers-10. The keys
 * are words of FIPS 180-2, whose hashes that standard and its appendix print, and so not made with our code.
 */
@Timeout(60)
class AccessPolicyTest {

    /** FIPS 180-2, appendix B.1. */
    private static final String ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
    /** FIPS 180-2, appendix B.2. */
    private static final String LONG = "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq";
    private static final String LONG_HASH = "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1";

    @TempDir
    Path directory;

    private String keys(String content) throws IOException {
        return Files.writeString(directory.resolve("keys"), content).toString();
    }

    private static ValidatableResponse ask(BrinebookServer server, String authorization) {
        return Served.given(server.port()).header("Authorization", authorization).contentType("application/json")
                .body(Served.SMALLEST).post(Served.CONVERSION).then();
    }

    @Test
    void answersOnlyCallersWithAKeyAndCountsThemByName() throws IOException {
        try (BrinebookServer server = Served.guarded(0, keys("# invented\n\nshop:" + ABC + "\nagent:" + LONG_HASH + "\n"))) {
            ask(server, "Bearer abc").statusCode(200);
            ask(server, "bearer " + LONG).statusCode(200);
            Served.given(server.port()).contentType("application/json").body(Served.SMALLEST).post(Served.CONVERSION).then()
                    .statusCode(401).contentType("application/problem+json").body("type", equalTo("/problems/unauthorized"))
                    .header("WWW-Authenticate", "Bearer realm=\"Brinebook\"");
            String metrics = Served.given(server.metricsPort()).get("/metrics").asString();
            assertTrue(metrics.contains("caller_requests_total{caller=\"shop\"} 1.0"), metrics);
            assertTrue(metrics.contains("caller_requests_total{caller=\"agent\"} 1.0"), metrics);
            assertTrue(metrics.contains("http_server_rejected_total{reason=\"key\"} 1.0"), metrics);
            assertFalse(metrics.contains(LONG) || metrics.contains(ABC), "no key and no hash");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"Bearer abd", "Bearer", "Bearer ab", "abc", "Basic abc", "Bearer abc abc", "Bearer " + ABC})
    void refusesOtherKeys(String authorization) throws IOException {
        try (BrinebookServer server = Served.guarded(0, keys("shop:" + ABC))) {
            ask(server, authorization).statusCode(401)
                    .header("WWW-Authenticate", "Bearer realm=\"Brinebook\", error=\"invalid_token\"");
        }
    }

    @Test
    void guardsEveryCalculationAndLeavesTheRestOpen() throws IOException {
        try (BrinebookServer server = Served.guarded(0, keys("shop:" + ABC))) {
            for (String path : List.of("/v1/hardness-conversion?value=1&unit=gpg", "/v1/bulk/assess/template", "/v1/nothing", "/mcp")) {
                Served.given(server.port()).get(path).then().statusCode(401);
            }
            for (String path : List.of("/health/live", "/health/ready", "/version", "/docs", "/openapi.json", "/llms.txt",
                    "/problems/unauthorized")) {
                Served.given(server.port()).get(path).then().statusCode(200);
            }
            Response page = Served.given(server.port()).get("/openapi.json");
            assertEquals("public, max-age=300", page.header("Cache-Control"));
            assertFalse(page.headers().getValues("Vary").contains("Authorization"));
            Served.given(server.port()).post("/mcp").then().statusCode(401);
            Served.given(server.port()).contentType("application/x-ndjson").post("/v1/bulk/assess").then().statusCode(401);
            Served.given(server.port()).header("Origin", "https://shop.example")
                    .header("Access-Control-Request-Method", "POST").options(Served.CONVERSION).then().statusCode(204)
                    .header("Access-Control-Allow-Headers", matchesPattern(".*\\bAuthorization\\b.*"));
        }
    }

    /** A key is changed without a gap: both are taken, then the old one is taken out, and the service runs on. */
    @Test
    void readsTheFileAgainWhenItChanges() throws Exception {
        try (BrinebookServer server = Served.guarded(0, keys("shop:" + ABC))) {
            ask(server, "Bearer " + LONG).statusCode(401);
            keys("shop:" + ABC + "\nshop:" + LONG_HASH);
            awaitStatus(server, LONG, 200);
            ask(server, "Bearer abc").statusCode(200);
            keys("shop:" + LONG_HASH);
            awaitStatus(server, "abc", 401);
            keys("a fault");
            TimeUnit.MILLISECONDS.sleep(1_200);
            ask(server, "Bearer " + LONG).statusCode(200);
            Files.delete(directory.resolve("keys"));
            TimeUnit.MILLISECONDS.sleep(1_200);
            ask(server, "Bearer " + LONG).statusCode(200);
        }
    }

    private static void awaitStatus(BrinebookServer server, String key, int status) throws InterruptedException {
        while (ask(server, "Bearer " + key).extract().statusCode() != status) {
            TimeUnit.MILLISECONDS.sleep(50);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "# none", "shop", "shop:abc", "shop: " + ABC, "a b:" + ABC, ":" + ABC, "shop:" + ABC + "0"})
    void startsWithNoFileThatItCannotUse(String content) throws IOException {
        String file = keys(content);
        String fault = assertThrows(IllegalArgumentException.class, () -> Served.guarded(0, file)).getMessage();
        assertTrue(fault.startsWith("API_KEYS_FILE ") && !fault.contains(ABC), fault);
        assertThrows(IllegalArgumentException.class, () -> Served.guarded(0, directory.resolve("none").toString()));
    }

    /** RFC 9111, section 3.5: no shared cache gives one caller what another was answered. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            /v1/hardness-conversion?value=1&unit=gpg | 200 | private, max-age=300
            /v1/hardness-conversion?value=1          | 422 | no-store
            /v1/bulk/convertHardness/template        | 200 | private, max-age=300
            /v1/assessment?request=%7B%7D            | 422 | no-store
            /v1/sources                              | 200 | private, max-age=300
            """)
    void whatAKeyIsAnsweredIsKeptByItsCallerAlone(String path, int status, String cacheControl) throws IOException {
        try (BrinebookServer server = Served.guarded(0, keys("shop:" + ABC))) {
            Response answer = Served.given(server.port()).header("Authorization", "Bearer abc").get(path);
            assertEquals(status, answer.statusCode());
            assertEquals(cacheControl, answer.header("Cache-Control"));
            assertTrue(answer.headers().getValues("Vary").contains("Authorization"), answer.headers().toString());
            Response refused = Served.given(server.port()).get(path);
            assertEquals(401, refused.statusCode());
            assertEquals("no-store", refused.header("Cache-Control"));
            assertTrue(refused.headers().getValues("Vary").contains("Authorization"), refused.headers().toString());
        }
    }

    @Test
    void limitsEachCallerByItself() throws IOException {
        try (BrinebookServer server = Served.guarded(3, keys("shop:" + ABC + "\nagent:" + LONG_HASH))) {
            for (int left = 2; left >= 0; left--) {
                ask(server, "Bearer abc").statusCode(200).header("RateLimit-Policy", "\"minute\";q=3;w=60")
                        .header("RateLimit", matchesPattern("\"minute\";r=" + left + ";t=\\d+"));
            }
            ask(server, "Bearer abc").statusCode(429).contentType("application/problem+json")
                    .body("type", equalTo("/problems/too-many-requests")).header("Retry-After", matchesPattern("1?\\d|20"))
                    .header("RateLimit", matchesPattern("\"minute\";r=0;t=(1?\\d|20)"));
            ask(server, "Bearer " + LONG).statusCode(200);
            Served.given(server.port()).get("/version").then().statusCode(200);
            assertTrue(Served.given(server.metricsPort()).get("/metrics").asString()
                    .contains("http_server_rejected_total{reason=\"rate\"} 1.0"));
        }
    }

    /** Keys are not tried at leisure (OWASP, Authentication Cheat Sheet); a request without a key tries none. */
    @Test
    void refusesToLookAtMoreKeysFromAnAddressThatSentManyWrongOnes() throws IOException {
        try (BrinebookServer server = Served.guarded(0, keys("shop:" + ABC))) {
            sendWrongKeysUntilThereWereTooMany(server).header("Retry-After", matchesPattern("[1-9]\\d*"))
                    .body("type", equalTo("/problems/too-many-requests"));
            Served.given(server.port()).contentType("application/json").body(Served.SMALLEST).post(Served.CONVERSION).then()
                    .statusCode(401);
        }
    }

    /** Behind one proxy all callers have one address: who sends wrong keys does not shut out those who send right ones. */
    @Test
    void goesOnTakingRightKeysFromAnAddressThatSentOne() throws IOException {
        try (BrinebookServer server = Served.guarded(0, keys("shop:" + ABC))) {
            ask(server, "Bearer abc").statusCode(200);
            sendWrongKeysUntilThereWereTooMany(server);
            ask(server, "Bearer abc").statusCode(200);
        }
    }

    /** One more may be sent each second, so that on a slow machine they are some more than a minute's. */
    private static ValidatableResponse sendWrongKeysUntilThereWereTooMany(BrinebookServer server) {
        int sent = 1;
        ValidatableResponse last = ask(server, "Bearer wrong");
        while (last.extract().statusCode() == 401 && sent < 20 * KeyGuesses.WRONG_PER_MINUTE) {
            last = ask(server, "Bearer wrong");
            sent++;
        }
        return last.statusCode(429);
    }

    @Test
    void limitsByAddressWithoutKeys() {
        try (BrinebookServer server = Served.guarded(1, "")) {
            ask(server, "Bearer whatever").statusCode(200);
            Response refused = ask(server, "Bearer another").statusCode(429).extract().response();
            int seconds = Integer.parseInt(refused.header("Retry-After"));
            assertTrue(seconds > 0 && seconds <= 60, "at one a minute");
        }
    }

    @Test
    void nothingIsOnByDefault() {
        Response answer = Served.posting(Served.SMALLEST).post(Served.CONVERSION);
        assertEquals(200, answer.statusCode());
        assertEquals(null, answer.header("RateLimit"));
    }
}
