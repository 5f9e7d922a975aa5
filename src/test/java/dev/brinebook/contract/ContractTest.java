// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.brinebook.Main;
import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.Operation;
import dev.brinebook.http.problem.ProblemType;
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
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The contract file: what is committed is what is served, and it leaves nothing undescribed (OpenAPI 3.1.0). */
class ContractTest {

    /** How {@code PropertySchemaWriter} states the unit of a plain number. */
    private static final Pattern TOLD_UNIT = Pattern.compile("\\. In [^.]+\\.");

    /**
     * Bytes as JSON without indent for each operation: what there is and a little room, so that what repeats itself is noticed. A closed
     * list that many records have is to be a {@code ListedOnce}.
     */
    private static final int MOST_FOR_EACH = 23 * 1024;

    private static BrinebookServer server;
    private static Contract made;
    private static JsonNode document;

    @BeforeAll
    static void start() throws IOException {
        if (Committed.WRITE) {
            writeExamples();
        }
        server = Committed.server();
        made = server.contract();
        document = Committed.tree(made.json());
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    /** What is served is a file of the jar: made by the same records and routes that the running service has. */
    @ParameterizedTest
    @ValueSource(strings = {"openapi.yaml", "openapi.json"})
    void theCommittedContractIsMadeOfWhatIsRoutedAndServed(String name) throws IOException {
        byte[] now = name.endsWith("yaml") ? made.yaml() : made.json();
        Path file = Committed.CONTRACT.resolve(name);
        Committed.assertHolds(file, new String(now, StandardCharsets.UTF_8));
        assertArrayEquals(now, Committed.get(server, "/" + name));
    }

    @Test
    void bothFormsAreTheSameContract() {
        assertTrue(document.equals(Committed.tree(Committed.contract())), "openapi.json is another contract than openapi.yaml");
    }

    /** A model or a viewer reads all of it before anything else. */
    @Test
    void isShort() {
        assertTrue(made.json().length <= MOST_FOR_EACH * Main.OPERATIONS.size(), made.json().length + " bytes");
    }

    @Test
    void documentsEveryOperationByItsId() {
        assertEquals("3.1.0", document.path("openapi").asText());
        assertTrue(document.at("/info/description").asText().contains("invented"));
        for (Operation<?, ?> operation : Main.OPERATIONS) {
            JsonNode path = document.path("paths").path(operation.path());
            assertEquals(operation.id(), path.at("/post/operationId").asText());
            assertEquals(operation.query().isEmpty(), path.path("get").isMissingNode());
            for (String part : List.of("/post/requestBody", "/post/responses/200")) {
                assertEquals(Set.copyOf(operation.examples()), names(path.at(part + "/content/application~1json/examples")));
            }
            for (String error : List.of("400", "406", "408", "413", "414", "415", "422", "431", "500", "503")) {
                assertTrue(path.at("/post/responses/" + error).has("$ref"), operation.id() + " " + error);
            }
        }
        List<String> ids = document.findValuesAsText("operationId");
        assertEquals(ids.size(), Set.copyOf(ids).size(), ids.toString());
    }

    @Test
    void describesEveryFormOfAnAnswerByAnExample() {
        int forms = 0;
        for (Operation<?, ?> operation : Main.OPERATIONS) {
            JsonNode content = document.path("paths").path(operation.path()).at("/post/responses/200/content");
            assertEquals(Set.copyOf(operation.answerMediaTypes()), names(content));
            for (AnswerForm<?> form : operation.forms()) {
                JsonNode shown = content.path(form.mediaType());
                assertEquals("string", shown.at("/schema/type").asText());
                assertTrue(shown.at("/schema/description").asText().length() > 60);
                assertTrue(operation.examples().contains(form.example()));
                assertEquals(form.isText() ? "" : "binary", shown.at("/schema/format").asText());
                assertEquals(form.isText(), shown.path("examples").path(form.example()).path("externalValue").isTextual());
                forms++;
            }
        }
        assertTrue(forms >= 2, "it saw some");
    }

    @Test
    void offersTheClosedListsOfTheQuery() {
        JsonNode unit = document.at("/paths/~1v1~1hardness-conversion/get/parameters/1");
        assertEquals("unit", unit.path("name").asText());
        assertEquals(document.at("/components/schemas/HardnessQuantity/properties/unit/enum"), unit.at("/schema/enum"));
        assertEquals(7, unit.at("/schema/enum").size());
    }

    @Test
    void leavesNoReferenceOpenAndNoSchemaUnused() {
        Set<String> references = new TreeSet<>(document.findValuesAsText("$ref"));
        for (String reference : references) {
            assertFalse(document.at(reference.substring(1)).isMissingNode(), reference);
        }
        for (String part : List.of("schemas", "responses", "headers")) {
            Set<String> used = references.stream().filter(reference -> reference.startsWith("#/components/" + part + "/"))
                    .map(reference -> reference.substring(reference.lastIndexOf('/') + 1))
                    .collect(Collectors.toCollection(TreeSet::new));
            assertEquals(names(document.path("components").path(part)), used);
        }
        assertTrue(references.size() > 20, "it saw some");
    }

    @Test
    void describesEverySchemaPropertyAndParameter() {
        List<String> bare = new ArrayList<>();
        document.at("/components/schemas").properties().forEach(schema -> {
            if (schema.getValue().path("description").asText().isBlank()) {
                bare.add(schema.getKey());
            }
            schema.getValue().path("properties").properties().forEach(property -> {
                if (!property.getValue().path("description").asText().endsWith(".")) {
                    bare.add(schema.getKey() + "." + property.getKey());
                }
            });
        });
        document.findValues("parameters").forEach(parameters -> parameters.forEach(parameter -> {
            JsonNode described = parameter.has("$ref") ? document.at(parameter.path("$ref").asText().substring(1)) : parameter;
            if (described.path("description").asText().isBlank() || !described.has("example")) {
                bare.add("parameter " + parameter);
            }
        }));
        assertEquals(List.of(), bare);
    }

    @Test
    void statesTheUnitOrTheRangeOfEveryNumber() {
        List<String> open = new ArrayList<>();
        document.at("/components/schemas").properties().forEach(schema -> {
            JsonNode properties = schema.getValue().path("properties");
            properties.properties().forEach(property -> {
                JsonNode facts = property.getValue();
                JsonNode number = facts.path("type").asText().equals("array") ? facts.path("items") : facts;
                boolean bounded = number.has("minimum") || number.has("exclusiveMinimum");
                boolean united = properties.has("unit") || TOLD_UNIT.matcher(facts.path("description").asText()).find();
                if (Set.of("number", "integer").contains(number.path("type").asText()) && !bounded && !united) {
                    open.add(schema.getKey() + "." + property.getKey());
                }
            });
        });
        assertEquals(List.of(), open);
    }

    /** Generated clients fill the keyword in: what the caller left out would come as if he had said it. */
    @Test
    void saysDefaultsInWordsAndNeverByTheKeyword() {
        String seed = document.at("/components/schemas/AssessmentRequest/properties/seed/description").asText();
        assertTrue(seed.endsWith("Default: 1."), seed);
        assertEquals(List.of(), document.path("components").findValues("default"));
    }

    @Test
    void statesTheUnitOrTheRangeOfEveryNumericParameter() {
        List<String> open = new ArrayList<>();
        int numbers = 0;
        for (JsonNode parameters : document.findValues("parameters")) {
            for (JsonNode parameter : parameters) {
                JsonNode schema = parameter.path("schema");
                boolean number = Set.of("number", "integer").contains(schema.path("type").asText());
                numbers += number ? 1 : 0;
                if (number && !schema.has("maximum") && !parameter.path("description").asText().matches(".* to \\d+ \\S+\\.")) {
                    open.add(parameter.toString());
                }
            }
        }
        assertEquals(List.of(), open);
        assertTrue(numbers >= 7, "it saw some");
    }

    /** A model, or a person, picks one of them by what it says of itself and of those that are like it. */
    @Test
    void saysOfEveryOperationWhenToChooseItAndWhenAnother() {
        Set<String> ids = Main.OPERATIONS.stream().map(Operation::id).collect(Collectors.toSet());
        int calculations = 0;
        for (JsonNode operation : document.path("paths").findParents("operationId")) {
            String id = operation.path("operationId").asText();
            String text = operation.path("description").asText();
            String summary = operation.path("summary").asText();
            assertTrue(summary.length() >= 8 && summary.length() <= 60 && !summary.endsWith("."), id + ": " + summary);
            assertTrue(text.length() > 100 && text.endsWith("."), id + ": " + text);
            if (operation.at("/tags/0").asText().equals("calculation")) {
                assertTrue(text.startsWith("Choose this "), id + ": " + text);
                assertTrue(ids.stream().anyMatch(other -> !id.equals(other) && text.contains(other)), id + ": " + text);
                calculations++;
            }
        }
        assertTrue(calculations > Main.OPERATIONS.size(), "it saw all");
    }

    @Test
    void shapesNoObjectWithoutAName() {
        List<String> inline = new ArrayList<>();
        document.at("/components/schemas").properties().forEach(schema ->
                schema.getValue().properties().forEach(part -> findObjects(part.getValue(), schema.getKey(), inline)));
        assertEquals(List.of(), inline);
        assertEquals(List.of(), document.path("paths").findValues("properties"), "operations refer to schemas by name");
    }

    private static void findObjects(JsonNode schema, String place, List<String> found) {
        boolean ofAnyShape = schema.path("additionalProperties").asBoolean(); // a case that another property gives the shape of
        if (schema.path("properties").isObject() || schema.path("type").asText().equals("object") && !ofAnyShape) {
            found.add(place + ": " + schema);
        }
        schema.forEach(part -> findObjects(part, place, found));
    }

    @Test
    void showsEveryErrorByAProblemThatTheServiceKnows() {
        ContractSchemas schemas = new ContractSchemas(made.json());
        JsonNode responses = document.at("/components/responses");
        assertEquals(14, responses.size());
        for (JsonNode response : responses) {
            if (response.path("description").asText().contains("If-None-Match")) {
                assertFalse(response.has("content"), "304 has no content (RFC 9110, section 15.4.5)");
                continue;
            }
            JsonNode examples = response.at("/content/application~1problem+json/examples");
            assertFalse(examples.isEmpty(), response.toString());
            examples.forEach(example -> assertIsKnown(example.path("value"), schemas));
        }
    }

    private static void assertIsKnown(JsonNode problem, ContractSchemas schemas) {
        assertEquals(List.of(), schemas.faults("Problem", problem));
        ProblemType type = Arrays.stream(ProblemType.values())
                .filter(known -> known.path().equals(problem.path("type").asText())).findFirst().orElseThrow();
        assertEquals(type.title().toString(), problem.path("title").asText());
        assertEquals(type.status(), problem.path("status").asInt());
    }

    /** What reads an answer can plan for its longest list. */
    @Test
    void boundsEveryList() {
        List<String> without = new ArrayList<>();
        document.at("/components/schemas").properties().forEach(schema -> schema.getValue().path("properties").properties().stream()
                .filter(one -> one.getValue().path("type").asText().equals("array") && !one.getValue().has("maxItems"))
                .forEach(one -> without.add(schema.getKey() + "." + one.getKey())));
        assertEquals(List.of(), without);
    }

    @Test
    void refusesUnknownPropertiesInRequestsOnly() {
        assertFalse(document.at("/components/schemas/HardnessConversionRequest/additionalProperties").asBoolean(true));
        assertTrue(document.at("/components/schemas/HardnessConversionAnswer/additionalProperties").isMissingNode());
    }

    private static Set<String> names(JsonNode object) {
        Set<String> names = new TreeSet<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }

    /** The contract embeds the answers, so they are written first. */
    private static void writeExamples() throws IOException {
        for (Operation<?, ?> operation : Main.OPERATIONS) { // the server reads every answer when it starts
            for (String name : operation.examples()) {
                for (String part : ExamplesTest.ANSWERS.keySet()) {
                    Path answer = Committed.EXAMPLES.resolve(operation.exampleFile(name, part));
                    if (Files.notExists(answer)) {
                        Committed.write(answer, "{}");
                    }
                }
            }
        }
        if (Files.notExists(Committed.EXAMPLES.resolve(ExplanationPath.EXAMPLE_FILE))) {
            Committed.write(Committed.EXAMPLES.resolve(ExplanationPath.EXAMPLE_FILE), "{}");
        }
        try (BrinebookServer answering = Committed.server()) {
            Committed.write(Committed.EXAMPLES.resolve(ExplanationPath.EXAMPLE_FILE), ExamplesTest.explanation(answering));
            for (Operation<?, ?> operation : Main.OPERATIONS) {
                for (String name : operation.examples()) {
                    byte[] request = Files.readAllBytes(Committed.EXAMPLES.resolve(operation.exampleFile(name, "request")));
                    for (Map.Entry<String, String> part : ExamplesTest.ANSWERS.entrySet()) {
                        Committed.write(Committed.EXAMPLES.resolve(operation.exampleFile(name, part.getKey())),
                                Committed.pretty(Committed.post(answering, operation.path() + part.getValue(), request)));
                    }
                }
                for (AnswerForm<?> form : operation.forms().stream().filter(AnswerForm::isText).toList()) {
                    byte[] request = Files.readAllBytes(Committed.EXAMPLES.resolve(
                            operation.exampleFile(form.example(), "request")));
                    Committed.write(Committed.EXAMPLES.resolve(operation.exampleFile(form)),
                            Committed.post(answering, operation.path(), request, form.mediaType()));
                }
            }
            for (Map.Entry<String, String> form : ExamplesTest.BULK_FORMS.entrySet()) {
                byte[] lines = Files.readAllBytes(Committed.EXAMPLES.resolve(BulkPaths.exampleFile("request", form.getValue())));
                Committed.write(Committed.EXAMPLES.resolve(BulkPaths.exampleFile("response", form.getValue())),
                        Committed.postLines(answering, lines, form.getKey(), form.getKey()));
            }
            for (Map.Entry<String, String> form : ExamplesTest.TEMPLATE_FORMS.entrySet()) {
                Committed.write(Committed.EXAMPLES.resolve(BulkPaths.templateFile(form.getValue())),
                        Committed.getTemplate(answering, form.getKey()));
            }
        }
    }
}
