// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Violation;
import dev.brinebook.api.WireNames;
import dev.brinebook.contract.Committed;
import dev.brinebook.http.Held;
import dev.brinebook.http.HttpText;
import dev.brinebook.http.RawHttp;
import dev.brinebook.http.Served;
import dev.brinebook.http.exchange.RequestId;
import dev.brinebook.http.limit.ConcurrencyLimiter;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.operation.water.HardnessConversionAnswer;
import dev.brinebook.operation.water.HardnessConversionRequest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The pages of problems show what the service really answers: each request goes over the wire exactly as in its file, and
 * its answer is held to the committed one. Only the request id, which differs each time, is the same in all.
 */
class ProblemExamplesTest {

    private static final Path FILES = Path.of("src/main/resources/dev/brinebook/docs/problems");
    private static final String REQUEST = ".request.txt";
    private static final String ID = "b1946ac92492d234";
    private static final Set<String> TELLING = Set.of("content-type", "allow", "accept-post", "accept-encoding", "retry-after",
            "www-authenticate", "ratelimit", "ratelimit-policy");
    private static final Pattern REPEATED = Pattern.compile("\\[(\\d+) times (.)]");

    static List<String> examples() throws IOException {
        try (Stream<Path> files = Files.list(FILES)) {
            return files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(REQUEST))
                    .map(name -> name.substring(0, name.length() - REQUEST.length())).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void theServiceAnswersWhatThePageShows(String name) throws Exception {
        String answer = switch (name) {
            case "internal-error" -> failing(name);
            case "overloaded" -> busy(name);
            case "request-timeout" -> impatient(name);
            case "calculation-too-long" -> hasty(name);
            case "unauthorized" -> unknown(name);
            case "too-many-requests" -> insistent(name);
            default -> send(Served.SERVER.port(), name);
        };
        Committed.assertHolds(FILES.resolve(name + ".answer.txt"), shown(answer));
    }

    @Test
    void everyKindOfProblemHasOne() throws IOException {
        Set<String> known = Arrays.stream(ProblemType.values()).map(ProblemType::slug)
                .collect(Collectors.toCollection(TreeSet::new));
        known.add("impossible-request");
        assertEquals(known, new TreeSet<>(examples()));
        for (ProblemType type : ProblemType.values()) {
            String answer = Files.readString(FILES.resolve(type.slug() + ".answer.txt"));
            assertTrue(answer.startsWith("HTTP/1.1 " + type.status() + " ") && answer.contains(type.path()), answer);
        }
    }

    @Test
    void everyCodeOfAFaultIsExplained() throws IOException {
        List<String> explained = Files.readAllLines(FILES.resolveSibling("fault-codes.txt")).stream().skip(2)
                .map(row -> row.substring(0, row.indexOf('|'))).toList();
        assertEquals(WireNames.all(Violation.Code.class), explained);
    }

    private static String failing(String name) {
        try (BrinebookServer server = converting(request -> null)) {
            return send(server.port(), name);
        }
    }

    private static String busy(String name) throws Exception {
        Held held = new Held(ConcurrencyLimiter.MOST_OF_ONE_CALLER);
        ExecutorService callers = Executors.newCachedThreadPool();
        try (BrinebookServer server = converting(request -> {
            held.hold(null);
            return null;
        })) {
            try {
                for (int i = 0; i < ConcurrencyLimiter.MOST_OF_ONE_CALLER; i++) {
                    callers.execute(() -> send(server.port(), name));
                }
                held.awaitBegun();
                return send(server.port(), name);
            } finally {
                held.letEnd();
            }
        } finally {
            callers.shutdown();
        }
    }

    private static String unknown(String name) throws IOException {
        Path keys = Files.writeString(Files.createTempFile("keys", ""), "shop:" + "0".repeat(64));
        try (BrinebookServer server = Served.guarded(0, keys.toString())) {
            return send(server.port(), name);
        } finally {
            Files.delete(keys);
        }
    }

    /** Sixty a minute, so that the next may come in a second. */
    private static String insistent(String name) {
        try (BrinebookServer server = Served.guarded(60, "")) {
            String answer = send(server.port(), name);
            while (answer.startsWith("HTTP/1.1 200 ")) {
                answer = send(server.port(), name);
            }
            return answer;
        }
    }

    /** The years that are asked for take longer on every machine. */
    private static String hasty(String name) {
        try (BrinebookServer server = Served.hasty(100)) {
            return send(server.port(), name);
        }
    }

    private static String impatient(String name) {
        try (BrinebookServer server = Served.impatient()) {
            return send(server.port(), name);
        }
    }

    /** A server with one operation, of the path that the requests name, and a calculation of the test. */
    private static BrinebookServer converting(
            Function<HardnessConversionRequest, HardnessConversionAnswer> calculation) {
        return Served.start(List.of(new Operation<>("convertHardness", Served.CONVERSION, "Convert", "For tests.",
                HardnessConversionRequest.class, HardnessConversionAnswer.class, calculation, List.of(), List.of())), 0,
                Set.of());
    }

    private static String send(int port, String name) {
        try {
            return send(port, Files.readAllBytes(FILES.resolve(name + REQUEST)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String send(int port, byte[] file) throws IOException {
        String request = new String(file, StandardCharsets.UTF_8);
        String[] parts = REPEATED.matcher(request).replaceAll(ProblemExamplesTest::repeat).split("\n\n", 2);
        List<String> head = new ArrayList<>(parts[0].lines().toList());
        String body = parts.length > 1 ? parts[1].strip() : "";
        String requestLine = head.remove(0);
        if (!body.isEmpty() && !parts[0].contains("Content-Length")) {
            head.add("Content-Length: " + body.getBytes(StandardCharsets.UTF_8).length);
        }
        String headers = head.stream().map(line -> line + "\r\n").collect(Collectors.joining());
        return RawHttp.send(port, requestLine, headers, body);
    }

    private static String repeat(MatchResult repeated) {
        return repeated.group(2).repeat(Integer.parseInt(repeated.group(1)));
    }

    /** Status line, telling headers and the document, an indent for each level. */
    private static String shown(String answer) throws IOException {
        List<String> lines = answer.substring(0, answer.indexOf("\r\n\r\n")).lines().toList();
        String head = Stream.concat(lines.stream().limit(1), lines.stream().skip(1)
                .filter(line -> TELLING.contains(line.substring(0, line.indexOf(':')).toLowerCase(java.util.Locale.ROOT))))
                .collect(Collectors.joining("\n"));
        String id = HttpText.headers(answer, RequestId.HEADER).get(0);
        assertEquals(id, new ObjectMapper().readTree(HttpText.body(answer)).path("requestId").asText());
        return head + "\n\n" + Committed.pretty(HttpText.body(answer).replace(id, ID).getBytes(StandardCharsets.UTF_8));
    }
}
