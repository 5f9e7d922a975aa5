// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.http.Settings;
import dev.brinebook.http.server.BrinebookServer;
import io.restassured.RestAssured;
import io.restassured.http.Header;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The headers that the contract describes at a response are those that the running service sends with it. */
class ResponseHeadersTest {

    /** Of the message itself (RFC 9110, RFC 9112), or the same on every response, as the description of the contract says. */
    private static final Set<String> EVERYWHERE = Set.of("connection", "content-encoding", "content-length", "content-type", "date",
            "link", "ratelimit", "ratelimit-policy", "referrer-policy", "transfer-encoding", "x-content-type-options");

    /** Sent in some cases only: of a form of the answer, to a caller that asks in a way, or of a body that is refused. */
    private static final Set<String> SOMETIMES = Set.of("accept-post", "content-security-policy", "retry-after", "www-authenticate");

    /** Pages in one language say none, and are not calculated. */
    private static final Set<String> OF_SOME_PAGES = Set.of("content-language", "model-version");

    private static BrinebookServer server;
    private static JsonNode document;

    private final Map<String, String> faults = new TreeMap<>();
    private int seen;

    @BeforeAll
    static void start() {
        server = new BrinebookServer(new Settings(0, 0, "127.0.0.1", 262_144, 1, 0, Set.of(), 10, 2_000, 1_000_000, "", 10_000),
                Main.OPERATIONS).start();
        document = Committed.tree(server.contract().json());
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    @Test
    void ofEveryOperation() throws IOException {
        for (Operation<?, ?> operation : Main.OPERATIONS) {
            byte[] request = Files.readAllBytes(Committed.EXAMPLES.resolve(operation.exampleFile(operation.examples().get(0), "request")));
            compare(operation.path(), "post", asked().contentType("application/json").body(request).post(operation.path()));
            compare(operation.path(), "post", asked().contentType("application/json").body("{").post(operation.path()));
            compare(operation.path(), "post", asked().contentType("text/plain").body("{}").post(operation.path()));
            compare(operation.path(), "post", asked().contentType("application/json").body("{\"zzz\": 1}").post(operation.path()));
        }
        assertEquals(Map.of(), faults);
        assertTrue(seen >= 4 * Main.OPERATIONS.size(), seen + " seen");
    }

    @Test
    void ofEveryPage() {
        document.path("paths").properties().forEach(path -> {
            if (path.getValue().has("get") && path.getValue().at("/get/tags/0").asText().equals("service")) {
                JsonNode parameter = path.getValue().at("/get/parameters/0");
                String address = path.getKey().replaceAll("\\{[^}]+}", parameter.path("example").asText());
                Response response = asked().get(address);
                compare(path.getKey(), "get", response);
                if (response.header("ETag") != null) {
                    compare(path.getKey(), "get", asked().header("If-None-Match", response.header("ETag")).get(address));
                }
            }
        });
        assertEquals(Map.of(), faults);
        assertTrue(seen >= 20, seen + " seen");
    }

    @Test
    void ofShortForms() {
        Response answer = asked().queryParam("value", 18.5).queryParam("unit", "gpg").get("/v1/hardness-conversion");
        compare("/v1/hardness-conversion", "get", answer);
        compare("/v1/hardness-conversion", "get", asked().header("If-None-Match", answer.header("ETag")).queryParam("value", 18.5)
                .queryParam("unit", "gpg").get("/v1/hardness-conversion"));
        compare("/v1/hardness-conversion", "get", asked().queryParam("value", "x").get("/v1/hardness-conversion"));
        assertEquals(Map.of(), faults);
    }

    private static RequestSpecification asked() {
        return RestAssured.given().baseUri("http://127.0.0.1").port(server.port());
    }

    private void compare(String path, String method, Response response) {
        JsonNode described = document.path("paths").path(path).path(method).path("responses").path(Integer.toString(response.statusCode()));
        if (described.has("$ref")) {
            described = document.at(described.path("$ref").asText().substring(1));
        }
        Set<String> expected = new TreeSet<>();
        described.path("headers").fieldNames().forEachRemaining(name -> expected.add(name.toLowerCase(Locale.ROOT)));
        Set<String> sent = new TreeSet<>();
        for (Header header : response.headers()) {
            sent.add(header.getName().toLowerCase(Locale.ROOT));
        }
        sent.removeAll(EVERYWHERE);
        Set<String> undescribed = new TreeSet<>(sent);
        undescribed.removeAll(expected);
        expected.removeAll(SOMETIMES);
        expected.removeAll(sent);
        if (method.equals("get")) {
            expected.removeAll(OF_SOME_PAGES);
        }
        if (!expected.isEmpty()) {
            faults.put(method + " " + path + " " + response.statusCode(), "not sent: " + expected);
        }
        if (!undescribed.isEmpty() || described.isMissingNode()) {
            faults.put(method + " " + path + " " + response.statusCode(), "not described: " + undescribed);
        }
        seen++;
    }
}
