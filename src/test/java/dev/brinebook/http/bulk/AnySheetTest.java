// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.brinebook.Main;
import dev.brinebook.api.CsvColumns;
import dev.brinebook.api.WireNames;
import dev.brinebook.http.Served;
import dev.brinebook.quantity.Unit;
import io.restassured.response.Response;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables as people have them: RFC 4180 (cells), RFC 3986 section 2.1 (names in a query). Read back by another's parser. */
class AnySheetTest {

    private static final String PATH = "/v1/bulk/compensateHardness";

    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    static Response post(String query, String csv, String accept) {
        return BulkTableTest.post(query.isEmpty() ? PATH : PATH + "?" + query, csv, accept);
    }

    /** The hardness that a single cell comes to, with its unit, or the status where it is refused. */
    private static String tested(String query, String cell) throws IOException {
        String csv = "water.hardness.value\twater.hardness.unit\r\n" + cell + "\tmg/L\r\n";
        JsonNode line = BulkTableTest.objects(post("set=units:metric&" + query, csv, "application/x-ndjson").asString()).get(0);
        JsonNode value = line.at("/answer/hardness/tested/value");
        return value.isMissingNode() ? line.path("status").asText() : value.asText();
    }

    /**
     * Numbers as locales write them. Sources: CLDR 46, symbols of numbers of en and de (comma and point), fr (U+202F), de-CH (U+2019),
     * sv (U+00A0); a comma where nobody said what it is: refused, as it could be either.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', ignoreLeadingAndTrailingWhitespace = false, textBlock = """
            |18.5|18.5
            |1,250.5|422
            |18,5|422
            decimal=comma|18,5|18.5
            decimal=comma|18|18
            decimal=comma|18.5|422
            decimal=comma|1.250,5|422
            decimal=comma|1,2,5|422
            decimal=comma|1,85e2|185
            decimal=comma&thousands=point|1.250,5|1250.5
            decimal=comma&thousands=point|1.250|1250
            decimal=comma&thousands=point|1.25|422
            decimal=comma&thousands=point|12.50,5|422
            decimal=comma&thousands=point|0.250|422
            decimal=comma&thousands=space|1\u202F250,5|1250.5
            decimal=comma&thousands=space|1\u00A0250,5|1250.5
            decimal=comma&thousands=space|1 250,5|1250.5
            decimal=comma&thousands=space|1 250\u00A0001|422
            thousands=comma|1,250.5|1250.5
            thousands=comma|1,250|1250
            thousands=comma|18,5|422
            thousands=apostrophe|1\u2019250.5|1250.5
            thousands=apostrophe|1'250.5|1250.5
            |\u00A018.5 |18.5
            """)
    void readsNumbersAsTheQuerySaysAndNeverOtherwise(String query, String cell, String expected) throws IOException {
        assertEquals(expected, tested(query == null ? "" : query, cell));
    }

    /** What a cell may mean is said with its error, each reading with its number. */
    @Test
    void saysHowANumberThatIsNoneCouldBeRead() {
        post("", "water.hardness.value;water.hardness.unit\n1,250;gpg\n", "application/x-ndjson").then().body(
                containsString("Must be a number. Given: \\\"1,250\\\"."), containsString("With `decimal=point&thousands=comma` in "
                        + "the address"
                        + " it is 1250. With `decimal=comma` in the address it is 1.250."), containsString("\"received\":\"1,250\""),
                containsString("\"column\":\"water.hardness.value\""));
    }

    /** Units in any case, as far as that is clear: in every kind of quantity it is. */
    @Test
    void readsUnitsInAnyCase() throws IOException {
        Set<Class<?>> kinds = Main.OPERATIONS.stream().flatMap(operation -> CsvColumns.ofRequest(operation.requestType()).stream())
                .map(column -> column.type()).filter(Unit.class::isAssignableFrom).collect(Collectors.toSet());
        assertTrue(kinds.size() > 5, "" + kinds);
        for (Class<?> kind : kinds) {
            List<String> small = WireNames.all(kind).stream().map(symbol -> symbol.toLowerCase(Locale.ROOT)).toList();
            assertEquals(small.size(), Set.copyOf(small).size(), kind + " has two units that differ in case only");
        }
        String csv = "water.hardness.value,water.hardness.unit,water.iron.value,water.iron.unit\r\n22, GPG ,0.2,MG/l\r\n22,gp,,\r\n";
        List<CSVRecord> rows = BulkTableTest.table(post("", csv, "text/csv").asString());
        assertEquals("22", rows.get(0).get("hardness.tested.value"));
        assertEquals("422", rows.get(1).get("status"));
        assertTrue(rows.get(1).get("problem.errors").contains("\"didYouMean\":\"gpg\""), rows.get(1).toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            water.hardness.value,water.hardness.unit  | 22,gpg     |                     | comma
            water.hardness.value;water.hardness.unit  | 22;gpg     |                     | semicolon
            \uFEFFwater.hardness.value;"water.hardness.unit" | "22";gpg |                | semicolon
            H,x;water.hardness.unit;water.hardness.value | a;gpg;22 | unknownColumns=pass | semicolon
            water.hardness.value;water.hardness.unit  | 22;gpg     | separator=semicolon | semicolon
            Härte;E                                   | 22;gpg     | map=H%C3%A4rte:water.hardness&map=E:water.hardness.unit | semicolon
            """)
    void findsTheSeparatorInTheHeaderRow(String header, String row, String query, String separator) throws IOException {
        Response answer = post(query == null ? "" : query, header + "\r\n" + row + "\r\n", "text/csv");
        assertEquals(separator, answer.header("Table-Separator"));
        String csv = answer.asString();
        assertTrue(csv.lines().skip(1).findFirst().orElseThrow().startsWith(separator.equals("comma") ? "2,200," : "2;200;"), csv);
    }

    /** The form of the answer is that of the request: the same separator and decimal sign. */
    @Test
    void answersAsTheTableIsWritten() {
        String csv = "Kunde;Härte\r\n\"Müller; Söhne\";17,25\r\n";
        String answer = post("decimal=comma&map=" + encoded("Härte:water.hardness") + "&set=water.hardness.unit:gpg&pass=Kunde&fields="
                + "hardness.tested", csv, "text/csv").asString();
        assertEquals("line;status;Kunde;hardness.tested.value;hardness.tested.unit;cautions;modelVersion;problem.type;problem.detail;"
                + "problem.message;problem.errors", answer.lines().findFirst().orElseThrow());
        assertTrue(answer.contains("2;200;\"Müller; Söhne\";17,25;gpg;"), answer);
    }

    /** Columns of the caller come back as they were, beside the answer; a text that a spreadsheet would run does not. */
    @Test
    void passesColumnsThrough() throws IOException {
        String csv = "Customer, no;status,=cmd,water.hardness.value\r\n007,\" a \"\"b\"\" \",=1+1,22\r\n-3,@x,'=1,23\r\n";
        String query = "separator=comma&set=water.hardness.unit:gpg&unknownColumns=pass";
        Response answer = post(query, csv.replace("Customer, no;status", "Customer no,status"), "text/csv");
        assertEquals("Customer%20no, status, %3Dcmd", answer.header("Passed-Columns"));
        List<CSVRecord> rows = BulkTableTest.table(answer.asString());
        assertEquals(List.of("007", " a \"b\" ", "'=1+1"), List.of(rows.get(0).get("Customer no"), rows.get(0).get("passed.status"),
                rows.get(0).get("'=cmd")));
        assertEquals(List.of("-3", "'@x", "'=1"), List.of(rows.get(1).get("Customer no"), rows.get(1).get("passed.status"),
                rows.get(1).get("'=cmd")));
        JsonNode line = BulkTableTest.objects(post(query, csv.replace("Customer, no;status", "Customer no,status"),
                "application/x-ndjson").asString()).get(0);
        assertEquals("{\"Customer no\":\"007\",\"status\":\" a \\\"b\\\" \",\"=cmd\":\"=1+1\"}", line.path("columns").toString());
    }

    /** A value that is set is written as the cells are. Source of 4 gpg for each mg/L: common practice. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            decimal=comma                  | 1,5     | 1.5
            decimal=comma&thousands=point  | 0,25    | 0.25
            thousands=comma                | 1.5     | 1.5
            decimal=point                  | 1.5     | 1.5
            """)
    void readsAValueThatIsSetAsItReadsCells(String query, String value, double iron) throws IOException {
        JsonNode line = BulkTableTest.objects(post(query + "&set=water.hardness.unit:gpg&set=water.iron.unit:mg/L&set=water.iron.value:"
                + value, "water.hardness.value\r\n22\r\n", "application/x-ndjson").asString()).get(0);
        assertEquals(4 * iron, line.at("/answer/hardness/iron/value").asDouble(), 0.001, line.toString());
    }

    /** A unit that is the same for all is left out where there is no number. */
    @Test
    void setsAUnitWhereThereIsANumber() throws IOException {
        String csv = "water.hardness.value,water.iron.value\r\n22,0.5\r\n22,\r\n22, \r\n";
        List<CSVRecord> rows = BulkTableTest.table(post("set=water.hardness.unit:gpg&set=water.iron.unit:mg/L", csv,
                "text/csv").asString());
        assertEquals(List.of("200", "200", "200"), rows.stream().map(row -> row.get("status")).toList());
        assertEquals(List.of("2", "0", "0"), rows.stream().map(row -> row.get("hardness.iron.value")).toList());
    }

    /** A value that is set is in its range or not by what the columns say: each row has its own error. */
    @Test
    void aValueWithAUnitOfItsOwnRowIsCheckedThere() throws IOException {
        String csv = "water.hardness.value,water.hardness.unit,water.temperature.unit\r\n22,gpg,F\r\n22,gpg,C\r\n22,gpg,\r\n";
        List<CSVRecord> rows = BulkTableTest.table(post("set=water.temperature.value:70", csv, "text/csv").asString());
        assertEquals(List.of("200", "422", "422"), rows.stream().map(row -> row.get("status")).toList());
    }

    /** Every error of the query or the header row is one problem of the whole, and names what it is about. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            map=H:water.hardnes&set=water.hardness.unit:gpg | H | /map/water.hardnes | Did you mean `water.hardness.value`?
            map=Hard:water.hardness        | H | /map/Hard       | no column of this name
            map=H:water.hardness&map=H:water.iron | H | /map/1    | H
            map=H:water.hardness&map=I:water.hardness | H,I | /water/hardness/value | Given by "H" and by "I"
            set=water.hardness.unit:gpg    | water.hardness.value,water.hardness.unit | /set/water.hardness.unit | Keep one
            set=water.hardness.units:gpg   | units | /set/water.hardness.units | Did you mean `water.hardness.unit`?
            set=water.hardness.unit:gpx    | water.hardness.value | /set/water.hardness.unit | Must be one of mg/L, gpg
            set=units:imperial             | water.hardness.value,water.hardness.unit | /set/units | us, metric
            set=water.ph:acid              | water.hardness.value,water.hardness.unit | /set/water.ph | Must be a number
            set=water.ph:7,5               | water.hardness.value,water.hardness.unit | /set/water.ph | Given: "7,5". With `decimal=comma` in the address it is 7.5
            set=water.ph:7.5&decimal=comma | water.hardness.value,water.hardness.unit | /set/water.ph | Given: "7.5". With `decimal=point` in the address it is 7.5
            set=water.ph:15                | water.hardness.value,water.hardness.unit | /set/water.ph | Given: 15
            set=water.iron.value:-1&set=water.iron.unit:mg/L | water.hardness.value,water.hardness.unit | /set/water.iron.value | Must be from 0 to 100\u00A0mg/L
            map=H                          | H | /map/0          | a colon and a property
            set=units                      | H | /set/0          | a colon and a value
            pass=Custommer                 | Customer,units | /pass/Custommer | Did you mean "Customer"?
            unknownColumns=pass            | a,b |                 | No column is a property
            unknownColumns=drop            | units | /unknownColumns | refuse, pass
            mapp=H:units                   | H | /mapp           | Did you mean `map`?
            separator=%3B                  | units | /separator  | comma, semicolon, tab
            decimal=comma&thousands=comma  | units | /thousands  | differ from the decimal sign
            mode=check&mode=check          | units | /mode       | more than once
            from=0                         | units | /from       | number of a line
            from=1.5                       | units | /from       | number of a line
            fields=hardness.tested,sumary  | units | /fields/1   | Did you mean `summary`?
            detail=much                    | units | /detail     | numbers, standard, full
                                           | units, units | /units | Duplicate
            """)
    void refusesWhatIsNotClear(String query, String header, String pointer, String message) {
        String found = "errors.find { it.pointer == '" + (pointer == null ? "" : pointer) + "' }.";
        Response answer = post(query == null ? "" : query, header + "\r\n1\r\n", "text/csv");
        answer.then().statusCode(422).body(found + "message", containsString(message));
        String parameter = answer.path(found + "parameter");
        assertEquals(query == null || pointer == null || pointer.startsWith("/water") ? null : pointer.split("/")[1], parameter);
    }

    @Test
    void saysOfTablesNothingWhereThereIsNone() {
        for (String query : List.of("map=a:units", "set=units:us", "pass=a", "unknownColumns=pass", "separator=tab", "decimal=comma",
                "thousands=point")) {
            Served.given().contentType("application/x-ndjson").body("{}".getBytes(StandardCharsets.UTF_8)).post(PATH + "?" + query).then()
                    .statusCode(422).body("errors[0].parameter", equalTo(query.split("=")[0])).body("errors[0].message",
                    containsString("Only tables"));
        }
    }

    /** Tables made to hurt: each is one problem, or the error of its own row. */
    @Test
    void withstandsTablesMadeToHurt() throws IOException {
        String many = IntStream.range(0, 10_000).mapToObj(i -> "c" + i).collect(Collectors.joining(","));
        post("unknownColumns=pass", many + "\n1\n", "text/csv").then().statusCode(422).body("errors[0].message",
                containsString("The table has 10,000 columns. At most 1,000"));
        post("", many.substring(0, many.indexOf(",c900")) + "\n1\n", "text/csv").then().statusCode(422).body("errorsOmitted", equalTo(75));
        post("unknownColumns=pass", "x".repeat(70_000), "text/csv").then().statusCode(413);
        String names = "units," + IntStream.range(0, 900).mapToObj(i -> "n" + i).collect(Collectors.joining(","));
        Response wide = post("unknownColumns=pass&set=water.hardness.value:22&set=water.hardness.unit:gpg", names + "\nus"
                + ",y".repeat(900)
                + "\n", "text/csv");
        assertTrue(wide.header("Passed-Columns").length() <= 2_000);
        assertEquals("y", BulkTableTest.table(wide.asString()).get(0).get("n899"));
        post("map=" + "%E4".repeat(3) + ":units", "units\nus\n", "text/csv").then().statusCode(400);
        List<CSVRecord> rows = BulkTableTest.table(post("set=water.hardness.unit:gpg", "water.hardness.value,units\n" + "1".repeat(70_000)
                + "\n22,us\n", "text/csv").asString());
        assertEquals(List.of("413", "200"), rows.stream().map(row -> row.get("status")).toList());
    }
}
