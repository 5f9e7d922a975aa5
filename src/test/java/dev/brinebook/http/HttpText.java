// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.path.json.JsonPath;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Reads an answer that came over a raw socket. */
public final class HttpText {

    private HttpText() {
    }

    public static void assertProblem(String answer, int status, String slug) {
        assertTrue(answer.startsWith("HTTP/1.1 " + status + " "), answer);
        assertHeader(answer, "Content-Type", "application/problem+json");
        assertHeader(answer, "X-Content-Type-Options", "nosniff");
        assertHeader(answer, "Cache-Control", "no-store");
        assertHeader(answer, "Referrer-Policy", "no-referrer");
        JsonPath problem = JsonPath.from(body(answer));
        assertEquals("/problems/" + slug, problem.getString("type"));
        assertEquals(status, problem.getInt("status"));
        assertEquals(headers(answer, "X-Request-Id"), List.of(problem.getString("requestId")));
        assertEquals(List.of(), headers(answer, "Server"));
    }

    public static void assertHeader(String answer, String name, String value) {
        assertEquals(List.of(value), headers(answer, name), answer);
    }

    public static List<String> headers(String answer, String name) {
        String head = answer.substring(0, answer.indexOf("\r\n\r\n"));
        String start = name.toLowerCase(Locale.ROOT) + ":";
        return Arrays.stream(head.split("\r\n")).filter(line -> line.toLowerCase(Locale.ROOT).startsWith(start))
                .map(line -> line.substring(start.length()).strip()).toList();
    }

    public static String body(String answer) {
        return answer.substring(answer.indexOf("\r\n\r\n") + 4);
    }
}
