// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.api.CsvColumn;
import dev.brinebook.api.FormulaGuard;
import dev.brinebook.api.Violation;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.limit.HeapPlan;
import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.text.Message;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Turns the rows of a table into the requests that single calls take. */
final class RowReader implements RequestLines {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private final List<TableColumn> columns;
    private final List<Constant> constants;
    private final TableForm form;
    private final CSVFormat csv;
    private final RowScan scan;
    private final int[] repeated;
    private final int[] own;
    private final int[] unread;

    /**
     * A value that every row has.
     *
     * @param column what it is of a request
     * @param text the value
     * @param amount index of the column with the number that it is the unit of, left out where that cell is blank; −1 when there is none
     */
    record Constant(CsvColumn column, String text, int amount) {
    }

    RowReader(List<TableColumn> columns, List<Constant> constants, TableForm form) {
        this.columns = List.copyOf(columns);
        this.constants = List.copyOf(constants);
        this.form = form;
        this.csv = csv(form.separator());
        this.scan = new RowScan(String.valueOf(form.separator()));
        this.repeated = places(TableColumn::repeated);
        this.own = places(TableColumn::own);
        this.unread = places(column -> !column.own() && column.name().equals(FaultyRows.UNREAD));
    }

    private int[] places(Predicate<TableColumn> wanted) {
        return IntStream.range(0, columns.size()).filter(i -> wanted.test(columns.get(i))).toArray();
    }

    static CSVFormat csv(char separator) {
        return CSVFormat.RFC4180.builder().setDelimiter(separator).get();
    }

    /** How the table is written. */
    TableForm form() {
        return form;
    }

    @Override
    public BoundedLines.Line next(BoundedLines lines) throws IOException {
        return lines.next(scan);
    }

    @Override
    public SentLine read(BoundedLines.Line line) {
        try {
            if (line.bytes() == null) {
                throw new ProblemException(ProblemType.BODY_TOO_LARGE, BulkStream.TOO_LONG);
            }
            List<String> cells = cells(JsonReader.decode(line.bytes()), columns.size()).stream().map(FormulaGuard::removedFrom).toList();
            return new SentLine(line.number(), line.bytes(), pick(cells, repeated), cells, null, () -> {
                refuseUnread(unread(cells));
                return JsonReader.tree(row(cells));
            });
        } catch (ProblemException noRow) {
            return SentLine.faulty(line, noRow);
        }
    }

    private List<String> cells(String row, int count) {
        List<String> cells = plainCells(row).orElseGet(() -> cells(row, csv));
        if (cells.size() != count) {
            throw malformed(Message.of("problem.http.rowCellHeaderRow", cells.size(), count));
        }
        return cells;
    }

    /** The cells of a row that has none in quotes and is on one line: what is between its separators. Nothing for another. */
    private Optional<List<String>> plainCells(String row) {
        int end = row.endsWith("\r") ? row.length() - 1 : row.length();
        List<String> cells = new ArrayList<>(columns.size());
        int start = 0;
        for (int i = 0; i < end; i++) {
            char sign = row.charAt(i);
            if (sign == form.separator()) {
                cells.add(row.substring(start, i));
                start = i + 1;
            } else if (sign == '"' || sign == '\r' || sign == '\n') {
                return Optional.empty();
            }
        }
        cells.add(row.substring(start, end));
        return Optional.of(cells);
    }

    /** The text of an earlier row that these cells stand for, as it could not be read; empty when there is none. */
    String unread(List<String> cells) {
        return unread.length == 0 ? "" : Blanks.strip(cells.get(unread[0]));
    }

    /** A row that could not be read stays faulty, for the same cause, until its values are in their columns. */
    private void refuseUnread(String row) {
        if (row.isEmpty()) {
            return;
        }
        List<Message> sentences = new ArrayList<>();
        try {
            if (!row.equals(FaultyRows.LEFT_OUT)) {
                cells(row, columns().size());
            }
        } catch (ProblemException cause) {
            sentences.add(cause.detail());
        }
        sentences.add(Message.of("rowReader.writeValuesIntoColumns", FaultyRows.UNREAD));
        throw malformed(Message.sentences(sentences));
    }

    /** The request in a row; a blank cell is an omitted property. */
    private ObjectNode row(List<String> cells) {
        ObjectNode body = JSON.objectNode();
        for (int i = 0; i < cells.size(); i++) {
            CsvColumn target = columns.get(i).target();
            String cell = target == null ? "" : Blanks.strip(cells.get(i));
            if (!cell.isEmpty()) {
                put(body, target, cell, columns.get(i).name(), form.numbers());
            }
        }
        for (Constant constant : constants) {
            if (constant.amount < 0 || !Blanks.strip(cells.get(constant.amount)).isEmpty()) {
                put(body, constant.column, constant.text, constant.column.name(), form.numbers());
            }
        }
        return body;
    }

    /** A request that has nothing but what every row has. */
    static ObjectNode body(List<Constant> constants, NumberForm numbers) {
        ObjectNode body = JSON.objectNode();
        constants.forEach(constant -> put(body, constant.column, constant.text, constant.column.name(), numbers));
        return body;
    }

    private static void put(ObjectNode body, CsvColumn column, String cell, String name, NumberForm numbers) {
        if (cell.length() > JsonReader.MAX_STRING_LENGTH) {
            throw malformed(Message.of("problem.http.cellMoreThanCharacters", name, JsonReader.MAX_STRING_LENGTH));
        }
        ObjectNode parent = body;
        int last = column.path().size() - 1;
        for (String part : column.path().subList(0, last)) {
            ObjectNode below = (ObjectNode) parent.get(part);
            parent = below == null ? parent.putObject(part) : below;
        }
        if (column.list()) {
            ArrayNode list = parent.putArray(column.path().get(last));
            Stream.of(cell.split(CsvColumn.SEPARATOR, -1)).forEach(element -> list.add(CellValues.of(column, Blanks.strip(element),
                    numbers)));
        } else {
            parent.set(column.path().get(last), CellValues.of(column, cell, numbers));
        }
    }

    /** The cells of one row, by RFC 4180. */
    static List<String> cells(String line, CSVFormat format) {
        String row = line.endsWith("\r") ? line.substring(0, line.length() - 1) : line;
        try (CSVParser parser = CSVParser.parse(row, format)) {
            List<CSVRecord> records = parser.getRecords();
            if (records.size() != 1) {
                throw malformed(Message.of("problem.http.rowLineBreakEach"));
            }
            return records.get(0).toList();
        } catch (UncheckedIOException e) {
            throw malformed(Message.of("problem.http.rowCsvQuoteClosed", HeapPlan.MAX_LINE_BYTES));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static ProblemException malformed(Message detail) {
        return new ProblemException(ProblemType.MALFORMED_BODY, detail);
    }

    private static <T> List<T> pick(List<T> all, int[] places) {
        List<T> picked = new ArrayList<>(places.length);
        for (int place : places) {
            picked.add(all.get(place));
        }
        return picked;
    }

    @Override
    public List<String> repeats() {
        return pick(columns, repeated).stream().map(TableColumn::name).toList();
    }

    @Override
    public List<String> columns() {
        return pick(columns, own).stream().map(TableColumn::name).toList();
    }

    @Override
    public List<String> own(SentLine line) {
        return pick(line.cells(), own);
    }

    @Override
    public String columnOf(Violation violation) {
        int index = indexOf(violation);
        return index < 0 ? null : columns.get(index).name();
    }

    /** The column of the value, of the list that it is an element of, or the first one of the quantity that it is. */
    private int indexOf(Violation violation) {
        String pointer = violation.pointer();
        int found = -1;
        for (int i = 0; i < columns.size(); i++) {
            CsvColumn target = columns.get(i).target();
            String own = target == null ? null : "/" + String.join("/", target.path());
            if (own != null && target.holds(pointer)) {
                return i;
            }
            if (own != null && found < 0 && target.amount() != null && own.startsWith(pointer + "/")
                    && own.indexOf('/', pointer.length() + 1) < 0) {
                found = i;
            }
        }
        return found;
    }

    @Override
    public List<Violation> explain(List<Violation> violations, SentLine line) {
        List<Violation> explained = new ArrayList<>();
        for (Violation violation : violations) {
            int index = line.cells() == null ? -1 : indexOf(violation);
            explained.add(index < 0 ? violation
                    : CellValues.explain(violation, columns.get(index).target(), Blanks.strip(line.cells().get(index)),
                    form.numbers()));
        }
        return explained;
    }
}
