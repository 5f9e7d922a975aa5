// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.brinebook.http.Served;
import dev.brinebook.quantity.HardnessUnit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The columns and the detail that callers ask for, in lists and tables. */
class TableFieldsTest {

    /** The columns wanted, in the order in which they are asked for; what every answer has comes behind. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fields=hardness.real.value,hardness.controllerSetting | hardness.real.value,hardness.controllerSetting.value,hardness.controllerSetting.unit,cautions,modelVersion
            fields=summary                                        | summary,cautions,modelVersion
            fields=cautions,summary                               | cautions,summary,modelVersion
            detail=numbers&fields=hardness.tested.value           | hardness.tested.value,cautions,modelVersion
            """)
    void answersTheFieldsAskedFor(String query, String columns) throws IOException {
        String csv = "water.hardness.value,water.hardness.unit,water.supply\r\n22,gpg,privateWell\r\n";
        String answer = AnySheetTest.post(query, csv, "text/csv").asString();
        assertEquals("line,status," + columns + ",problem.type,problem.detail,problem.message,problem.errors",
                answer.lines().findFirst().orElseThrow());
        CSVRecord whole = BulkTableTest.table(AnySheetTest.post("", csv, "text/csv").asString()).get(0);
        CSVRecord part = BulkTableTest.table(answer).get(0);
        Arrays.stream(columns.split(",")).filter(name -> !name.equals("cautions")).forEach(name -> assertEquals(whole.get(name),
                part.get(name)));
        assertTrue(part.get("cautions").contains("wellWithoutBacteriaTest"), "a warning is in every answer");
    }

    /** Every number that a single answer has in its list of units has a column. Sources: NIST SP 811 (grain, gallon), DIN 38409-6. */
    @ParameterizedTest
    @ValueSource(strings = {"", "detail=full", "detail=numbers", "fields=inEveryUnit", "fields=classes.usgs,inEveryUnit"})
    void aHardnessIsConvertedInATableToo(String query) throws IOException {
        String csv = "hardness.value;hardness.unit\r\n18,5;gpg\r\n";
        String answer = BulkTableTest.post("/v1/bulk/convertHardness?decimal=comma&" + query, csv, "text/csv").then().statusCode(200)
                .extract().asString();
        List<String> names = List.of(answer.lines().findFirst().orElseThrow().split(";"));
        List<String> cells = List.of(answer.lines().skip(1).findFirst().orElseThrow().split(";"));
        JsonNode single = BulkTableTest.JSON.readTree(Served.posting(Served.SMALLEST).post(Served.CONVERSION).asString());
        assertEquals(HardnessUnit.COUNT, single.path("inEveryUnit").size());
        single.path("inEveryUnit").forEach(one -> assertEquals(one.path("value").asText().replace('.', ','),
                cells.get(names.indexOf("inEveryUnit." + one.path("unit").asText()))));
        assertEquals("18,5", cells.get(names.indexOf("inEveryUnit.gpg")));
        assertEquals(18.5 * 17.118, Double.parseDouble(cells.get(names.indexOf("inEveryUnit.mg/L")).replace(',', '.')), 0.05);
    }

    /** What no column has is refused by its name, and not left out in silence. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            convertHardness    | inEveryUnit.value             | /fields/0
            convertHardness    | classes,basis                 | /fields/1
            compensateHardness | hardness.real,assumptions.value | /fields/1
            compensateHardness | hardness.otherControllerSettings | /fields/0
            """)
    void aFieldInAListHasNoColumn(String calculator, String fields, String pointer) {
        String path = "/v1/bulk/" + calculator + "?fields=" + fields;
        BulkTableTest.post(path, "units\r\n\r\n", "text/csv").then().statusCode(422).body("errors.pointer", equalTo(List.of(pointer)))
                .body("errors[0].message", containsString("A table has no column for `" + fields.substring(fields.indexOf(',') + 1) + "`"));
        Served.given().contentType("application/x-ndjson").body(new byte[0]).post(path).then().statusCode(200);
    }

    @ParameterizedTest
    @ValueSource(strings = {"numbers", "standard", "full"})
    void answersInTheDetailAskedFor(String detail) throws IOException {
        JsonNode line = BulkTableTest.objects(Served.given().contentType("application/x-ndjson").body(Served.SMALLEST
                .getBytes(StandardCharsets.UTF_8)).post("/v1/bulk/convertHardness?detail=" + detail).asString()).get(0);
        assertEquals(BulkTableTest.JSON.readTree(Served.posting(Served.SMALLEST).post(Served.CONVERSION + "?detail=" + detail).asString()),
                line.path("answer"));
    }
}
