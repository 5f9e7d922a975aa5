// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.Main;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Rendering;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.contract.Unexplained;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.json.JsonWriter;
import dev.brinebook.http.problem.Problem;
import dev.brinebook.model.Model;
import dev.brinebook.text.ForeignWords;
import dev.brinebook.text.Language;
import dev.brinebook.text.Summaries;
import dev.brinebook.text.SummariesTest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No request that passes the checks makes a calculation fail, whatever corner of its ranges it comes from. */
class CornerSweepTest {

    private static final int REQUESTS = Integer.getInteger("requests", 100);
    private static final int REPAIRS = 12;
    /** Setting a sheet as PDF takes as long as hundreds of answers. */
    private static final int TYPESET_ONE_OF = 10;
    private static final Map<String, String> ENDS = Map.of("text/calendar", "\r\n", "text/csv", "\r\n", "text/html", "</html>\n",
            "application/pdf", "%%EOF\n");
    /**
     * Readings at random seldom fill a day (those that make sense are swept by {@code ReadingsFileTest}); names and blocks of
     * alternatives at random seldom fit each other, nor do hundreds of homes.
     */
    private static final Set<String> SELDOM_ANSWERED = Set.of("readMeter", "compareAlternatives", "verifyFleetSavings");
    private static final int RARE = REQUESTS / 50;
    private static final ObjectMapper JSON = new ObjectMapper();

    private final JsonReader reader = new JsonReader();
    private final JsonWriter writer = new JsonWriter();
    private final Random random = new Random(1);

    static Stream<Operation<?, ?>> operations() {
        return Main.OPERATIONS.stream();
    }

    @Execution(ExecutionMode.CONCURRENT)
    @ParameterizedTest
    @MethodSource("operations")
    <Q extends Record, A extends Record> void answersOrSaysWhyNot(Operation<Q, A> operation) {
        int answered = 0;
        for (long seed = 1; seed <= REQUESTS; seed++) {
            RandomRequests drawn = new RandomRequests(seed);
            ObjectNode request = drawn.request(operation.requestType());
            for (int i = 0; i < REPAIRS; i++) {
                try {
                    answer(operation, request);
                    answered++;
                    break;
                } catch (InvalidRequest invalid) {
                    readable(invalid, request);
                    if (invalid.violations().stream().allMatch(violation -> violation.code() == Code.IMPOSSIBLE)) {
                        break;
                    }
                    drawn.repair(request, operation.requestType(), invalid.violations());
                } catch (RuntimeException fault) {
                    fail(operation.id() + " seed " + seed + " fails on " + request, fault);
                }
            }
        }
        int wanted = SELDOM_ANSWERED.contains(operation.id()) ? RARE : REQUESTS / 5;
        assertTrue(answered > wanted, operation.id() + ": only " + answered + " of " + REQUESTS + " were answered");
    }

    private <Q extends Record, A extends Record> void answer(Operation<Q, A> operation, ObjectNode request) {
        Q read = reader.read(request.toString().getBytes(StandardCharsets.UTF_8), operation.requestType());
        A answer = operation.answer(read);
        List.of(Language.all().toArray(Language[]::new)).forEach(language -> writer.write(answer, language));
        JsonNode written = tree(writer.write(answer, ForeignWords.WITHOUT_LATIN));
        assertEquals(List.of(), Unexplained.in(written), () -> "numbers without a basis, of " + request);
        assertEquals(Set.of(), ForeignWords.in(written, request), () -> "texts that stay English, of " + request);
        JsonNode summary = tree(writer.write(answer, Language.ENGLISH)).path("summary");
        boolean inOwnSteps = request.toString().contains("Step\":"); // of a controller that no shop has
        assertEquals(List.of(), summary.isMissingNode() || inOwnSteps ? List.of() : Summaries.faults(summary.asText(),
                SummariesTest.given(request)),
                () -> "summary of " + request);
        operation.forms().stream().filter(form -> form.isText() || random.nextInt(TYPESET_ONE_OF) == 0).forEach(form -> {
            byte[] bytes = form.write().write(read, Model.CURRENT, Rendering.in(Language.ENGLISH));
            assertTrue(new String(bytes, StandardCharsets.UTF_8).endsWith(ENDS.get(form.mediaType())), form.mediaType());
        });
    }

    /** Faults are reported in the caller's language too. */
    private void readable(InvalidRequest invalid, ObjectNode request) {
        invalid.violations().forEach(fault -> assertEquals(Set.of(), ForeignWords.in(tree(writer.write(
                Problem.Fault.of(fault, null, null), ForeignWords.WITHOUT_LATIN)), request),
                () -> "texts that stay English, of " + request));
    }

    private static JsonNode tree(byte[] written) {
        try {
            return JSON.readTree(written);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
