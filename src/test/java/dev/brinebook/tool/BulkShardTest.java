// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.tool;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.Main;
import dev.brinebook.http.Settings;
import dev.brinebook.http.server.BrinebookServer;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Workers of an indexed job share files among them and answer every line, once, in its place. */
class BulkShardTest {

    private static final int LINES = 250;

    private static BrinebookServer server;

    @TempDir
    Path requests;

    @TempDir
    Path answers;

    @BeforeAll
    static void start() {
        server = Main.server(Settings.from(Map.of("PORT", "0", "METRICS_PORT", "0", "HOST", "127.0.0.1"))).start();
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    @Test
    void workersTogetherAnswerEveryLineInItsPlace() throws Exception {
        for (int file = 0; file < 3; file++) {
            int from = file * LINES;
            Files.write(requests.resolve("part-" + file + ".ndjson"), IntStream.range(from, from + LINES)
                    .mapToObj(BulkShardTest::request).toList());
        }
        BulkShard.send(path("convertHardness"), requests, answers, 0, 2);
        assertEquals(List.of("part-0.ndjson", "part-2.ndjson"), written());
        BulkShard.send(path("convertHardness"), requests, answers, 1, 2);
        assertEquals(List.of("part-0.ndjson", "part-1.ndjson", "part-2.ndjson"), written());
        for (int file = 0; file < 3; file++) {
            List<String> lines = Files.readAllLines(answers.resolve("part-" + file + ".ndjson"));
            assertEquals(LINES, lines.size());
            for (int i = 0; i < LINES; i++) {
                JsonNode line = new ObjectMapper().readTree(lines.get(i));
                assertEquals(i + 1, line.get("line").intValue());
                assertTrue(line.toString().contains("\"value\":" + (file * LINES + i + 1)), line::toString);
            }
        }
    }

    @Test
    void whatIsThereIsNotAskedAgain() throws Exception {
        Files.writeString(requests.resolve("a.ndjson"), request(1));
        Files.writeString(answers.resolve("a.ndjson"), "done before");
        BulkShard.send(URI.create("http://127.0.0.1:1/nobody"), requests, answers, 0, 1);
        assertEquals("done before", Files.readString(answers.resolve("a.ndjson")));
    }

    @Test
    void linesThatAreRefusedAndBlankLinesKeepTheirPlace() throws Exception {
        Files.write(requests.resolve("a.ndjson"), List.of(request(1), "", "no JSON", request(2)));
        BulkShard.send(path("convertHardness"), requests, answers, 0, 1);
        List<String> lines = Files.readAllLines(answers.resolve("a.ndjson"));
        assertEquals(List.of("{\"line\":1,\"status\":200", "{\"line\":3,\"status\":400", "{\"line\":4,\"status\":200"),
                lines.stream().map(line -> line.substring(0, "{\"line\":1,\"status\":200".length())).toList());
    }

    @Test
    void aServiceThatDoesNotKnowTheOperationEndsTheWorker() throws Exception {
        Files.writeString(requests.resolve("a.ndjson"), request(1));
        IOException refused = assertThrows(IOException.class,
                () -> BulkShard.send(path("noSuchOperation"), requests, answers, 0, 1));
        assertTrue(refused.getMessage().contains("answered 404"), refused::getMessage);
        assertEquals(List.of("a.ndjson.unfinished"), written());
    }

    private static URI path(String operation) {
        return URI.create("http://127.0.0.1:" + server.port() + "/v1/bulk/" + operation);
    }

    private static String request(int gpg) {
        return "{\"hardness\":{\"value\":" + (gpg + 1) + ",\"unit\":\"mg/L\"}}";
    }

    private List<String> written() throws IOException {
        try (Stream<Path> files = Files.list(answers)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
