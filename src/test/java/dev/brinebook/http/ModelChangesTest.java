// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.Main;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.AnswerValues;
import dev.brinebook.api.Operation;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.json.JsonWriter;
import dev.brinebook.model.Model;
import dev.brinebook.model.ModelChange;
import dev.brinebook.source.Table;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** What each change of the model does, and that the version before answers as it did when it was the current one. */
class ModelChangesTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final JsonReader READER = new JsonReader();
    private static final JsonWriter WRITER = new JsonWriter();

    /** Each change alone makes one number of one version that of the other. */
    @ParameterizedTest
    @CsvFileSource(resources = "/http/model-changes.csv", delimiter = '|', useHeadersInDisplayName = true)
    void aChangeAloneMovesItsNumber(String id, String calculator, String file, String pointer, double before, double after)
            throws IOException {
        ModelChange change = EnumSet.allOf(ModelChange.class).stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
        byte[] request = request(file);
        assertEquals(before, number(calculator, request, Model.PREVIOUS, pointer), "the version before");
        assertEquals(after, number(calculator, request, Model.PREVIOUS.toggling(change), pointer), "with this change alone");
        assertEquals(before, number(calculator, request, Model.CURRENT.toggling(change), pointer), "with all but this change");
        assertEquals(after, number(calculator, request, Model.CURRENT, pointer), "the current version");
    }

    /** Operations that the version before does not have, and the one that asks the others. */
    private static final Set<String> LATER = Set.of("compareCases", "readWaterReport", "reduceFieldMeasurements", "checkInstallation",
            "planCommissioning", "diagnoseComplaint", "verifySavings", "verifyFleetSavings", "planUpkeep");

    @Test
    void everyChangeHasANumber() {
        Set<String> tested = new TreeSet<>();
        Table.read("/http/model-changes.csv", '|', 7).forEach(row -> tested.add(row[0]));
        assertEquals(new TreeSet<>(EnumSet.allOf(ModelChange.class).stream().map(ModelChange::id).toList()), tested);
    }

    /** The digests were taken of the answers of that version's own build. */
    @ParameterizedTest
    @CsvFileSource(resources = "/http/numbers-of-2.2.0.csv", delimiter = '|', useHeadersInDisplayName = true)
    void theVersionBeforeKeepsItsNumbers(String example, int values, String digest) throws Exception {
        String calculator = example.substring(0, example.indexOf('.'));
        var answered = AnswerValues.of(answer(operation(calculator), TestServer.example(example).getBytes(StandardCharsets.UTF_8),
                Model.PREVIOUS));
        assertEquals(values, answered.size());
        assertEquals(digest, HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(
                answered.values().stream().map(ModelChangesTest::written).toList().toString().getBytes(StandardCharsets.UTF_8)), 0, 12));
    }

    /** A value as that build wrote it, when a flag was a code. */
    private static String written(AnswerValues.Value value) {
        return "Value[pointer=" + value.pointer() + ", number=" + value.number() + ", unit=" + value.unit() + ", code="
                + (value.flag() == null ? value.code() : value.flag()) + "]";
    }

    @Test
    void readsEveryRow() {
        assertEquals(Main.OPERATIONS.stream().filter(one -> !LATER.contains(one.id())).mapToInt(one -> one.examples().size()).sum(),
                Table.read("/http/numbers-of-2.2.0.csv", '|', 3).size());
    }

    /** A metric controller is set in steps of 0.1 kg (common practice), so every dose advised is a number of them. */
    @ParameterizedTest
    @CsvSource({"2.3.0, true", "2.2.0, false"})
    void dosesOfNewBedsCanBeSet(String version, boolean settable) throws IOException {
        ObjectNode request = (ObjectNode) JSON.readTree(TestServer.example("sizeSoftener.apartment"));
        JsonNode answer = json("sizeSoftener", request.toString().getBytes(StandardCharsets.UTF_8), Model.of(version).orElseThrow());
        int whole = 0;
        int all = 0;
        for (JsonNode candidate : answer.at("/candidates")) {
            double steps = candidate.at("/saltDose/value").asDouble() * candidate.at("/resinVolume/value").asDouble() / 100;
            all++;
            whole += Math.abs(steps - Math.rint(steps)) < 1e-3 ? 1 : 0;
        }
        assertTrue(all > 5, "it saw some");
        assertEquals(settable, whole == all, whole + " of " + all);
    }

    /** The flows that assumptions list give the answer when they are sent back, but for the six digits that they are written with. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # example              | supply, L/min
            well-family            | 0
            apartment              | 0
            apartment-potassium    | 0
            well-family            | 1.2
            apartment              | 0.4
            apartment-potassium    | 0.3
            """)
    void assumedFlowsCanBeSentBack(String example, double supply) throws IOException {
        ObjectNode request = (ObjectNode) JSON.readTree(TestServer.example("designCycle." + example));
        ObjectNode flows = request.withObject("/softener/flows");
        if (supply > 0) {
            flows.putObject("supply").put("value", supply).put("unit", "L/min");
        }
        for (Model model : Model.CALLABLE) {
            JsonNode answer = json("designCycle", request.toString().getBytes(StandardCharsets.UTF_8), model);
            ObjectNode sent = request.deepCopy();
            for (String flow : List.of("brineDraw", "brineSuction")) {
                JsonNode assumed = Stream.of(answer.at("/assumptions")).flatMap(list -> list.valueStream())
                        .filter(one -> one.path("pointer").asText().equals("/softener/flows/" + flow)).findFirst().orElseThrow();
                sent.withObject("/softener/flows").putObject(flow).set("value", assumed.get("value"));
                sent.withObject("/softener/flows/" + flow).set("unit", assumed.get("unit"));
            }
            JsonNode again = json("designCycle", sent.toString().getBytes(StandardCharsets.UTF_8), model);
            double worst = Stream.of("/cycle/water/value", "/brine/dilutedPercent", "/brine/motiveWater/value", "/brine/contactMinutes")
                    .mapToDouble(at -> Math.abs(again.at(at).asDouble() / answer.at(at).asDouble() - 1)).max().orElseThrow();
            assertEquals(model == Model.CURRENT, worst < 3e-5, model.version() + " is off by " + worst);
        }
    }

    @Test
    void togglingAChangeTwiceIsNothing() {
        for (ModelChange change : ModelChange.values()) {
            assertNotEquals(Model.CURRENT, Model.CURRENT.toggling(change));
            assertEquals(Model.CURRENT, Model.CURRENT.toggling(change).toggling(change));
            assertEquals(List.of(change), Model.CURRENT.differencesTo(Model.CURRENT.toggling(change)));
        }
    }

    private static byte[] request(String file) throws IOException {
        try (InputStream own = ModelChangesTest.class.getResourceAsStream("/http/" + file)) {
            return own != null ? own.readAllBytes() : TestServer.example(file).getBytes(StandardCharsets.UTF_8);
        }
    }

    private static double number(String calculator, byte[] request, Model model, String pointer) throws IOException {
        JsonNode number = json(calculator, request, model).at(pointer);
        assertTrue(number.isNumber(), pointer);
        return number.asDouble();
    }

    private static JsonNode json(String calculator, byte[] request, Model model) throws IOException {
        return JSON.readTree(WRITER.write(answer(operation(calculator), request, model)));
    }

    private static Operation<?, ?> operation(String id) {
        return Main.OPERATIONS.stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    }

    private static <Q extends Record, A extends Record> A answer(Operation<Q, A> operation, byte[] request, Model model) {
        return operation.answer(READER.read(request, operation.requestType()), model, AnswerParts.ALL);
    }
}
