// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.node.ObjectNode;
import de.siegmar.fastcsv.writer.CsvWriter;
import dev.brinebook.Main;
import dev.brinebook.api.CsvColumn;
import dev.brinebook.api.CsvColumns;
import dev.brinebook.api.Operation;
import dev.brinebook.http.RandomRequests;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A request written as a row is read as the same request, whatever it holds and in any order of columns. */
class RowReaderTest {

    private static final int REQUESTS = 200;
    private static final ObjectMapper JSON = new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .configure(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES, false);

    static Stream<Operation<?, ?>> flat() {
        return Main.OPERATIONS.stream().filter(operation -> CsvColumns.missing(operation.requestType()).isEmpty());
    }

    @ParameterizedTest
    @MethodSource("flat")
    void readsARowAsTheRequestThatItWasWrittenFrom(Operation<?, ?> operation) throws IOException {
        int cells = 0;
        for (long seed = 1; seed <= REQUESTS; seed++) {
            ObjectNode request = new RandomRequests(seed).request(operation.requestType());
            List<CsvColumn> columns = new ArrayList<>(CsvColumns.ofRequest(operation.requestType()));
            Collections.shuffle(columns, new Random(seed));
            ObjectNode held = JSON.createObjectNode();
            List<String> row = new ArrayList<>();
            for (CsvColumn column : columns) {
                String cell = cell(request.at("/" + String.join("/", column.path())));
                row.add(cell);
                if (!cell.isEmpty()) {
                    ObjectNode owner = held;
                    for (String name : column.path().subList(0, column.path().size() - 1)) {
                        owner = owner.withObject("/" + name);
                    }
                    owner.set(column.path().get(column.path().size() - 1), request.at("/" + String.join("/", column.path())));
                    cells++;
                }
            }
            byte[] line = write(row).getBytes(StandardCharsets.UTF_8);
            assertEquals(JSON.readTree(held.toString()), JSON.readTree(read(columns, line)), "seed " + seed);
        }
        assertTrue(cells > REQUESTS, "it saw some");
    }

    private static String read(List<CsvColumn> columns, byte[] line) throws IOException {
        List<TableColumn> all = columns.stream().map(column -> new TableColumn(column.name(), column, false, true)).toList();
        SentLine row = new RowReader(all, List.of(), TableForm.USUAL).read(new BoundedLines.Line(2, line));
        return JSON.readTree(row.request().get().parser(JSON)).toString();
    }

    private static String cell(JsonNode value) {
        List<String> values = new ArrayList<>();
        value.forEach(element -> values.add(element.asText()));
        return value.isArray() ? String.join(";", values) : value.asText();
    }

    private static String write(List<String> row) throws IOException {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().build(text)) {
            csv.writeRecord(row);
        }
        return text.toString().stripTrailing();
    }
}
