// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.brinebook.Main;
import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.CsvColumnsAnswer;
import dev.brinebook.api.ExplanationAnswer;
import dev.brinebook.api.Operation;
import dev.brinebook.http.server.BrinebookServer;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The examples are regressions: our own answers, which prove nothing but that a caller gets what the contract shows. The
 * schemas they are held to are read by another's validator (JSON Schema draft 2020-12).
 */
class ExamplesTest {

    /** Media types of a stream, and how the names of their files end. */
    static final Map<String, String> BULK_FORMS = Map.of(BulkPaths.NDJSON, "ndjson", BulkPaths.CSV, "csv");
    /** Parts of the committed files of an example, and the query that is answered by each. */
    static final Map<String, String> ANSWERS = Map.of("response", "", "explained", "?fields=assumptions,basis");
    static final Map<String, String> TEMPLATE_FORMS = Map.of(BulkPaths.CSV, "csv", "application/json", "json");

    private static BrinebookServer server;
    private static ContractSchemas schemas;

    @BeforeAll
    static void start() {
        server = Committed.server();
        schemas = new ContractSchemas(server.contract().json());
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    static Stream<Arguments> examples() {
        return Main.OPERATIONS.stream().flatMap(operation -> operation.examples().stream()
                .map(name -> Arguments.of(operation.id(), name, operation)));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("examples")
    void theServiceGivesTheCommittedAnswers(String id, String name, Operation<?, ?> operation) throws IOException {
        byte[] request = Files.readAllBytes(file(operation, name, "request"));
        schemas.assertValid(operation.requestType(), request);
        byte[] whole = Committed.post(server, operation.path() + "?detail=full", request);
        schemas.assertValid(operation.answerType(), whole);
        assertEquals(List.of(), Unexplained.in(Committed.tree(whole)), "numbers without a basis");
        assertEquals(List.of(), Assumed.faults(operation, Committed.tree(whole)));
        schemas.assertValid(operation.answerType(), Committed.post(server, operation.path(), request));
        for (Map.Entry<String, String> part : ANSWERS.entrySet()) {
            Committed.assertHolds(file(operation, name, part.getKey()),
                    Committed.pretty(Committed.post(server, operation.path() + part.getValue(), request)));
        }
    }

    static Stream<Arguments> forms() {
        return Main.OPERATIONS.stream().flatMap(operation -> operation.forms().stream().filter(AnswerForm::isText)
                .map(form -> Arguments.of(operation.id(), form.mediaType(), operation, form)));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("forms")
    void theServiceAnswersEveryFormAsItIsCommitted(String id, String mediaType, Operation<?, ?> operation,
            AnswerForm<?> form) throws IOException {
        byte[] request = Files.readAllBytes(file(operation, form.example(), "request"));
        Committed.assertHolds(Committed.EXAMPLES.resolve(operation.exampleFile(form)),
                Committed.post(server, operation.path(), request, mediaType));
    }

    static Stream<Arguments> bulkForms() {
        return BULK_FORMS.keySet().stream().flatMap(in -> BULK_FORMS.keySet().stream().map(out -> Arguments.of(in, out)));
    }

    /** Both examples hold the same requests, so whatever form they come in, the answers say the same. */
    @ParameterizedTest
    @MethodSource("bulkForms")
    void aStreamIsAnsweredAsItIsCommitted(String in, String out) throws IOException {
        byte[] lines = Files.readAllBytes(Committed.EXAMPLES.resolve(BulkPaths.exampleFile("request", BULK_FORMS.get(in))));
        String answers = Committed.postLines(server, lines, in, out);
        Path committed = Committed.EXAMPLES.resolve(BulkPaths.exampleFile("response", BULK_FORMS.get(out)));
        if (in.equals(out)) {
            Committed.assertHolds(committed, answers);
        } else {
            assertEquals(said(Files.readString(committed), out), said(answers, out));
        }
    }

    /** Status, summary and error of each answer. */
    private static List<String> said(String answers, String form) throws IOException {
        List<String> said = new ArrayList<>();
        if (form.equals(BulkPaths.CSV)) {
            try (CSVParser parser = CSVParser.parse(answers, CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get())) {
                parser.forEach(row -> said.add(row.get("status") + row.get("summary") + row.get("problem.detail")));
            }
            return said;
        }
        for (String line : answers.lines().toList()) {
            JsonNode answer = Committed.tree(line.getBytes(StandardCharsets.UTF_8));
            said.add(answer.path("status").asText() + answer.at("/answer/summary").asText() + answer.at("/problem/detail").asText());
        }
        return said;
    }

    @Test
    void theTemplateIsAnsweredAsItIsCommitted() throws IOException {
        for (Map.Entry<String, String> form : TEMPLATE_FORMS.entrySet()) {
            String template = Committed.getTemplate(server, form.getKey());
            Committed.assertHolds(Committed.EXAMPLES.resolve(BulkPaths.templateFile(form.getValue())), template);
        }
        schemas.assertValid(CsvColumnsAnswer.class, Committed.getTemplate(server, "application/json")
                .getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void theExplanationIsAnsweredAsItIsCommitted() throws IOException {
        String answer = explanation(server);
        schemas.assertValid(ExplanationAnswer.class, answer.getBytes(StandardCharsets.UTF_8));
        Committed.assertHolds(Committed.EXAMPLES.resolve(ExplanationPath.EXAMPLE_FILE), answer);
    }

    static String explanation(BrinebookServer answering) throws IOException {
        byte[] request = Files.readAllBytes(Committed.EXAMPLES.resolve(ExplanationPath.EXAMPLE_CALCULATOR + "."
                + ExplanationPath.EXAMPLE + ".request.json"));
        String query = ExplanationPath.EXAMPLE_POINTERS.stream().map(pointer -> "pointer=" + pointer).collect(Collectors.joining("&"));
        return Committed.pretty(Committed.post(answering, "/v1/explanation/" + ExplanationPath.EXAMPLE_CALCULATOR + "?" + query, request));
    }

    static Stream<Operation<?, ?>> operations() {
        return Main.OPERATIONS.stream();
    }

    @ParameterizedTest
    @MethodSource("operations")
    void everyOperationHasExamplesInBothSystemsOfUnits(Operation<?, ?> operation) throws IOException {
        assertTrue(operation.examples().size() >= 2, operation.id());
        boolean choosesUnits = Arrays.stream(operation.requestType().getRecordComponents())
                .anyMatch(component -> component.getName().equals("units"));
        if (choosesUnits) {
            Set<String> systems = new TreeSet<>();
            for (String name : operation.examples()) {
                JsonNode request = Committed.tree(Files.readAllBytes(file(operation, name, "request")));
                systems.add(request.path("units").asText("us"));
            }
            assertEquals(Set.of("metric", "us"), systems, operation.id());
        }
    }

    /** The oracle itself: it must refuse what is wrong, two references deep. */
    @Test
    void theValidatorSeesFaults() {
        byte[] faulty = "{\"hardness\": {\"value\": \"x\", \"unit\": \"lb\"}, \"z\": 1}".getBytes(StandardCharsets.UTF_8);
        assertEquals(3, schemas.faults("HardnessConversionRequest", Committed.tree(faulty)).size());
    }

    @Test
    void noFileIsLeftOver() throws IOException {
        Set<String> wanted = Main.OPERATIONS.stream().flatMap(operation -> operation.examples().stream().flatMap(
                name -> Stream.of(operation.exampleFile(name, "request"), operation.exampleFile(name, "response"),
                        operation.exampleFile(name, "explained"))))
                .collect(Collectors.toCollection(TreeSet::new));
        Main.OPERATIONS.forEach(operation -> operation.forms().stream().filter(AnswerForm::isText)
                .forEach(form -> wanted.add(operation.exampleFile(form))));
        BULK_FORMS.values().forEach(extension -> wanted.addAll(List.of(BulkPaths.exampleFile("request", extension),
                BulkPaths.exampleFile("response", extension))));
        TEMPLATE_FORMS.values().forEach(extension -> wanted.add(BulkPaths.templateFile(extension)));
        wanted.add(ExplanationPath.EXAMPLE_FILE);
        try (Stream<Path> files = Files.list(Committed.EXAMPLES)) {
            assertEquals(wanted, files.map(file -> file.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new)));
        }
    }

    private static Path file(Operation<?, ?> operation, String name, String part) {
        return Committed.EXAMPLES.resolve(operation.exampleFile(name, part));
    }
}
