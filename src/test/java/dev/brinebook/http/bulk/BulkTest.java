// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.http.Served;
import dev.brinebook.http.limit.HeapPlan;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class BulkTest {

    private static final String BULK = "/v1/bulk/convertHardness";
    private static final ObjectMapper JSON = new ObjectMapper();

    @Test
    void answersEachLineInOrderAndSkipsBlankOnes() throws IOException {
        List<JsonNode> answers = bulk(BULK, Served.SMALLEST + "\n\n  \r\n" + Served.SMALLEST.replace("18.5", "-1") + "\n{\n"
                + Served.SMALLEST.replace("18.5", "20"));
        assertEquals(List.of(1, 4, 5, 6), answers.stream().map(answer -> answer.path("line").asInt()).toList());
        assertEquals(List.of(200, 422, 400, 200), answers.stream().map(answer -> answer.path("status").asInt()).toList());
        assertEquals("/hardness/value", answers.get(1).at("/problem/errors/0/pointer").asText());
        assertEquals("/problems/malformed-body", answers.get(2).at("/problem/type").asText());
        assertTrue(answers.get(0).at("/answer/summary").asText().startsWith("18.5\u00a0gpg"));
    }

    /** What a line is answered is what a single call is. */
    @Test
    void aLineIsAnsweredAsASingleCallIs() throws IOException {
        String single = Served.posting(Served.SMALLEST).post(Served.CONVERSION).asString();
        assertEquals(JSON.readTree(single), bulk(BULK, Served.SMALLEST).get(0).path("answer"));
    }

    @Test
    void aLineTooLongIsRefusedAndTheNextAnswered() throws IOException {
        List<JsonNode> answers = bulk(BULK, " ".repeat(HeapPlan.MAX_LINE_BYTES + 1) + "\n" + Served.SMALLEST);
        assertEquals(413, answers.get(0).path("status").asInt());
        assertEquals(200, answers.get(1).path("status").asInt());
        assertEquals(200, bulk(BULK, " ".repeat(HeapPlan.MAX_LINE_BYTES - 40) + Served.SMALLEST.replace(" ", "")).get(0)
                .path("status").asInt());
    }

    @Test
    void refusesUnsupportedRequestsBeforeTheFirstLine() {
        Served.given().contentType(AnswerObjects.MEDIA_TYPE).body("{}".getBytes(StandardCharsets.UTF_8))
                .post("/v1/bulk/nothing").then().statusCode(404)
                .body("detail", containsString("convertHardness"));
        Served.given().contentType("application/json").body("{}").post(BULK).then().statusCode(415)
                .header("Accept-Post", equalTo("application/x-ndjson, text/csv"));
        Served.given().contentType(AnswerObjects.MEDIA_TYPE).accept("application/xml")
                .body("{}".getBytes(StandardCharsets.UTF_8)).post(BULK).then().statusCode(406);
        Served.given().get(BULK).then().statusCode(405).header("Allow", containsString("POST"));
    }

    /** The first answer is there while the caller has not sent its second line. */
    @Test
    void answersWhileTheListIsStillBeingSent() throws IOException {
        try (Socket socket = new Socket("127.0.0.1", Served.SERVER.port())) {
            socket.setSoTimeout(10_000);
            OutputStream out = socket.getOutputStream();
            out.write(("POST " + BULK + " HTTP/1.1\r\nHost: a\r\nContent-Type: " + AnswerObjects.MEDIA_TYPE
                    + "\r\nTransfer-Encoding: chunked\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
            chunk(out, Served.SMALLEST + "\n");
            BufferedReader in = new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
            String first = in.lines().filter(line -> line.startsWith("{")).findFirst().orElseThrow();
            assertTrue(first.startsWith("{\"line\":1,\"status\":200,\"answer\":"), first);
            chunk(out, Served.SMALLEST + "\n");
            out.write("0\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
            String second = in.lines().filter(line -> line.startsWith("{")).findFirst().orElseThrow();
            assertTrue(second.startsWith("{\"line\":2,"), second);
        }
    }

    @Test
    void takesMoreThanASingleBodyMayHold() throws IOException {
        int lines = 2 * Served.MAX_BODY_BYTES / Served.SMALLEST.length();
        List<JsonNode> answers = bulk(BULK, (Served.SMALLEST + "\n").repeat(lines));
        assertEquals(lines, answers.size());
        assertTrue(answers.stream().allMatch(answer -> answer.path("status").asInt() == 200));
    }

    @Test
    void splitsLinesAtAnyBoundary() throws IOException {
        String text = "a".repeat(8_191) + "\nbb\n" + "c".repeat(20_000) + "\n\nlast";
        BoundedLines lines = new BoundedLines(new ByteArrayInputStream(text.getBytes(StandardCharsets.US_ASCII)), 10_000);
        assertEquals(8_191, lines.next().bytes().length);
        assertEquals("bb", new String(lines.next().bytes(), StandardCharsets.US_ASCII));
        assertNull(lines.next().bytes());
        assertTrue(lines.next().isBlank());
        BoundedLines.Line last = lines.next();
        assertEquals("5 last", last.number() + " " + new String(last.bytes(), StandardCharsets.US_ASCII));
        assertNull(lines.next());
    }

    private static void chunk(OutputStream out, String text) throws IOException {
        out.write((Integer.toHexString(text.length()) + "\r\n" + text + "\r\n").getBytes(StandardCharsets.US_ASCII));
        out.flush();
    }

    private static List<JsonNode> bulk(String path, String lines) throws IOException {
        String answer = Served.given().contentType(AnswerObjects.MEDIA_TYPE).body(lines.getBytes(StandardCharsets.UTF_8))
                .post(path).then().statusCode(200).contentType(AnswerObjects.MEDIA_TYPE).extract().asString();
        return answer.lines().map(line -> {
            try {
                return JSON.readTree(line);
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        }).toList();
    }
}
