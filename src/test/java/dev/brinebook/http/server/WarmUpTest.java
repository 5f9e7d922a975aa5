// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.http.Settings;
import dev.brinebook.http.TestServer;
import io.restassured.RestAssured;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What is called over the service's own port before the first caller comes. */
class WarmUpTest {

    private static final String KEY = "a-key-of-a-test";
    private static final int PER_MINUTE = 100;
    private static final Set<String> ALL = Main.OPERATIONS.stream().map(Operation::id).collect(Collectors.toCollection(TreeSet::new));

    @TempDir
    private Path folder;
    private final List<String> calculated = Collections.synchronizedList(new ArrayList<>());

    @Test
    void everyOperationWasCalledWhenTheServiceIsReadyAndNoneOfTheseCallsCounts() throws Exception {
        try (BrinebookServer server = server().startWarm(Duration.ofMinutes(5))) {
            assertEquals(ALL, new TreeSet<>(calculated));
            assertEquals(ALL.size(), calculated.size());
            RestAssured.get("http://127.0.0.1:" + server.port() + "/health/ready").then().statusCode(200);
            RestAssured.get("http://127.0.0.1:" + server.metricsPort() + "/metrics").then().statusCode(200)
                    .body(not(containsString("/v1/"))).body(not(containsString("caller=")));
            asking(server).header("Authorization", "Bearer " + KEY).post("/v1/hardness-conversion").then().statusCode(200)
                    .header("RateLimit", startsWith("\"minute\";r=" + (PER_MINUTE - 1) + ";"));
        }
    }

    @Test
    @Timeout(value = 5, unit = TimeUnit.MINUTES)
    void whatThereIsNoTimeForIsCalledAfterwards() throws Exception {
        try (BrinebookServer server = server().startWarm(Duration.ZERO)) {
            asking(server).post("/v1/hardness-conversion").then().statusCode(401)
                    .body("type", equalTo("/problems/unauthorized"));
            while (calculated.size() < ALL.size()) {
                TimeUnit.MILLISECONDS.sleep(10);
            }
            assertEquals(ALL, new TreeSet<>(calculated));
            assertTrue(calculated.indexOf("convertHardness") < calculated.indexOf("assess"), calculated::toString);
        }
    }

    /** With keys and rates on, its operations noting who calls them. */
    private BrinebookServer server() throws Exception {
        Path keys = folder.resolve("keys");
        byte[] hash = MessageDigest.getInstance("SHA-256").digest(KEY.getBytes(StandardCharsets.UTF_8));
        Files.writeString(keys, "test:" + HexFormat.of().formatHex(hash) + "\n");
        return new BrinebookServer(Settings.from(Map.of("PORT", "0", "METRICS_PORT", "0", "HOST", "127.0.0.1", "API_KEYS_FILE",
                keys.toString(), "RATE_LIMIT_PER_MINUTE", Integer.toString(PER_MINUTE), "CALCULATION_MILLISECONDS", "600000")),
                Main.OPERATIONS.stream().<Operation<?, ?>>map(this::watched).toList());
    }

    private static RequestSpecification asking(BrinebookServer server) throws IOException {
        return RestAssured.given().baseUri("http://127.0.0.1").port(server.port()).header("Content-Type", "application/json")
                .body(TestServer.example("convertHardness.us"));
    }

    private <Q extends Record, A extends Record> Operation<Q, A> watched(Operation<Q, A> operation) {
        return new Operation<>(operation.id(), operation.path(), operation.summary(), operation.description(),
                operation.requestType(), operation.answerType(), request -> {
            calculated.add(operation.id());
            return operation.answer(request);
        }, operation.query(), operation.examples());
    }
}
