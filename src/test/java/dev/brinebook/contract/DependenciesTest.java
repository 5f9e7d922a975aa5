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
            # Inputs that move each result, found by changing every input of examples and of random requests; written by DependenciesTest.
            # * is any element of a list; an input that is a list is named as a whole.
            operation|result|inputs
            """;
    /** Operations whose rows are found again, as an expression: -Doperation=assess. */
    private static final Pattern WRITTEN = Pattern.compile(System.getProperty("operation", ".*"));
    private static final int RANDOM_REQUESTS = 20;
    /** Answers after which no other random request is drawn for an operation. */
    private static final int MOST_ANSWERS = 800;
    /** Other values tried for each input. */
    private static final int MOST_CHANGES = 3;

    static Stream<Operation<?, ?>> operations() {
        return Main.OPERATIONS.stream();
    }

    /** Every input of one example of each operation, changed once. */
    @ParameterizedTest
    @MethodSource("operations")
    @DisabledIfSystemProperty(named = "contract.write", matches = "true")
    void theTableHasEveryInputThatMovesAResult(Operation<?, ?> operation) {
        MovedResults moved = new MovedResults(operation, 1);
        moved.add(example(operation, operation.examples().get(0)));
        Map<String, Set<String>> table = Dependencies.of(operation.id()).stream().collect(Collectors.toMap(Row::pointer, Row::inputs));
        List<String> missing = new ArrayList<>();
        moved.inputs().forEach((result, inputs) -> inputs.stream().filter(input -> !table.getOrDefault(result, Set.of()).contains(input))
                .forEach(input -> missing.add(result + " rests on " + input)));
        assertEquals(List.of(), missing, "write the table with -Dcontract.write=true");
    }

    @Test
    @EnabledIfSystemProperty(named = "contract.write", matches = "true")
    void theTableIsWritten() throws IOException {
        Committed.assertHolds(TABLE, HEADER + Main.OPERATIONS.stream().sorted(Comparator.comparing(Operation::id)).toList()
                .parallelStream().map(operation -> WRITTEN.matcher(operation.id()).matches() ? rows(operation) : kept(operation))
                .collect(Collectors.joining()));
    }

    private static String kept(Operation<?, ?> operation) {
        return Dependencies.of(operation.id()).stream().map(row -> line(operation, row.pointer(), row.inputs())).collect(Collectors.joining());
    }

    private static String line(Operation<?, ?> operation, String result, Set<String> inputs) {
        return operation.id() + "|" + result + "|" + Dependencies.cell(inputs) + "\n";
    }

    private static String rows(Operation<?, ?> operation) {
        MovedResults moved = new MovedResults(operation, MOST_CHANGES);
        operation.examples().forEach(example -> moved.add(example(operation, example)));
        for (int seed = 0; seed < RANDOM_REQUESTS && moved.answers() < MOST_ANSWERS; seed++) {
            moved.addRandom(seed);
        }
        return moved.inputs().entrySet().stream().map(row -> line(operation, row.getKey(), row.getValue())).collect(Collectors.joining());
    }

    private static ObjectNode example(Operation<?, ?> operation, String name) {
        try {
            return (ObjectNode) Committed.tree(Files.readAllBytes(Committed.EXAMPLES.resolve(operation.exampleFile(name, "request"))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
