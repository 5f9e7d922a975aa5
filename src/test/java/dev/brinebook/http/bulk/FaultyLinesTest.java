// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.brinebook.http.Served;
import dev.brinebook.http.Trial;
import dev.brinebook.http.server.BrinebookServer;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A dry run, and files of what is to be corrected. What is said of an error: RFC 9457, as for a single call. */
class FaultyLinesTest {

    private static final String PATH = "/v1/bulk/compensateHardness";
    private static final String SHEET = "?map=Hard:water.hardness&set=water.hardness.unit:gpg&unknownColumns=pass&decimal=comma";
    private static final String ROWS = "No;Hard;water.supply\r\n=1;22,5;privateWell\r\n2;-3,5;privatWell\r\n3;x;\r\n\"4;5;\r\n5;17;\r\n";

    private static String post(String path, String type, String accept, String body) {
        return Served.given().contentType(type).accept(accept).header("X-Request-Id", "same").body(body.getBytes(StandardCharsets.UTF_8))
                .post(path).then().statusCode(200).extract().asString();
    }

    @Test
    void aDryRunTellsEveryErrorAndCalculatesNothing() throws IOException {
        AtomicInteger calculated = new AtomicInteger();
        try (BrinebookServer server = Served.start(List.of(Trial.doing(request -> {
            calculated.incrementAndGet();
            return Trial.echo(request);
        })), 0, Set.of())) {
            String answer = Served.given(server.port()).contentType("text/csv").accept("application/x-ndjson")
                    .body("number\n1\n11\n\n12\nx\n\"\n".getBytes(StandardCharsets.UTF_8)).post("/v1/bulk/tryOut?mode=check").asString();
            List<JsonNode> lines = BulkTableTest.objects(answer);
            assertEquals(List.of(3, 5, 6, 7), lines.subList(0, 4).stream().map(line -> line.path("line").asInt()).toList());
            assertEquals("{\"lines\":5,\"ready\":1,\"faulty\":4,\"kinds\":["
                    + "{\"pointer\":\"/number\",\"column\":\"number\",\"code\":\"outOfRange\",\"lines\":2,\"firstLine\":3},"
                    + "{\"pointer\":\"/number\",\"column\":\"number\",\"code\":\"wrongType\",\"lines\":1,\"firstLine\":6},"
                    + "{\"code\":\"/problems/malformed-body\",\"lines\":1,\"firstLine\":7}],\"complete\":true}",
                    lines.get(4).path("summary").toString());
            assertEquals(5, lines.size());
            assertEquals(0, calculated.get());
        }
    }

    /** The errors that the dry run tells are those of the answers. */
    @Test
    void aDryRunTellsWhatTheAnswersWould() throws IOException {
        List<JsonNode> answered = BulkTableTest.objects(post(PATH + SHEET, "text/csv", "application/x-ndjson", ROWS));
        List<JsonNode> checked = BulkTableTest.objects(post(PATH + SHEET + "&mode=check", "text/csv", "application/x-ndjson", ROWS));
        assertEquals(answered.stream().filter(line -> line.path("status").asInt() != 200).toList(), checked.subList(0, checked.size() - 1));
        List<CSVRecord> table = BulkTableTest.table(post(PATH + SHEET + "&separator=comma&mode=check", "text/csv", "text/csv",
                ROWS.replace(',', '.').replace(';', ',').replace("22.5", "\"22,5\"").replace("-3.5", "\"-3,5\"")));
        CSVRecord last = table.get(table.size() - 1);
        assertEquals(List.of("", "summary", "5 rows checked: 2 without errors, 3 with errors."),
                List.of(last.get("line"), last.get("status"), last.get("problem.detail")));
        assertEquals(4, table.size());
    }

    /** As much is said of an error in a row as in JSON, and the column is the caller's. */
    @Test
    void aRowTellsOfAnErrorWhatJsonDoes() throws IOException {
        List<CSVRecord> rows = rows(post(PATH + SHEET, "text/csv", "text/csv", ROWS));
        JsonNode errors = BulkTableTest.JSON.readTree(rows.get(1).get("problem.errors"));
        String request = "{\"water\": {\"hardness\": {\"value\": -3.5, \"unit\": \"gpg\"}, \"supply\": \"privatWell\"}}";
        JsonNode single = BulkTableTest.JSON.readTree(Served.posting(request).post("/v1/compensated-hardness").asString()).path("errors");
        assertEquals(2, errors.size());
        assertEquals(List.of("Hard", "water.supply"), errors.findValuesAsText("column"));
        JsonNode problem = BulkTableTest.objects(post(PATH + SHEET, "text/csv", "application/x-ndjson", ROWS)).get(1).path("problem");
        assertEquals(PATH + "#same", problem.path("instance").asText(), "the path of the request (RFC 9457, section 3.1.5)");
        errors.forEach(error -> ((com.fasterxml.jackson.databind.node.ObjectNode) error).remove("column"));
        assertEquals(single, errors);
        assertEquals("Hard: " + single.at("/0/message").asText() + "; water.supply: " + single.at("/1/message").asText(),
                rows.get(1).get("problem.message"));
        assertEquals(Set.of("code", "message", "allowed", "received", "pointer", "didYouMean"), names(single));
    }

    private static Set<String> names(JsonNode errors) {
        Set<String> names = new java.util.HashSet<>();
        errors.forEach(error -> error.fieldNames().forEachRemaining(names::add));
        return names;
    }

    /** The file of rows to correct is taken again as it is; corrected, every row is answered and none is left. */
    @Test
    void theFaultyRowsAreSentAgainUntilNoneIsLeft() throws IOException {
        String faulty = post(PATH + SHEET + "&only=faulty", "text/csv", "text/csv", ROWS);
        List<String> lines = faulty.lines().toList();
        assertEquals("No;Hard;water.supply;problem.line;problem.status;problem.row;problem.type;"
                + "problem.detail;problem.message;problem.errors",
                lines.get(0));
        assertTrue(lines.get(1).startsWith("2;-3,5;privatWell;3;422;;/problems/invalid-request;"), faulty);
        assertTrue(lines.get(2).startsWith("3;x;;4;422;"), faulty);
        assertTrue(lines.get(3).startsWith(";;;5;400;\"\"\"4;5;\";/problems/malformed-body;"), faulty);
        assertEquals(4, lines.size());
        String again = post(PATH + SHEET + "&only=faulty", "text/csv", "text/csv", faulty);
        assertEquals(columns(faulty, 3).subList(0, 3), columns(again, 3).subList(0, 3), "what is wrong stays as it was");
        String corrected = faulty.replace("-3,5", "3,5").replace("privatWell", "privateWell").replace("3;x", "3;20")
                .replace(";;;5;400;\"\"\"4;5;\";", "4;5;;5;400;;");
        assertEquals(1, post(PATH + SHEET + "&only=faulty", "text/csv", "text/csv", corrected).lines().count());
        List<CSVRecord> rows = rows(post(PATH + SHEET, "text/csv", "text/csv", corrected));
        assertEquals(List.of("200", "200", "200"), rows.stream().map(row -> row.get("status")).toList());
        assertEquals(List.of("2", "3", "4"), rows.stream().map(row -> row.get("No")).toList());
    }

    /** A row that could not be read stays one to correct, for the same cause, until its values are in their columns. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "4;5;                | A quote is not closed within 65,536 bytes
            "4"x;5;              | text follows a closing quote
            4;5                  | The row has 2 cells, the header has 3.
            =4;5;privateWell;1   | The row has 4 cells, the header has 3.
            """)
    void whatIsNoRowStaysFaultyUntilItIsCorrected(String row, String cause) throws IOException {
        String address = PATH + SHEET + "&only=faulty";
        String faulty = post(address, "text/csv", "text/csv", "No;Hard;water.supply\r\n1;17;\r\n" + row + "\r\n");
        CSVRecord first = rows(faulty).get(0);
        assertEquals(List.of("", "", "", "3", "400"), first.toList().subList(0, 5));
        assertTrue(first.get("problem.row").endsWith(row), faulty);
        assertTrue(first.get("problem.detail").contains(cause), faulty);
        String again = post(address, "text/csv", "text/csv", faulty);
        assertEquals(List.of("2", "400", first.get("problem.row")), rows(again).get(0).toList().subList(3, 6));
        assertTrue(rows(again).get(0).get("problem.detail").matches("(?s).*" + java.util.regex.Pattern.quote(cause)
                + ".*then empty `problem.row`\\."), again);
        assertEquals(again, post(address, "text/csv", "text/csv", again), "however often");
        String filled = again.replace("\n;;;2;400;", "\n4;5;;2;400;");
        assertEquals(filled, post(address, "text/csv", "text/csv", filled), "both are there: which one is right?");
        assertEquals(List.of("2", "400", "4"), rows(post(PATH + SHEET, "text/csv", "text/csv", filled)).get(0).toList().subList(0, 3));
        String corrected = again.lines().findFirst().orElseThrow() + "\r\n4;5;;2;400;;;;;\r\n";
        assertEquals(List.of("2", "200", "4"), rows(post(PATH + SHEET, "text/csv", "text/csv", corrected)).get(0).toList().subList(0, 3));
    }

    /** Of a row that is too long nothing is left but that it was there. */
    @Test
    void neitherIsARowThatIsTooLongForgotten() throws IOException {
        String address = PATH + SHEET + "&only=faulty";
        String faulty = post(address, "text/csv", "text/csv", "No;Hard\r\n" + "x".repeat(70_000) + ";17\r\n");
        assertEquals(List.of("", "", "2", "413", "\u2026"), rows(faulty).get(0).toList().subList(0, 5));
        String again = post(address, "text/csv", "text/csv", faulty);
        assertEquals(List.of("", "", "2", "400", "\u2026"), rows(again).get(0).toList().subList(0, 5));
    }

    private static List<String> columns(String csv, int count) {
        return csv.lines().map(line -> String.join(";", List.of(line.split(";", -1)).subList(0, count))).toList();
    }

    /**
     * A cell that would be run has an apostrophe in front, which is taken off where the table is read; numbers, of telephones too
     * (the notation of ITU-T E.123), need none.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            =1                | '=1                | =1
            @x                | '@x                | @x
            +cmd('a')!A1      | '+cmd('a')!A1      | +cmd('a')!A1
            '=1               | '=1                | =1
            'a                | 'a                 | 'a
            ''=1              | ''=1               | ''=1
            +49 30 123        | +49 30 123         | +49 30 123
            +1 (555) 010-0199 | +1 (555) 010-0199  | +1 (555) 010-0199
            -3,5              | -3,5               | -3,5
            - 3               | - 3                | - 3
            -A1               | '-A1               | -A1
            '+49 30 123       | +49 30 123         | +49 30 123
            """)
    void aGuardedCellIsReadAsItWas(String cell, String written, String read) throws IOException {
        String rows = "=No;Hard\r\n" + cell + ";-1\r\n";
        String address = PATH + "?map=Hard:water.hardness&set=water.hardness.unit:gpg&pass=%3DNo";
        String once = post(address + "&only=faulty", "text/csv", "text/csv", rows);
        assertEquals(List.of(written, "-1", "2", "422"), rows(once).get(0).toList().subList(0, 4));
        assertEquals(once, post(address + "&only=faulty", "text/csv", "text/csv", once));
        String answered = post(address, "text/csv", "text/csv", once.replace(";-1;", ";1;"));
        assertEquals(List.of("2", "200", written), rows(answered).get(0).toList().subList(0, 3));
        JsonNode line = BulkTableTest.objects(post(address, "text/csv", "application/x-ndjson", once)).get(0);
        assertEquals(read, line.path("columns").path("=No").asText());
    }

    @Test
    void faultyLinesAreSentAgainToo() throws IOException {
        String path = "/v1/bulk/convertHardness?only=faulty";
        String wrong = Served.SMALLEST.replace("18.5", "-1");
        String sent = Served.SMALLEST + "\n{\"id\": 7, \"request\": " + wrong + "}\n" + wrong + "\n{x\n{\"id\": [], \"request\": 1}\n";
        String faulty = post(path, "application/x-ndjson", "*/*", sent);
        List<JsonNode> lines = BulkTableTest.objects(faulty);
        assertEquals(List.of(2, 3, 4, 5), lines.stream().map(line -> line.path("line").asInt()).toList());
        assertEquals(List.of("7", "", "", ""), lines.stream().map(line -> line.path("id").asText()).toList());
        JsonNode request = BulkTableTest.JSON.readTree(wrong);
        assertEquals(List.of(request, request), List.of(lines.get(0).path("request"), lines.get(1).path("request")));
        assertEquals("{x", lines.get(2).path("text").asText());
        assertEquals("{\"id\": [], \"request\": 1}", lines.get(3).path("text").asText());
        List<JsonNode> again = new ArrayList<>(BulkTableTest.objects(post(path.replace("?only=faulty", ""), "application/x-ndjson", "*/*",
                faulty.replace("-1,", "1,").replace("-1}", "1}"))));
        assertEquals(List.of(200, 200, 400, 422), again.stream().map(line -> line.path("status").asInt()).toList());
    }

    /** A line of which no request could be read stays one to correct, as it was. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            not json                         | 400
            {"request": {x}}                 | 400
            {"hardness": 1} "problem"        | 400
            [{"problem": 1, "text": "x"}]    | 422
            {"id": [], "request": 1}         | 422
            """)
    void whatIsNoRequestStaysFaultyUntilItIsCorrected(String sent, int status) throws IOException {
        String path = "/v1/bulk/convertHardness?only=faulty";
        String faulty = post(path, "application/x-ndjson", "*/*", sent + "\n");
        assertEquals(status, BulkTableTest.objects(faulty).get(0).path("status").asInt(), faulty);
        assertEquals(faulty, post(path, "application/x-ndjson", "*/*", faulty));
        assertEquals(faulty, post(path + "&mode=check", "application/x-ndjson", "*/*", faulty), "no sum, which would be sent again");
        JsonNode line = BulkTableTest.objects(faulty).get(0);
        if (line.has("text")) {
            assertEquals(sent, line.path("text").asText());
            ((com.fasterxml.jackson.databind.node.ObjectNode) line).put("text", Served.SMALLEST);
            assertEquals("", post(path, "application/x-ndjson", "*/*", line + "\n"));
        }
    }

    /** Of a line that is too long nothing is left but its problem, until it has a request. */
    @Test
    void neitherIsALineThatIsTooLongForgotten() throws IOException {
        String path = "/v1/bulk/convertHardness?only=faulty";
        String faulty = post(path, "application/x-ndjson", "*/*", "x".repeat(70_000) + "\n");
        assertTrue(faulty.startsWith("{\"line\":1,\"status\":413,\"problem\":"), faulty);
        String again = post(path, "application/x-ndjson", "*/*", faulty);
        assertTrue(again.startsWith("{\"line\":1,\"status\":422,\"problem\":"), again);
        assertEquals("Missing `request`.", BulkTableTest.objects(again).get(0).at("/problem/errors/0/message").asText());
        assertEquals(again, post(path, "application/x-ndjson", "*/*", again));
    }

    private static List<CSVRecord> rows(String semicolons) throws IOException {
        List<CSVRecord> rows = new ArrayList<>();
        try (var parser = org.apache.commons.csv.CSVParser.parse(semicolons, org.apache.commons.csv.CSVFormat.RFC4180.builder()
                .setDelimiter(';').setHeader().setSkipHeaderRecord(true).get())) {
            Iterator<CSVRecord> all = parser.iterator();
            all.forEachRemaining(rows::add);
        }
        return rows;
    }
}
