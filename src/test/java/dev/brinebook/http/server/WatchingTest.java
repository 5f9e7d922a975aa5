// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Main;
import dev.brinebook.http.Served;
import dev.brinebook.http.Settings;
import dev.brinebook.http.TestServer;
import io.restassured.path.json.JsonPath;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What operators look at: metrics (Prometheus text format 0.0.4), health, version, RFC 9727 catalogue. */
class WatchingTest {

    @Test
    void countsByTemplateAndNeverByWhatCallersMakeUp() {
        try (BrinebookServer server = Served.start(Main.OPERATIONS, 0, Set.of())) {
            for (int i = 0; i < 5; i++) {
                Served.given(server.port()).get("/nothing/" + i).then().statusCode(404);
                Served.given(server.port()).request("ODD" + i, "/version").then().statusCode(405);
                Served.given(server.port()).get("/problems/made-up-" + i).then().statusCode(404);
            }
            Served.given(server.port()).get("/problems/not-found").then().statusCode(200);
            Served.given(server.port()).contentType("application/json").body(Served.SMALLEST).post(Served.CONVERSION);
            String metrics = Served.metrics(server, text -> text.contains("route=\"/v1/hardness-conversion\""));
            List<String> counts = metrics.lines().filter(line -> line.startsWith("http_server_requests_seconds_count"))
                    .map(line -> line.substring(line.indexOf('{'))).sorted().toList();
            assertEquals(List.of("{method=\"GET\",route=\"/problems/{kind}\",status=\"200\"} 1",
                    "{method=\"GET\",route=\"/problems/{kind}\",status=\"404\"} 5",
                    "{method=\"GET\",route=\"unmatched\",status=\"404\"} 5",
                    "{method=\"POST\",route=\"/v1/hardness-conversion\",status=\"200\"} 1",
                    "{method=\"other\",route=\"unmatched\",status=\"405\"} 5"), counts);
            assertTrue(metrics.contains("http_server_requests_seconds_bucket") && metrics.contains("le=\"5.0E-4\"")
                    && metrics.contains("le=\"10.0\"") && metrics.contains("le=\"30.0\""));
            assertTrue(metrics.contains("jvm_memory_used_bytes"));
            assertTrue(metrics.contains("brinebook_build_info{model=\"" + dev.brinebook.api.ModelVersion.CURRENT + "\",version=\"1."));
        }
    }

    /** RFC 9110, section 15.5: a head that is cut off, or cannot be read, is the caller's fault, and one that is seen. */
    @ParameterizedTest
    @ValueSource(strings = {"GET /version HTTP/1.1\r\nHo", "GET /version HTTP/1.1\r\nHost: a\r\nHost: b\r\n\r\n"})
    void countsRequestsRefusedBeforeTheyWereRead(String head) throws Exception {
        try (BrinebookServer server = Served.start(Main.OPERATIONS, 0, Set.of())) {
            try (Socket socket = new Socket("127.0.0.1", server.port())) {
                socket.getOutputStream().write(head.getBytes(StandardCharsets.US_ASCII));
                socket.shutdownOutput();
                socket.getInputStream().readAllBytes();
            }
            List<String> counts = List.of();
            while (counts.isEmpty()) {
                TimeUnit.MILLISECONDS.sleep(20);
                counts = Served.given(server.metricsPort()).get("/metrics").asString().lines().filter(line ->
                        line.startsWith("http_server_requests_seconds_count") && !line.contains("/metrics")).toList();
            }
            assertTrue(counts.get(0).contains("route=\"unmatched\",status=\"400\""), counts.toString());
        }
    }

    @Test
    void metricsAndServiceKeepToTheirPorts() {
        int watching = Served.SERVER.metricsPort();
        Served.given().get("/metrics").then().statusCode(404);
        Served.given(watching).get("/metrics").then().statusCode(200).header("Cache-Control", "no-store");
        for (String path : List.of("/version", "/docs", "/openapi.json", Served.CONVERSION + "?value=1&unit=gpg")) {
            Served.given(watching).get(path).then().statusCode(404);
        }
        for (String path : List.of("/health/live", "/health/ready")) {
            Served.given().get(path).then().statusCode(200).body("status", equalTo("up")).header("Cache-Control", "no-store");
            Served.given(watching).get(path).then().statusCode(200).body("status", equalTo("up"));
        }
    }

    @Test
    void reportsItsVersions() {
        Served.given().get("/version").then().statusCode(200).body("version", startsWith("1."))
                .body("modelVersion", equalTo(dev.brinebook.api.ModelVersion.CURRENT));
    }

    /** The columns of one water are calculated once: the same request again reads the cache alone. */
    @Test
    void showsHowOftenAColumnWasRemembered() {
        String request = TestServer.example("sizeSoftener.well-family").replace("\"value\": 22", "\"value\": 23.7");
        TestServer.post("/v1/softener-sizing", request).statusCode(200);
        double missed = columns("miss");
        double hit = columns("hit");
        TestServer.post("/v1/softener-sizing", request).statusCode(200);
        assertEquals(missed, columns("miss"));
        assertTrue(columns("hit") > hit, "the curve of the water");
    }

    private static double columns(String result) {
        String metrics = Served.given(Served.SERVER.metricsPort()).get("/metrics").asString();
        return metrics.lines().filter(line -> line.startsWith("cache_gets_total{") && line.contains("cache=\"columns\"")
                && line.contains("result=\"" + result + "\"")).mapToDouble(line ->
                Double.parseDouble(line.substring(line.lastIndexOf(' ')))).sum();
    }

    @Test
    void listsItselfInTheCatalogueOfApis() {
        Served.given().get("/.well-known/api-catalog").then().statusCode(200).contentType("application/linkset+json")
                .body("linkset[0].'service-desc'[0].href", equalTo("/openapi.yaml"))
                .body("linkset[0].'service-doc'[0].href", equalTo("/docs"));
        JsonPath catalogue = Served.given().get("/.well-known/api-catalog").jsonPath();
        assertEquals(List.of("/", "/mcp", "/v1/bulk/"), catalogue.getList("linkset.anchor"));
        Set<String> paths = catalogue.<String>getList("linkset.collect { it.values().findAll { it instanceof List }.flatten()*.href }"
                + ".flatten()").stream().collect(Collectors.toSet());
        assertEquals(Set.of("/openapi.yaml", "/openapi.json", "/docs", "/llms.txt", "/v1/changelog", "/changelog.atom", "/version",
                "/health/ready"), paths);
        paths.forEach(path -> Served.given().get(path).then().statusCode(200));
    }

    /** RFC 9116, sections 2.3 (type), 2.5.3 and 2.5.5 (fields that are needed, each once). */
    @Test
    void saysWhereToReportAWeaknessOnlyIfItsOperatorDoes() {
        Served.given().get("/.well-known/security.txt").then().statusCode(404);
        try (BrinebookServer server = new BrinebookServer(Settings.from(Map.of("PORT", "0", "METRICS_PORT", "0", "HOST", "127.0.0.1",
                "SECURITY_CONTACT", "mailto:security@example.org", "SECURITY_EXPIRES", "2027-06-30T02:00:00+02:00")),
                Main.OPERATIONS).start()) {
            Served.given(server.port()).get("/.well-known/security.txt").then().statusCode(200)
                    .contentType("text/plain; charset=utf-8")
                    .body(equalTo("Contact: mailto:security@example.org\nExpires: 2027-06-30T00:00:00Z\n"));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"/docs", "/docs/try", "/docs/try.js", "/docs/docs.js", "/docs/page.css", "/docs/icon.svg",
        "/docs/assets/swagger-ui.css",
        "/docs/assets/swagger-ui-bundle.js"})
    void servesTheDocsFromItself(String path) {
        assertTrue(Served.given().get(path).then().statusCode(200).extract().asByteArray().length > 100);
    }
}
