// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.api.CsvColumn;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.text.Message;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Turns the rows of a table into the bodies that single calls take. A row is a line: no text of a request may hold a line
 * break, so an open quote is an error of its own line only.
 */
final class RowReader {

    /** A number as JSON writes it, RFC 8259 section 6. */
    private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9]\\d*)(\\.\\d+)?([eE][+-]?\\d{1,2})?");

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private final List<CsvColumn> columns;

    RowReader(List<CsvColumn> columns) {
        this.columns = columns;
    }

    /**
     * The request body for a line; an empty cell is an omitted property.
     *
     * @throws ProblemException when the line is no row under the header
     */
    byte[] body(byte[] line) {
        List<String> cells = cells(JsonReader.decode(line));
        if (cells.size() != columns.size()) {
            throw malformed(Message.of("problem.http.rowCellHeaderRow",
                    cells.size(), columns.size()));
        }
        ObjectNode body = JSON.objectNode();
        for (int i = 0; i < cells.size(); i++) {
            if (!cells.get(i).isEmpty()) {
                put(body, columns.get(i), cells.get(i));
            }
        }
        return body.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void put(ObjectNode body, CsvColumn column, String cell) {
        if (cell.length() > JsonReader.MAX_STRING_LENGTH) {
            throw malformed(Message.of("problem.http.cellMoreThanCharacters", column.name(),
                    JsonReader.MAX_STRING_LENGTH));
        }
        ObjectNode parent = body;
        int last = column.path().size() - 1;
        for (String name : column.path().subList(0, last)) {
            ObjectNode below = (ObjectNode) parent.get(name);
            parent = below == null ? parent.putObject(name) : below;
        }
        String name = column.path().get(last);
        if (column.list()) {
            ArrayNode list = parent.putArray(name);
            Stream.of(cell.split(CsvColumn.SEPARATOR, -1)).forEach(element -> list.add(value(column, element)));
        } else {
            parent.set(name, value(column, cell));
        }
    }

    /** What is not written as its type is written in JSON stays a text, which the reader of JSON then refuses. */
    private static JsonNode value(CsvColumn column, String text) {
        if (column.isNumber() && text.length() <= JsonReader.MAX_NUMBER_LENGTH && NUMBER.matcher(text).matches()) {
            return JSON.numberNode(new BigDecimal(text));
        }
        if (column.type() == Boolean.class && (text.equals("true") || text.equals("false"))) {
            return JSON.booleanNode(text.equals("true"));
        }
        return JSON.textNode(text);
    }

    /** The cells of one line, by RFC 4180. */
    static List<String> cells(String line) {
        String row = line.endsWith("\r") ? line.substring(0, line.length() - 1) : line;
        try (CSVParser parser = CSVParser.parse(row, CSVFormat.RFC4180)) {
            List<CSVRecord> records = parser.getRecords();
            if (records.size() != 1) {
                throw malformed(Message.of("problem.http.rowLineBreakEach"));
            }
            return records.get(0).toList();
        } catch (UncheckedIOException e) {
            throw malformed(Message.of(
                    "problem.http.rowCsvQuoteClosed"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static ProblemException malformed(Message detail) {
        return new ProblemException(ProblemType.MALFORMED_BODY, detail);
    }
}
