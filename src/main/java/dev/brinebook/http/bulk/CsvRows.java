// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import dev.brinebook.api.FormulaGuard;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Rows of a table, by RFC 4180, with the columns that describe errors. */
final class CsvRows {

    /** Columns of the error of a row: the first two for people, then all that JSON says of each error, as JSON. */
    static final List<String> PROBLEM = List.of("problem.type", "problem.detail", "problem.message", "problem.errors");

    private static final ObjectMapper JSON = new ObjectMapper();

    private final StringWriter text = new StringWriter();
    private final CsvWriter csv;

    CsvRows(char separator) {
        this.csv = CsvWriter.builder().fieldSeparator(separator).lineDelimiter(LineDelimiter.CRLF).bufferSize(0).build(text);
    }

    byte[] row(String... cells) {
        csv.writeRecord(cells);
        byte[] row = text.toString().getBytes(StandardCharsets.UTF_8);
        text.getBuffer().setLength(0);
        return row;
    }

    /** Puts what a problem document says into the last cells. */
    static void putProblem(String[] cells, byte[] problem) {
        int first = cells.length - PROBLEM.size();
        try {
            JsonNode document = JSON.readTree(problem);
            JsonNode errors = document.path("errors");
            StringBuilder message = new StringBuilder();
            errors.forEach(error -> message.append(message.isEmpty() ? "" : "; ").append(message(error)));
            cells[first] = FormulaGuard.of(document.path("type").asText());
            cells[first + 1] = FormulaGuard.of(document.path("detail").asText());
            cells[first + 2] = FormulaGuard.of(message.toString());
            cells[first + 3] = errors.isMissingNode() ? "" : FormulaGuard.of(errors.toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Names the column; of what is in no column, the place as the columns of a request are named. */
    private static String message(JsonNode error) {
        String pointer = error.path("pointer").asText();
        String place = error.path("column").asText(pointer.isEmpty() ? "" : pointer.substring(1).replace('/', '.'));
        return place.isEmpty() ? error.path("message").asText() : place + ": " + error.path("message").asText();
    }
}
