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
        assertEquals("No;Hard;water.supply;problem.line;problem.status;problem.type;problem.detail;problem.message;problem.errors",
                lines.get(0));
        assertTrue(lines.get(1).startsWith("2;-3,5;privatWell;3;422;/problems/invalid-request;"), faulty);
        assertTrue(lines.get(2).startsWith("3;x;;4;422;"), faulty);
        assertTrue(lines.get(3).startsWith("\"\"\"4;5;\";;;5;400;/problems/malformed-body;"), faulty);
        assertEquals(4, lines.size());
        String again = post(PATH + SHEET + "&only=faulty", "text/csv", "text/csv", faulty);
        assertEquals(columns(faulty, 3).subList(0, 3), columns(again, 3).subList(0, 3), "what is wrong stays as it was");
        String corrected = faulty.replace("-3,5", "3,5").replace("privatWell", "privateWell").replace("3;x", "3;20")
                .replace("\"\"\"4;5;\";;", "4;5;");
        assertEquals(1, post(PATH + SHEET + "&only=faulty", "text/csv", "text/csv", corrected).lines().count());
        List<CSVRecord> rows = rows(post(PATH + SHEET, "text/csv", "text/csv", corrected));
        assertEquals(List.of("200", "200", "200"), rows.stream().map(row -> row.get("status")).toList());
        assertEquals(List.of("2", "3", "4"), rows.stream().map(row -> row.get("No")).toList());
    }

    private static List<String> columns(String csv, int count) {
        return csv.lines().map(line -> String.join(";", List.of(line.split(";", -1)).subList(0, count))).toList();
    }

    /** A cell that would be run keeps the apostrophe that it got, and gets no other. */
    @Test
    void whatWasGuardedStaysAsItIs() {
        String rows = "No;Hard;x\r\n=1;-1;'a\r\n";
        String once = post(PATH + SHEET + "&only=faulty", "text/csv", "text/csv", rows);
        assertTrue(once.lines().toList().get(1).startsWith("'=1;-1;'a;2;422;"), once);
        assertEquals(once, post(PATH + SHEET + "&only=faulty", "text/csv", "text/csv", once));
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
        assertEquals(List.of(200, 200, 422, 422), again.stream().map(line -> line.path("status").asInt()).toList());
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
