package dev.brinebook.http.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Main;
import dev.brinebook.http.HttpText;
import dev.brinebook.http.RawHttp;
import dev.brinebook.http.Served;
import dev.brinebook.http.TestServer;
import dev.brinebook.http.Trial;
import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whether a request goes the short way or the long one, its caller gets the same. */
class ShortWayTest {

    private static final String JSON = "Content-Type: application/json\r\nX-Request-Id: one\r\n";
    /** Means the same as no header, but has to be read as a list. */
    private static final String THE_LONG_WAY = "Accept: application/json;q=1\r\n";
    private static final String SHOP = "https://shop.example";

    private static BrinebookServer server;

    @BeforeAll
    static void start() {
        server = Served.start(Main.OPERATIONS, 0, Set.of(SHOP));
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    static Stream<Arguments> examples() {
        return Main.OPERATIONS.stream().flatMap(operation -> operation.examples().stream()
                .map(name -> Arguments.of(operation.path(), TestServer.example(operation.id() + "." + name))));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void answersEveryExampleAlike(String path, String body) throws IOException {
        String shortWay = assertAlike(path, "", body);
        assertTrue(shortWay.startsWith("HTTP/1.1 200 "), shortWay);
        assertAlike(path, "Accept-Language: fr\r\nOrigin: " + SHOP + "\r\n", body);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "[]", "null", "{\"hardness\": 4}", "{\"hardness\": {\"value\": -1, \"unit\": \"gpg\"}}", "\u00ff"})
    void tellsEveryFaultAlike(String body) throws IOException {
        String shortWay = assertAlike(Served.CONVERSION, "", body);
        assertTrue(shortWay.startsWith("HTTP/1.1 4"), shortWay);
    }

    @Test
    void isTakenByThePlainestRequestAlone() throws IOException {
        try (BrinebookServer trial = Served.start(List.of(Trial.doing(request -> new Trial.Answer(way()))), 0, Set.of())) {
            assertEquals("{\"got\":\"short\"}", HttpText.body(post(trial, Trial.PATH, "", "{}")));
            assertEquals("{\"got\":\"short\"}", HttpText.body(post(trial, Trial.PATH, "Accept: */*\r\n", "{}")));
            for (String other : List.of(THE_LONG_WAY, "Accept-Encoding: gzip\r\n", "Authorization: Bearer x\r\n")) {
                assertEquals("{\"got\":\"long\"}", HttpText.body(post(trial, Trial.PATH, other, "{}")), other);
            }
        }
    }

    /** A fault of ours is told, and logged, once. */
    @Test
    void leavesAFaultOfOursToTheLongWay() throws IOException {
        int[] calculated = {0};
        try (BrinebookServer trial = Served.start(List.of(Trial.doing(request -> {
            calculated[0]++;
            throw new IllegalStateException("ours");
        })), 0, Set.of())) {
            HttpText.assertProblem(post(trial, Trial.PATH, "", "{}"), 500, "internal-error");
            assertEquals(1, calculated[0]);
        }
    }

    /** The head of the request comes first, then half of the body, then the rest. */
    @Test
    void losesNothingOfABodyThatComesInParts() throws Exception {
        byte[] body = Served.SMALLEST.getBytes(StandardCharsets.US_ASCII);
        String head = "POST " + Served.CONVERSION + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n" + JSON
                + "Content-Length: " + body.length + "\r\n\r\n";
        try (Socket socket = new Socket("127.0.0.1", server.port())) {
            for (byte[] part : List.of(head.getBytes(StandardCharsets.US_ASCII), Arrays.copyOf(body, body.length / 2),
                    Arrays.copyOfRange(body, body.length / 2, body.length))) {
                socket.getOutputStream().write(part);
                socket.getOutputStream().flush();
                Thread.sleep(30);
            }
            assertEquals(sorted(post(server, Served.CONVERSION, "", Served.SMALLEST)),
                    sorted(withoutDate(new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8))));
        }
    }

    /** The long way leads through the router. */
    private static String way() {
        return StackWalker.getInstance().walk(frames -> frames.anyMatch(frame -> frame.getClassName().contains("javalin")))
                ? "long" : "short";
    }

    private static String assertAlike(String path, String headers, String body) throws IOException {
        String shortWay = post(server, path, headers, body);
        assertEquals(sorted(post(server, path, headers + THE_LONG_WAY, body)), sorted(shortWay));
        return shortWay;
    }

    private static String post(BrinebookServer asked, String path, String headers, String body) throws IOException {
        int length = body.getBytes(StandardCharsets.ISO_8859_1).length;
        return withoutDate(RawHttp.send(asked.port(), "POST " + path + " HTTP/1.1",
                JSON + headers + "Content-Length: " + length + "\r\n", body));
    }

    private static String withoutDate(String answer) {
        return answer.replaceFirst("(?i)\r\nDate: [^\r]*", "");
    }

    /** The order of headers means nothing, but where one stands in several lines. */
    private static List<String> sorted(String answer) {
        String head = answer.substring(0, answer.indexOf("\r\n\r\n"));
        List<String> lines = Stream.of(head.split("\r\n")).sorted((a, b) -> name(a).compareTo(name(b))).toList();
        return Stream.concat(lines.stream(), Stream.of(HttpText.body(answer))).toList();
    }

    private static String name(String line) {
        return line.split("[: ]", 2)[0];
    }
}
