// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.Served;
import dev.brinebook.http.Trial;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.log.LogOutput;
import io.restassured.response.Response;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A calculation that fails is 500 without internals (RFC 9457, section 5); the log names the request and its trace. */
class FaultOfOursTest {

    /** The example of W3C Trace Context, section 3.2.3. */
    private static final String TRACE = "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01";
    private static final String SECRET = "secret-of-the-inside";

    @Test
    void revealsNoInternalsButLogsThem() {
        PrintStream real = System.out;
        ByteArrayOutputStream log = new ByteArrayOutputStream();
        System.setOut(new PrintStream(log, true, StandardCharsets.UTF_8));
        try {
            answersInternalError("mine-1", TRACE, request -> {
                throw new IllegalArgumentException(SECRET);
            });
            answersInternalError("mine-2", "forged\tor-wrong", request -> {
                throw new StackOverflowError(SECRET);
            });
            answersInternalError("mine-3", TRACE.toUpperCase(java.util.Locale.ROOT), request -> null);
            LogOutput.finish();
        } finally {
            System.setOut(real);
        }
        String lines = log.toString(StandardCharsets.UTF_8);
        assertTrue(lines.contains("\"message\":\"failed\",\"requestId\":\"mine-1\",\"traceId\":\"" + TRACE.split("-")[1]
                + "\",\"error\":\"java.lang.IllegalArgumentException: " + SECRET + "\\n\\tat dev.brinebook."), lines);
        assertTrue(lines.contains("\"message\":\"failed\",\"requestId\":\"mine-2\",\"error\":"), lines);
        assertTrue(lines.contains("\"message\":\"failed\",\"requestId\":\"mine-3\",\"error\":"), lines);
        assertFalse(lines.contains("forged"), lines);
    }

    private static void answersInternalError(String id, String trace,
            java.util.function.Function<Trial.Request, Trial.Answer> calculation) {
        try (BrinebookServer server = Served.start(List.of(Trial.doing(calculation)), 0, Set.of())) {
            Response response = Served.given(server.port()).contentType("application/json").header("X-Request-Id", id)
                    .header("traceparent", trace).body("{}").post(Trial.PATH);
            response.then().statusCode(500).contentType("application/problem+json")
                    .body("type", equalTo("/problems/internal-error")).body("errors", nullValue())
                    .body("requestId", equalTo(id)).header("Cache-Control", "no-store");
            assertEquals(ProblemType.INTERNAL_ERROR.explanation().toString(), response.path("detail"));
            assertFalse(response.asString().contains(SECRET) || response.asString().contains("Exception"));
            Served.given(server.port()).get("/health/ready").then().statusCode(200);
        }
    }
}
