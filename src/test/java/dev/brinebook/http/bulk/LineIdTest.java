// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.api.WireNames;
import dev.brinebook.contract.BulkParameter;
import dev.brinebook.http.Served;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Ids of the lines of a list. */
class LineIdTest {

    static List<Operation<?, ?>> operations() {
        return Main.OPERATIONS;
    }

    @ParameterizedTest
    @MethodSource("operations")
    void noRequestHasWhatALineHasItself(Operation<?, ?> operation) {
        List<String> names = Arrays.stream(operation.requestType().getRecordComponents()).map(one -> one.getName()).toList();
        assertTrue(names.stream().noneMatch(name -> name.equals(ObjectLines.ID) || name.equals(ObjectLines.REQUEST)
                || name.equals("problem")
                || WireNames.all(BulkParameter.class).contains(name)), "" + names);
    }

    /** An id stands beside the request, and comes back as it was sent. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {"id": "A\\u002d\\"17", "request": REQUEST}  | 200 | "A-\\"17"
            {"request": REQUEST, "id": 17.50}           | 200 | 17.50
            {"request": REQUEST}                        | 200 |
            REQUEST                                     | 200 |
            {"id": "=1", "request": {"hardness": 1}}    | 422 | "=1"
            {"id": [1], "request": REQUEST}             | 422 |
            {"id": 1, "request": REQUEST, "units": "us"} | 422 | 1
            {"id": 1, "hardness": {}}                   | 422 |
            {"id": 1, "request": REQUEST                | 400 |
            {"id": 1, "request": REQUEST} {}            | 400 |
            {"id": 1, "id": 2, "request": REQUEST}      | 400 |
            {"line": 9, "status": 422, "problem": {}, "id": "x", "request": REQUEST} | 200 | "x"
            """)
    void repeatsTheIdOfALine(String line, int status, String id) throws IOException {
        String sent = line.replace("REQUEST", Served.SMALLEST);
        String answer = Served.given().contentType("application/x-ndjson").body(sent.getBytes(StandardCharsets.UTF_8))
                .post("/v1/bulk/convertHardness").asString();
        String start = "{\"line\":1,\"status\":" + status + (id == null ? "" : ",\"id\":" + id) + (status == 200 ? ",\"answer\":"
                : ",\"problem\":");
        assertTrue(answer.startsWith(start), answer);
        String table = Served.given().contentType("application/x-ndjson").accept("text/csv").body(sent.getBytes(StandardCharsets.UTF_8))
                .post("/v1/bulk/convertHardness").asString();
        String plain = id == null ? "" : id.startsWith("\"") ? BulkTableTest.JSON.readTree(id).asText() : id;
        assertEquals(plain.startsWith("=") ? "'" + plain : plain, BulkTableTest.table(table).get(0).get("id"));
    }
}
