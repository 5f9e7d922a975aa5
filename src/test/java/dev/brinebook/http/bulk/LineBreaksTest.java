// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.brinebook.http.limit.HeapPlan;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cells with line breaks: RFC 4180 section 2, rules 5 to 7. Read back by another's parser. */
class LineBreaksTest {

    private static final String PATH = "/v1/bulk/compensateHardness?set=water.hardness.unit:gpg&unknownColumns=pass";
    private static final String ADDRESS = "1 Oak St\r\n\"Rear\", 2nd floor\nAville";

    /** A stream that gives as many bytes at a time as it is told. */
    private static InputStream slow(byte[] bytes, int most) {
        return new ByteArrayInputStream(bytes) {
            @Override
            public synchronized int read(byte[] to, int start, int length) {
                return super.read(to, start, Math.min(length, most));
            }
        };
    }

    private static List<String> rows(byte[] text, String separators, int limit, int atOnce) throws IOException {
        BoundedLines lines = new BoundedLines(slow(text, atOnce), limit);
        RowScan scan = new RowScan(separators);
        List<String> rows = new ArrayList<>();
        for (BoundedLines.Line row = lines.next(scan); row != null; row = lines.next(scan)) {
            assertEquals(rows.size() + 1, row.number(), "numbered one by one");
            rows.add(row.bytes() == null ? "too long" : new String(row.bytes(), StandardCharsets.UTF_8));
        }
        return rows;
    }

    /** Rows of 20 bytes at most; a line feed is written N, a carriage return R, a semicolon S, and rows are parted by a bar. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '`', textBlock = """
            a,bNc,d                    ; a,b | c,d
            a,bNc,dN                   ; a,b | c,d
            a,"bNb",cNd                ; a,"bNb",c | d
            "aRN""bNN",cRNd            ; "aRN""bNN",cR | d
            "a",bNc                    ; "a",b | c
            a,bN"c                     ; a,b | "c
            a"b,cNd"                   ; a"b,c | d"
            a, "bNc"                   ; a, "b | c"
            "a" ,"bNc" N"d"            ; "a" ,"bNc"  | "d"
            "aNb"cNdNe                 ; "a | b"c | d | e
            "a"bN"c"N                  ; "a"b | "c"
            "a" "bN"c"N                ; "a" "b | "c"
            "aNbN"cN"d"                ; "a | b | "c | "d"
            "aNbNcN                    ; "a | b | c
            "aN                        ; "a
            "a"                        ; "a"
            "a""                       ; "a""
            NN"N"NN                    ; `` | `` | "N" | ``
            "23456789N12345678",       ; "23456789N12345678",
            "23456789N123456789",Na    ; "23456789 | 123456789", | a
            "aN123456789012345678901Nb ; "a | too long | b
            123456789012345678901Nb    ; too long | b
            \uFEFF"aNb"N\uFEFF"cNd     ; "aNb" | \uFEFF"c | d
            aS"bNc"                    ; aS"b | c"
            """)
    void findsTheRowsOfATable(String text, String expected) throws IOException {
        byte[] bytes = decoded(text).getBytes(StandardCharsets.UTF_8);
        List<String> rows = List.of(decoded(expected.replace("``", "")).split(" \\| ", -1));
        for (int atOnce : List.of(1, 2, 7, 100)) {
            assertEquals(rows, rows(bytes, ",", 20, atOnce), atOnce + " bytes at once");
        }
    }

    private static String decoded(String text) {
        return text.replace('N', '\n').replace('R', '\r').replace('S', ';');
    }

    /** What another's parser reads in one go is read row by row. */
    @Test
    void findsTheRowsThatAnotherParserFinds() throws IOException {
        String[] pieces = {"a", " ", ",", "\n", "\r\n", "\"x\"", "\"\n\"", "\"a\"\"\r\n,b\"", ",\"", "\",", "é"};
        int whole = 0;
        for (long seed = 1; seed <= 20_000; seed++) {
            Random random = new Random(seed);
            StringBuilder text = new StringBuilder();
            random.ints(1 + random.nextInt(12), 0, pieces.length).forEach(i -> text.append(pieces[i]));
            List<CSVRecord> records;
            try (var parser = CSVFormat.RFC4180.parse(new StringReader(text.toString()))) {
                records = parser.getRecords();
            } catch (IOException | RuntimeException notCsv) {
                continue;
            }
            List<List<String>> found = new ArrayList<>();
            for (String row : rows(text.toString().getBytes(StandardCharsets.UTF_8), ",", 1_000, 3)) {
                found.add(row.isEmpty() || row.equals("\r") ? List.of("") : RowReader.cells(row, RowReader.csv(',')));
            }
            assertEquals(records.stream().map(CSVRecord::toList).toList(), found, "seed " + seed + ": " + text);
            whole++;
        }
        assertTrue(whole > 5_000, "" + whole);
    }

    private static String quoted(String cell) {
        return '"' + cell.replace("\"", "\"\"") + '"';
    }

    @ParameterizedTest
    @CsvSource({"',',comma", "';',semicolon", "'\t',tab"})
    void passesLineBreaksOnAndCountsRows(String separator, String name) throws IOException {
        String csv = String.join(separator, quoted("Home\naddress"), "water.hardness.value") + "\r\n"
                + String.join(separator, quoted(ADDRESS), "22") + "\r\n\r\n"
                + String.join(separator, "plain", "\"\n23 \"") + "\n"
                + String.join(separator, quoted("\n"), "x");
        String answer = BulkTableTest.post(PATH, csv, "text/csv").then().header("Table-Separator", name).extract().asString();
        List<CSVRecord> rows = CSVFormat.RFC4180.builder().setDelimiter(separator).setHeader().setSkipHeaderRecord(true).get()
                .parse(new StringReader(answer)).getRecords();
        assertEquals(List.of("2", "4", "5"), rows.stream().map(row -> row.get("line")).toList());
        assertEquals(List.of("200", "200", "422"), rows.stream().map(row -> row.get("status")).toList());
        assertEquals(List.of("22", "23"), rows.stream().limit(2).map(row -> row.get("hardness.tested.value")).toList());
        assertEquals(List.of(ADDRESS, "plain", "'\n"), rows.stream().map(row -> row.get("Home\naddress")).toList());
        List<JsonNode> lines = BulkTableTest.objects(BulkTableTest.post(PATH, csv, "application/x-ndjson").asString());
        assertEquals(ADDRESS, lines.get(0).path("columns").path("Home\naddress").asText());
    }

    /** After a break the rest is the same, whether rows before it are sent again or as empty lines. */
    @Test
    void continuesFromARow() {
        String header = "Address,water.hardness.value\n";
        String[] sent = {quoted("a\nb") + ",10\n", "\n", "\"a,11\n", quoted("c\n\nd") + ",12\n", "e,13\n", quoted("f\r\ng") + ",14"};
        String all = BulkTableTest.post(PATH, header + String.join("", sent), "text/csv").asString();
        for (int from = 2; from <= sent.length + 1; from++) {
            StringBuilder empty = new StringBuilder();
            StringBuilder rest = new StringBuilder();
            for (int i = 0; i < sent.length; i++) {
                empty.append(i + 2 < from ? "\n" : sent[i]);
                rest.append(sent[i]);
            }
            String expected = all.substring(all.indexOf("\r\n" + (from == 3 ? 4 : from) + ",") + 2);
            assertEquals(expected, BulkTableTest.post(PATH + "&from=" + from, header + rest, "text/csv").asString(), "from " + from);
            assertEquals(expected, BulkTableTest.post(PATH + "&from=" + from, header + empty, "text/csv").asString(), "emptied, " + from);
        }
    }

    /** One stray quote costs one row, however long the table is. */
    @Test
    void anOpenQuoteIsTheErrorOfItsOwnRow() throws IOException {
        int behind = 2 * HeapPlan.MAX_LINE_BYTES / 5;
        List<CSVRecord> rows = BulkTableTest.table(BulkTableTest.post(PATH + "&mode=check", "Name,water.hardness.value\na,20\n\"a,20\n"
                + "b,20\n".repeat(behind), "text/csv").asString());
        assertEquals(List.of("3", "400"), List.of(rows.get(0).get("line"), rows.get(0).get("status")));
        assertTrue(rows.get(0).get("problem.detail").contains("A quote is not closed within 65,536 bytes"), rows.get(0).toString());
        assertEquals("summary", rows.get(1).get("status"));
        assertTrue(rows.get(1).get("problem.detail").contains(String.format(Locale.US, "%,d", behind + 1)), rows.get(1).toString());
    }

    /** What is to be corrected has the line breaks that it had, and is read again. */
    @Test
    void faultyRowsAreSentAgain() throws IOException {
        String csv = "Address,water.hardness.value\n" + quoted("a\r\nb") + ",-1\nc,20\n\"d,20\n";
        String faulty = BulkTableTest.post(PATH + "&only=faulty", csv, "text/csv").asString();
        List<CSVRecord> rows = BulkTableTest.table(faulty);
        assertEquals(List.of("a\r\nb", ""), rows.stream().map(row -> row.get("Address")).toList());
        assertEquals(List.of("", "\"d,20"), rows.stream().map(row -> row.get("problem.row")).toList());
        assertEquals(List.of("2", "4"), rows.stream().map(row -> row.get("problem.line")).toList());
        String again = BulkTableTest.post(PATH, faulty.replace(",-1,", ",21,"), "text/csv").asString();
        CSVRecord corrected = BulkTableTest.table(again).get(0);
        assertEquals(List.of("2", "200", "a\r\nb"), List.of(corrected.get("line"), corrected.get("status"), corrected.get("Address")));
    }
}
