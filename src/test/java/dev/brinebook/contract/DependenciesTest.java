// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.Main;
import dev.brinebook.api.Dependencies;
import dev.brinebook.api.Dependencies.Row;
import dev.brinebook.api.Operation;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledIfSystemProperty;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The table of what results rest on, held to what moves them. The write flag finds it again, from all examples and random requests. */
class DependenciesTest {

    private static final Path TABLE = Path.of("src/main/resources/dev/brinebook/api/dependencies.txt");
    private static final String HEADER = """
            # Inputs that can move results, found by changing every input of examples and random requests, with those of the results that
            # each is calculated from or chosen with; written by DependenciesTest.
            # * is any element of a list; an input that is a list is named as a whole.
            operation|results|inputs
            """;
    /** Operations whose rows are found again, as an expression: -Doperation=assess. */
    private static final Pattern WRITTEN = Pattern.compile(System.getProperty("operation", ".*"));
    private static final int RANDOM_REQUESTS = 20;
    /** Answers after which no other request is taken for an operation. */
    private static final int MOST_ANSWERS = 1000;
    /** A metric household with a well, a clock and ageing resin, which no example has. */
    private static final ObjectNode WELL = read(Path.of("src/test/resources/dependencies/well-metric.json"));

    static Stream<Operation<?, ?>> operations() {
        return Main.OPERATIONS.stream();
    }

    /** Every input of one example of each operation, changed once; results rest on what those rest on that they are calculated from. */
    @ParameterizedTest
    @MethodSource("operations")
    @DisabledIfSystemProperty(named = "contract.write", matches = "true")
    void theTableHasEveryInputThatMovesAResult(Operation<?, ?> operation) {
        MovedResults moved = new MovedResults(operation, false);
        moved.add(example(operation, operation.examples().get(0)));
        Map<String, Set<String>> table = Dependencies.of(operation.id()).stream().collect(Collectors.toMap(Row::pointer, Row::inputs));
        List<String> missing = new ArrayList<>();
        RestsOn.of(operation, moved.inputs()).forEach((result, inputs) -> inputs.stream()
                .filter(input -> !table.getOrDefault(result, Set.of()).contains(input))
                .forEach(input -> missing.add(result + " rests on " + input)));
        assertEquals(List.of(), missing, "write the table with -Dcontract.write=true");
    }

    @Test
    @EnabledIfSystemProperty(named = "contract.write", matches = "true")
    void theTableIsWritten() throws IOException {
        Committed.assertHolds(TABLE, HEADER + Main.OPERATIONS.stream().sorted(Comparator.comparing(Operation::id)).toList()
                .parallelStream().map(operation -> lines(operation, RestsOn.of(operation,
                        (WRITTEN.matcher(operation.id()).matches() ? found(operation) : kept(operation)).inputs())))
                .collect(Collectors.joining()));
    }

    /** What earlier runs saw, by other requests, stays; where the formulas changed, the rows of an operation are deleted first. */
    private static MovedResults kept(Operation<?, ?> operation) {
        MovedResults moved = new MovedResults(operation, true);
        moved.addKnown(Dependencies.of(operation.id()));
        return moved;
    }

    private static MovedResults found(Operation<?, ?> operation) {
        MovedResults moved = kept(operation);
        List<ObjectNode> requests = new ArrayList<>();
        operation.examples().forEach(example -> requests.add(example(operation, example)));
        requests.add(1, likeTheWell(operation, requests.get(1)));
        requests.forEach(request -> {
            if (moved.answers() < MOST_ANSWERS) {
                moved.add(request);
            }
        });
        for (int seed = 0; seed < RANDOM_REQUESTS && moved.answers() < MOST_ANSWERS; seed++) {
            moved.addRandom(seed);
        }
        return moved;
    }

    /** Results that rest on the same inputs on one line. */
    private static String lines(Operation<?, ?> operation, Map<String, Set<String>> rows) {
        Map<String, List<String>> results = new LinkedHashMap<>();
        rows.forEach((result, inputs) -> results.computeIfAbsent(Dependencies.cell(inputs), cell -> new ArrayList<>()).add(result));
        return results.entrySet().stream()
                .map(line -> operation.id() + "|" + String.join(" ", line.getValue()) + "|" + line.getKey() + "\n")
                .collect(Collectors.joining());
    }

    /** An example with every input of the well that the operation answers in its place. */
    private static ObjectNode likeTheWell(Operation<?, ?> operation, ObjectNode example) {
        ObjectNode like = example;
        for (String input : new InputChanges(WELL, operation.requestType()).given()) {
            ObjectNode next = new InputChanges(like, operation.requestType()).with(input, WELL.at(input));
            like = Assumed.find(operation.requestType(), input).isPresent() && MovedResults.isAnswered(operation, next) ? next : like;
        }
        return like;
    }

    private static ObjectNode example(Operation<?, ?> operation, String name) {
        return read(Committed.EXAMPLES.resolve(operation.exampleFile(name, "request")));
    }

    private static ObjectNode read(Path request) {
        try {
            return (ObjectNode) Committed.tree(Files.readAllBytes(request));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
