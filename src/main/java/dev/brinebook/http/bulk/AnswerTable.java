// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import dev.brinebook.api.CsvColumn;
import dev.brinebook.api.CsvColumns;
import dev.brinebook.api.FormulaGuard;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A row for each line, by RFC 4180: its number, its status, the plain values of the answer, its errors. Numbers are written
 * as in JSON; texts, which may be the caller's, so that no spreadsheet takes them for a formula.
 */
public final class AnswerTable implements AnswerLines {

    static final String MEDIA_TYPE = "text/csv";

    /** Columns before those of the answer. */
    static final List<String> FIRST = List.of("line", "status");
    /** Columns behind them. */
    static final List<String> LAST = List.of("problem.type", "problem.detail", "problem.errors");

    private static final ObjectMapper JSON = new ObjectMapper();

    private final JsonFactory parsers = new JsonFactory();
    private final List<String> names;
    private final Place root = new Place();
    private final StringWriter text = new StringWriter();
    private final CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).bufferSize(0).build(text);

    /** A place of the answer: its column, and the places below. */
    private static final class Place {
        private static final int NONE = -1;
        private final Map<String, Place> below = new HashMap<>();
        private int column = NONE;
    }

    AnswerTable(Class<? extends Record> answerType) {
        List<CsvColumn> columns = CsvColumns.ofAnswer(answerType);
        this.names = Stream.of(FIRST.stream(), columns.stream().map(CsvColumn::name), LAST.stream()).flatMap(part -> part).toList();
        for (int i = 0; i < columns.size(); i++) {
            Place place = root;
            for (String name : columns.get(i).path()) {
                place = place.below.computeIfAbsent(name, n -> new Place());
            }
            place.column = FIRST.size() + i;
        }
    }

    @Override
    public byte[] start() {
        return row(names.toArray(String[]::new));
    }

    @Override
    public byte[] answer(long line, byte[] answer) {
        String[] cells = cells(line, 200);
        try (JsonParser parser = parsers.createParser(answer)) {
            parser.nextToken();
            fill(cells, root, parser);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return row(cells);
    }

    @Override
    public byte[] problem(long line, int status, byte[] problem) {
        String[] cells = cells(line, status);
        int first = cells.length - LAST.size();
        try {
            JsonNode document = JSON.readTree(problem);
            List<String> errors = new ArrayList<>();
            document.path("errors").forEach(error -> errors.add(error(error.path("pointer").asText(),
                    error.path("message").asText())));
            cells[first] = FormulaGuard.of(document.path("type").asText());
            cells[first + 1] = FormulaGuard.of(document.path("detail").asText());
            cells[first + 2] = FormulaGuard.of(String.join("; ", errors));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return row(cells);
    }

    /** Names the place as the columns of a request are named. */
    private static String error(String pointer, String message) {
        return pointer.isEmpty() ? message : pointer.substring(1).replace('/', '.') + ": " + message;
    }

    private String[] cells(long line, int status) {
        String[] cells = new String[names.size()];
        cells[0] = Long.toString(line);
        cells[1] = Integer.toString(status);
        return cells;
    }

    /** Puts the values of the current object of the parser into the cells. */
    private static void fill(String[] cells, Place place, JsonParser parser) throws IOException {
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            Place here = place.below.get(parser.currentName());
            JsonToken value = parser.nextToken();
            if (here != null && value == JsonToken.START_OBJECT) {
                fill(cells, here, parser);
            } else if (here != null && here.column != Place.NONE) {
                cells[here.column] = value == JsonToken.START_ARRAY ? list(parser) : scalar(parser);
            } else {
                parser.skipChildren();
            }
        }
    }

    private static String scalar(JsonParser parser) throws IOException {
        return parser.currentToken() == JsonToken.VALUE_STRING ? FormulaGuard.of(parser.getText()) : parser.getText();
    }

    /** Plain values with semicolons between; of an object, which is a caution, its code. */
    private static String list(JsonParser parser) throws IOException {
        List<String> values = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            if (parser.currentToken() == JsonToken.START_OBJECT) {
                values.add(JSON.<JsonNode>readTree(parser).path("code").asText());
            } else {
                values.add(parser.getText());
            }
        }
        return FormulaGuard.of(String.join(CsvColumn.SEPARATOR, values));
    }

    private byte[] row(String... cells) {
        csv.writeRecord(cells);
        byte[] row = text.toString().getBytes(StandardCharsets.UTF_8);
        text.getBuffer().setLength(0);
        return row;
    }
}
