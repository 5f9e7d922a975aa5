// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.brinebook.api.Operation;
import dev.brinebook.http.Served;
import io.restassured.response.Response;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The template of a table: whoever sends it back gets what the examples get (RFC 4180, read back by another's parser). */
class BulkTemplateTest {

    static Stream<Operation<?, ?>> flat() {
        return BulkTableTest.flat();
    }

    /** The template, sent back, is answered as the examples are; and its table says what the JSON does. */
    @ParameterizedTest
    @MethodSource("flat")
    void theTemplateIsAnsweredAsItsExamplesAre(Operation<?, ?> operation) throws IOException {
        String path = "/v1/bulk/" + operation.id();
        String template = Served.given().get(path + "/template").then().statusCode(200)
                .contentType("text/csv; charset=utf-8").extract().asString();
        List<JsonNode> lines = BulkTableTest.objects(BulkTableTest.post(path, template, "application/x-ndjson").asString());
        List<JsonNode> examples = new ArrayList<>();
        for (String name : operation.examples()) {
            examples.add(BulkTableTest.JSON.readTree(Files.readAllBytes(Path.of("openapi", "examples",
                    operation.exampleFile(name, "response")))));
        }
        assertTrue(lines.size() >= 1, "an example fits");
        for (JsonNode line : lines) {
            assertEquals(200, line.path("status").asInt(), line.toString());
            assertTrue(examples.contains(line.path("answer")), line.toString());
        }
        List<CSVRecord> rows = BulkTableTest.table(BulkTableTest.post(path, template, "text/csv").asString());
        assertEquals(lines.size(), rows.size());
        for (int i = 0; i < rows.size(); i++) {
            assertHolds(rows.get(i), lines.get(i).path("answer"));
        }
    }

    /** Every plain value of the answer that is in no list is in its cell, and every other cell is empty. */
    private static void assertHolds(CSVRecord row, JsonNode answer) {
        Set<String> compared = new HashSet<>(Set.of("line", "status"));
        assertCells(row, "", answer, compared);
        row.toMap().forEach((name, cell) -> assertTrue(compared.contains(name) || cell.isEmpty(), name + " is " + cell));
    }

    private static void assertCells(CSVRecord row, String prefix, JsonNode object, Set<String> compared) {
        object.properties().forEach(property -> {
            String name = prefix + property.getKey();
            JsonNode value = property.getValue();
            if (value.isObject()) {
                assertCells(row, name + ".", value, compared);
            } else if (value.isValueNode()) {
                assertEquals(value.asText(), row.get(name), name);
                compared.add(name);
            } else if (name.equals("cautions")) {
                assertEquals(String.join(";", value.findValuesAsText("code")), row.get(name));
                compared.add(name);
            } else if (value.path(0).has("unit") && row.isMapped(name + "." + value.path(0).path("unit").asText())) {
                value.forEach(one -> {
                    String column = name + "." + one.path("unit").asText();
                    assertEquals(one.path("value").asText(), row.get(column), column);
                    compared.add(column);
                });
            } else if (value.path(0).isValueNode() && row.isMapped(name)) {
                assertEquals(value.size(), row.get(name).split(";\\b", -1).length, name);
                compared.add(name);
            }
        });
    }

    @Test
    void theTemplateIsKeptAndSaysOfEachColumnWhatItHolds() {
        String path = "/v1/bulk/convertHardness/template";
        Response table = Served.given().get(path);
        Response list = Served.given().accept("application/json").get(path);
        assertEquals("public, max-age=300", list.header("Cache-Control"));
        assertFalse(table.header("ETag").equals(list.header("ETag")));
        assertTrue(table.headers().getValues("Vary").contains("Accept"));
        Served.given().accept("application/json").header("If-None-Match", list.header("ETag")).get(path).then().statusCode(304);
        assertEquals(table.header("ETag"), Served.given().head(path).header("ETag"));
        assertEquals(List.of(table.asString().lines().findFirst().orElseThrow().split(",")), list.path("columns.name"));
        Served.given().accept("image/png").get(path).then().statusCode(406);
        Response blend = Served.given().accept("application/json").get("/v1/bulk/blendHardness/template");
        assertEquals(true, blend.path("columns.find { it.name == 'residualHardness.value' }.required"));
        assertNull(blend.path("columns.find { it.name == 'household.fixtures' }"));
        assertEquals("numbersWithSemicolonsBetween", blend.path("columns.find { it.name == 'household.monthFactors' }.written"));
        assertTrue(blend.<String>path("columns.find { it.name == 'household.people' }.allowed").startsWith("from 1 to "));
    }
}
