// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.brinebook.Main;
import dev.brinebook.api.CsvColumns;
import dev.brinebook.api.Operation;
import dev.brinebook.http.Served;
import dev.brinebook.http.Trial;
import dev.brinebook.http.limit.HeapPlan;
import dev.brinebook.http.server.BrinebookServer;
import dev.brinebook.text.Language;
import io.restassured.response.Response;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables of requests and answers: RFC 4180 and RFC 7111 (text/csv), read back by another's parser; RFC 8259 (numbers). */
class BulkTableTest {

    private static final String CONVERT = "/v1/bulk/convertHardness";
    private static final String HEADER = "hardness.value,hardness.unit\r\n";
    /** Numbers as they are written. */
    static final ObjectMapper JSON = JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES).build();

    static Stream<Operation<?, ?>> flat() {
        return Main.OPERATIONS.stream().filter(operation -> CsvColumns.missing(operation.requestType()).isEmpty());
    }

    @Test
    void readsRowsAsSpreadsheetsWriteThem() throws IOException {
        String rows = "\uFEFFhardness.unit,\"hardness.value\"\n\ngpg,18.5\r\n  \n\"gpg\",\"20\"\n,\ngpg,1e1";
        List<CSVRecord> answers = table(post(CONVERT, rows, "text/csv").asString());
        assertEquals(List.of("3", "5", "6", "7"), answers.stream().map(row -> row.get("line")).toList());
        assertEquals(List.of("200", "200", "422", "200"), answers.stream().map(row -> row.get("status")).toList());
        assertTrue(answers.get(0).get("summary").startsWith("18.5\u00a0gpg"));
        assertTrue(answers.get(3).get("summary").startsWith("10\u00a0gpg"));
        assertEquals("/problems/invalid-request", answers.get(2).get("problem.type"));
    }

    /** Answers have the form of the request unless Accept asks for the other, and each its own media type. */
    @Test
    void answersInTheFormOfTheRequestByDefault() {
        String line = Served.SMALLEST + "\n";
        assertTrue(post(CONVERT, HEADER + "1,gpg\r\n", "*/*").then().contentType("text/csv; charset=utf-8")
                .header("Vary", containsString("Accept")).extract().asString().startsWith("line,status,summary,"));
        Served.given().contentType("application/x-ndjson").accept("*/*").body(line.getBytes(StandardCharsets.UTF_8)).post(CONVERT)
                .then().statusCode(200).contentType("application/x-ndjson");
        String table = Served.given().contentType("application/x-ndjson").accept("text/csv")
                .body((line + "{\"=x\": 1}\n").getBytes(StandardCharsets.UTF_8)).post(CONVERT).then().statusCode(200)
                .extract().asString();
        assertTrue(table.lines().skip(1).findFirst().orElseThrow().startsWith("1,200,"));
        assertTrue(table.contains("'=x: Unknown field."), table);
        assertEquals(1, post(CONVERT, HEADER, "text/csv").asString().lines().count(), "no row, no answer");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', ignoreLeadingAndTrailingWhitespace = false, textBlock = """
            18.5|200
            -0|200
            1.85e1|200
            1E+1|200
             18.5|200
            18.5 |200
            018.5|422
            +18.5|422
            18.|422
            .5|422
            "18,5"|422
            1_8|422
            0x12|422
            NaN|422
            Infinity|422
            1e999|422
            １８|422
            true|422
            ="18.5"|422
            """)
    void readsNumbersAsJsonDoesAndNothingElse(String cell, int status) throws IOException {
        JsonNode answer = objects(post(CONVERT, HEADER + cell + ",gpg\n", "application/x-ndjson").asString()).get(0);
        assertEquals(status, answer.path("status").asInt(), answer.toString());
        if (status != 200) {
            assertEquals("/hardness/value", answer.at("/problem/errors/0/pointer").asText());
            assertEquals("wrongType", answer.at("/problem/errors/0/code").asText());
        }
    }

    /** A fault is that of its own row, whatever it is, also a quote that is never closed. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "1,gpg          | 400 | A quote is not closed
            "1"x,gpg        | 400 | text follows a closing quote
            1               | 400 | The row has 1 cell, the header has 2.
            1,gpg,          | 400 | The row has 3 cells
            1,gpgx          | 422 | 1 error
            {"hardness":1}  | 400 | The row has 1 cell
            """)
    void aBadRowEndsNothing(String row, int status, String detail) throws IOException {
        List<CSVRecord> answers = table(post(CONVERT, HEADER + "1,gpg\n" + row.strip() + "\n2,gpg\n", "text/csv").asString());
        assertEquals(List.of("200", Integer.toString(status), "200"), answers.stream().map(one -> one.get("status")).toList());
        assertTrue(answers.get(1).get("problem.detail").contains(detail), answers.get(1).toString());
        assertTrue(answers.get(2).get("summary").startsWith("2\u00a0gpg"));
    }

    @Test
    void neitherDoesOneThatIsTooLongOrNoText() throws IOException {
        String[] rows = {"\"" + "x".repeat(HeapPlan.MAX_LINE_BYTES) + "\",gpg", "1,\u0080",
            "x".repeat(4_097) + ",gpg", "1,gpg"};
        byte[] body = (HEADER + String.join("\n", rows)).getBytes(StandardCharsets.ISO_8859_1);
        List<CSVRecord> answers = table(Served.given().contentType("text/csv").body(body).post(CONVERT).asString());
        assertEquals(List.of("413", "400", "400", "200"), answers.stream().map(one -> one.get("status")).toList());
        assertTrue(answers.get(1).get("problem.detail").contains("not UTF-8"));
        assertTrue(answers.get(2).get("problem.detail").contains("`hardness.value` has more than 4,096 characters"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            compensateHardness | water.hardness.valu,water.hardness.unit | /water/hardness/valu | unknownField | Did you mean `water.hardness.value`?
            compensateHardness | hardnessUncertainty.value               | /hardnessUncertainty/value | unknownField | Did you mean `water.hardnessUncertainty.value`?
            compensateHardness | water.iron                              | /water/iron          | unknownField | such as `water.iron.value`
            compensateHardness | colour                                  | /colour              | unknownField | /v1/bulk/compensateHardness/template
            compensateHardness | units,units                             | /units               | inconsistent | Duplicate column
            compensateHardness | 'units,x;water.iron.value'              | /separator           | missing      | Say it with `separator`.
            assess             | household.fixtures                      | /household/fixtures  | unknownField | A list of objects or of quantities has none
            blendHardness      | units                                   | /residualHardness/unit | missing    | Missing in the header
            """)
    void aFaultyHeaderIsOneProblemOfTheWhole(String calculator, String header, String pointer, String code, String message) {
        post("/v1/bulk/" + calculator, header + "\r\n1,1\r\n", "text/csv").then().statusCode(422)
                .contentType("application/problem+json").body("errors.pointer", hasItem(pointer))
                .body("errors.find { it.pointer == '" + pointer + "' }.code", equalTo(code))
                .body("errors.find { it.pointer == '" + pointer + "' }.message", containsString(message));
    }

    @Test
    void soIsOneThatIsNotThere() {
        for (String body : List.of("", "\n \n")) {
            post(CONVERT, body, "*/*").then().statusCode(400).body("detail", containsString("must begin with a header row of columns"));
        }
        post(CONVERT, "\"a", "*/*").then().statusCode(400).body("detail", containsString("A quote is not closed"));
        post(CONVERT, "a".repeat(HeapPlan.MAX_LINE_BYTES + 1), "*/*").then().statusCode(413);
    }

    @Test
    void whatNoRowCanHoldTakesNoTable() {
        for (String calculator : List.of("readMeter", "estimatePeakFlow", "compareAlternatives", "readWaterReport",
                "verifyFleetSavings")) {
            post("/v1/bulk/" + calculator, "units\r\n", "*/*").then().statusCode(415)
                    .header("Accept-Post", "application/x-ndjson")
                    .body("detail", containsString("is a list, which does not fit into a cell"));
            Served.given().get("/v1/bulk/" + calculator + "/template").then().statusCode(404)
                    .body("detail", containsString("does not accept CSV"));
        }
        post("/v1/bulk/compareCases", "calculator\r\n", "*/*").then().statusCode(415);
        assertEquals(Main.OPERATIONS.size() - 6, flat().count());
        Served.given().get("/v1/bulk/nothing/template").then().statusCode(404);
    }

    /** A number may be below zero; a text that a spreadsheet would run may not be what it is. */
    @Test
    void guardsTextsAndNoNumbers() throws IOException {
        try (BrinebookServer server = Served.start(List.of(Trial.doing(request -> new Trial.Answer(request.text()))), 0,
                Set.of())) {
            String rows = "text\r\n=1+1\r\n@x\r\n-1\r\n'a\r\n\"a,\"\"b\"\r\na=b\r\n";
            String answer = Served.given(server.port()).contentType("text/csv").body(rows.getBytes(StandardCharsets.UTF_8))
                    .post("/v1/bulk/tryOut").asString();
            assertEquals(List.of("'=1+1", "'@x", "'-1", "''a", "a,\"b", "a=b"),
                    table(answer).stream().map(row -> row.get("got")).toList());
        }
        BulkOptions options = BulkQuery.read(null, Trial.Answer.class, false, true);
        AnswerLines table = new AnswerTable(new ObjectLines(), options, options.form(), options.columns(Trial.Answer.class),
                Language.ENGLISH);
        SentLine line = new ObjectLines().read(new BoundedLines.Line(1, "{}".getBytes(StandardCharsets.UTF_8)));
        byte[] number = table.answer(line, "{\"got\":-1.5}".getBytes(StandardCharsets.UTF_8));
        assertEquals("1,200,,-1.5,,,,\r\n", new String(number, StandardCharsets.UTF_8));
    }

    @Test
    void aListOfPlainValuesIsOneCell() {
        try (BrinebookServer server = Served.start(List.of(Trial.doing(Trial::echo)), 0, Set.of())) {
            String rows = "series,flag,part.count,seed\r\n1;2.5;3,true,2,\r\n4;x,TRUE,2.5,7\r\n5;,,,\r\n";
            List<JsonNode> answers = objects(Served.given(server.port()).contentType("text/csv").accept("application/x-ndjson")
                    .body(rows.getBytes(StandardCharsets.UTF_8)).post("/v1/bulk/tryOut").asString());
            assertEquals(List.of("/text"), pointers(answers.get(0)), "its list, flag and part are read");
            assertEquals(List.of("/part/count", "/series/1", "/text"), pointers(answers.get(1)));
            assertEquals(List.of("/series/1"), pointers(answers.get(2)));
        }
    }

    private static List<String> pointers(JsonNode line) {
        return line.at("/problem/errors").findValuesAsText("pointer");
    }

    static Response post(String path, String csv, String accept) {
        return Served.given().contentType("text/csv").accept(accept).body(csv.getBytes(StandardCharsets.UTF_8)).post(path);
    }

    static List<CSVRecord> table(String csv) throws IOException {
        try (CSVParser parser = CSVParser.parse(csv, CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get())) {
            return parser.getRecords();
        }
    }

    static List<JsonNode> objects(String lines) {
        return lines.lines().map(line -> {
            try {
                return JSON.readTree(line);
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        }).toList();
    }
}
