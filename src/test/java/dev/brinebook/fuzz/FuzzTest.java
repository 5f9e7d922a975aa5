// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.contract.Committed;
import dev.brinebook.fuzz.Call.Options;
import dev.brinebook.fuzz.FuzzTarget.Aim;
import dev.brinebook.http.server.InMemory;
import dev.brinebook.http.server.InMemory.Reply;
import dev.brinebook.operation.water.ConvertHardness;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What fuzzing starts from, and all that it ever found, keeps the promises; and the promises are seen to be broken. */
class FuzzTest {

    private static final InMemory SERVICE = new InMemory();
    private static final Promises PROMISES = promises();
    private static final Operation<?, ?> CONVERT = ConvertHardness.OPERATION;
    private static final Call SMALLEST = Call.post(CONVERT.path(), Options.PLAIN, Operation.JSON,
            Way.utf8("{\"hardness\": {\"value\": 18.5, \"unit\": \"gpg\"}}"));

    /** Of the random ones; of the others there are fewer. */
    private static final int MOST_SEEDS = 5;

    @TempDir
    private Path folder;

    static Stream<Aim> aims() {
        return FuzzTarget.AIMS.stream();
    }

    static Stream<Arguments> found() {
        return Main.OPERATIONS.stream().flatMap(operation -> Seeds.found(operation).stream()
                .map(json -> Arguments.of(operation, json)));
    }

    @AfterAll
    static void stop() {
        SERVICE.close();
    }

    /** How long an answer takes is looked at where the machine does nothing else, by {@code .ci/fuzz}. */
    @ParameterizedTest
    @MethodSource("aims")
    void seedsKeepThePromises(Aim aim) throws IOException {
        Tally tally = new Tally(folder, Long.MAX_VALUE, false);
        Probe probe = new Probe(SERVICE, PROMISES, tally);
        List<byte[]> seeds = Seeds.of(aim.operation(), aim.way()).stream().limit(MOST_SEEDS).toList();
        for (byte[] seed : seeds) {
            probe.send(aim.operation(), aim.way(), seed[0] & 0xFF, Arrays.copyOfRange(seed, 1, seed.length));
        }
        assertTrue(tally.inputs() >= seeds.size(), "it sent them");
        assertEquals(List.of(), findings(), tally.lines());
        if (aim.way() != Way.RECORD) {
            assertTrue(tally.answered() > 0, "some are answered");
        }
    }

    @ParameterizedTest
    @MethodSource("found")
    void foundInputsBreakNoPromise(Operation<?, ?> operation, String json) throws IOException {
        new Probe(SERVICE, PROMISES, new Tally(folder, Long.MAX_VALUE, false)).send(operation, Way.BODY, 0, Way.utf8(json));
        assertEquals(List.of(), findings());
    }

    private List<String> findings() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().matches("finding.*txt")).map(FuzzTest::text).toList();
        }
    }

    @Test
    void everyOperationIsAimedAt() {
        Main.OPERATIONS.forEach(operation -> assertTrue(FuzzTarget.AIMS.stream().filter(aim -> aim.operation() == operation)
                .map(Aim::way).toList().containsAll(List.of(Way.BODY, Way.RECORD, Way.LINES)), operation.id()));
        assertEquals(Main.OPERATIONS.stream().filter(operation -> !operation.query().isEmpty()).count(),
                FuzzTarget.AIMS.stream().filter(aim -> aim.way() == Way.QUERY).count());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "summary"  | "sumary"
            "value":   | "value":"NaN","was":
            "summary":" | "summary":"NaN of
            "summary":" | "summary":"-Infinity,
            :          | :NaN,"a":
            }          | '}}'
            "value":18 | "value":1e400
            """)
    void seesAnAnswerThatIsNotAsTheContractSays(String wanted, String written) {
        Reply good = SERVICE.ask(SMALLEST.head(), SMALLEST.body());
        assertNull(PROMISES.broken(CONVERT, Way.BODY, SMALLEST, good));
        String body = new String(good.body(), StandardCharsets.UTF_8);
        String bad = body.replaceFirst(Pattern.quote(wanted), written);
        assertTrue(!bad.equals(body), "it changes something");
        assertNotNull(PROMISES.broken(CONVERT, Way.BODY, SMALLEST, new Reply(200, good.type(), Way.utf8(bad))));
    }

    @ParameterizedTest
    @CsvSource({"500,application/problem+json", "503,application/problem+json", "200,application/problem+json",
        "400,application/json", "404,text/html", "200,text/html", "201,application/json"})
    void seesAnotherStatusOrType(int status, String type) {
        Reply good = SERVICE.ask(SMALLEST.head(), SMALLEST.body());
        assertNotNull(PROMISES.broken(CONVERT, Way.BODY, SMALLEST, new Reply(status, type, good.body())));
    }

    @Test
    void seesALineWithoutAnAnswer() {
        Call lines = Way.LINES.call(CONVERT, 0, Way.utf8("{\"hardness\": {\"value\": 1, \"unit\": \"gpg\"}}\n\n{}\nno JSON"));
        Reply good = SERVICE.ask(lines.head(), lines.body());
        String body = new String(good.body(), StandardCharsets.UTF_8);
        assertNull(PROMISES.broken(CONVERT, Way.LINES, lines, good));
        assertEquals(3, body.split("\n").length);
        for (String bad : List.of(body.substring(body.indexOf('\n') + 1), body.replace("\"status\":422", "\"status\":500"),
                body.replace("\"answer\"", "\"problem\""), body.replace("\"summary\"", "\"sumary\""))) {
            assertNotNull(PROMISES.broken(CONVERT, Way.LINES, lines, new Reply(200, good.type(), Way.utf8(bad))));
        }
    }

    @Test
    void seesThatAnAnswerIsSlowAndStopsWhereItIsTo() throws IOException {
        byte[] body = SMALLEST.body();
        new Probe(SERVICE, PROMISES, new Tally(folder, -1, false)).send(CONVERT, Way.BODY, 0, body);
        assertTrue(findings().get(0).startsWith("took "));
        Probe thrown = new Probe(SERVICE, PROMISES, new Tally(folder, -1, true));
        assertThrows(AssertionError.class, () -> thrown.send(CONVERT, Way.BODY, 0, body));
    }

    @Test
    void aChangedByteChangesOneChoice() {
        byte[] bytes = {1, 2, 3, 4, 5, 6};
        BytesAsRandom one = new BytesAsRandom(bytes);
        bytes[2] = 77;
        BytesAsRandom other = new BytesAsRandom(bytes);
        assertEquals(one.nextInt(1_000), other.nextInt(1_000));
        assertTrue(one.nextInt(1 << 16) != other.nextInt(1 << 16));
        assertEquals(one.nextInt(1_000), other.nextInt(1_000));
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Promises promises() {
        return new Promises(Committed.contract());
    }
}
