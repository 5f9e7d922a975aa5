// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.api.CsvColumn;
import dev.brinebook.api.FormulaGuard;
import dev.brinebook.text.Language;
import dev.brinebook.text.Message;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A row for each line, by RFC 4180: its number, its status, what it repeats of the line, the plain values of the answer, its
 * errors. Numbers are written as the caller writes them; texts, which may be the caller's, so that no spreadsheet takes them for
 * a formula.
 */
final class AnswerTable implements AnswerLines {

    static final String MEDIA_TYPE = "text/csv";

    /** Columns before all others. */
    static final List<String> FIRST = List.of("line", "status");
    /** Columns that describe the errors of a row. They are ignored when the table is sent again. */
    static final Set<String> OF_PROBLEMS = ofProblems();
    /** Before the name of a column that the answer has itself. */
    private static final String PASSED = "passed.";
    /** In the place of the status, in the row that sums up a dry run. */
    private static final String SUMMARY = "summary";

    private static final ObjectMapper JSON = new ObjectMapper();

    private final JsonFactory parsers = new JsonFactory();
    private final RequestLines lines;
    private final BulkOptions options;
    private final Language language;
    private final NumberForm numbers;
    private final CsvRows rows;
    private final List<String> names;
    private final Place root = new Place();

    /** A place of the answer: its column, and the places below. */
    private static final class Place {
        private static final int NONE = -1;
        private final Map<String, Place> below = new HashMap<>();
        private int column = NONE;
    }

    /** A table of answers that have {@code columns}. */
    AnswerTable(RequestLines lines, BulkOptions options, TableForm form, List<CsvColumn> columns, Language language) {
        this.lines = lines;
        this.options = options;
        this.language = language;
        this.numbers = form.numbers();
        this.rows = new CsvRows(form.separator());
        List<CsvColumn> answered = options.answersAll() ? columns : List.of();
        int start = FIRST.size() + lines.repeats().size();
        for (int i = 0; i < answered.size(); i++) {
            Place place = root;
            for (String name : answered.get(i).path()) {
                place = place.below.computeIfAbsent(name, n -> new Place());
            }
            place.column = start + i;
        }
        this.names = names(lines.repeats(), answered.stream().map(CsvColumn::name).toList());
    }

    private static List<String> names(List<String> repeated, List<String> answered) {
        Set<String> own = new HashSet<>(answered);
        own.addAll(FIRST);
        own.addAll(CsvRows.PROBLEM);
        List<String> names = new ArrayList<>(FIRST);
        repeated.forEach(name -> names.add(FormulaGuard.of(own.contains(name) ? PASSED + name : name)));
        names.addAll(answered);
        names.addAll(CsvRows.PROBLEM);
        return names;
    }

    private static Set<String> ofProblems() {
        Set<String> names = new HashSet<>(CsvRows.PROBLEM);
        FIRST.forEach(name -> names.add("problem." + name));
        names.add(FaultyRows.UNREAD);
        return Set.copyOf(names);
    }

    @Override
    public byte[] start() {
        return rows.row(names.toArray(String[]::new));
    }

    @Override
    public byte[] answer(SentLine line, byte[] answer) {
        if (!options.answersAll()) {
            return new byte[0];
        }
        String[] cells = cells(line, 200);
        try (JsonParser parser = parsers.createParser(answer)) {
            parser.nextToken();
            fill(cells, root, parser);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows.row(cells);
    }

    @Override
    public byte[] problem(SentLine line, int status, byte[] problem) {
        String[] cells = cells(line, status);
        CsvRows.putProblem(cells, problem);
        return rows.row(cells);
    }

    @Override
    public byte[] summary(CheckSummary.Totals totals) {
        String[] cells = new String[names.size()];
        cells[1] = SUMMARY;
        int last = cells.length - CsvRows.PROBLEM.size();
        cells[last + 1] = Message.of("answerTable.summary", totals.lines(), totals.ready(), totals.faulty()).in(language);
        cells[last + 3] = JSON.valueToTree(totals.kinds()).toString();
        return rows.row(cells);
    }

    private String[] cells(SentLine line, int status) {
        String[] cells = new String[names.size()];
        cells[0] = Long.toString(line.number());
        cells[1] = Integer.toString(status);
        for (int i = 0; line.repeated() != null && i < line.repeated().size(); i++) {
            String text = line.repeated().get(i);
            cells[FIRST.size() + i] = text == null ? "" : FormulaGuard.ofPassed(lines.columns().isEmpty() ? plain(text) : text);
        }
        return cells;
    }

    /** A text or number of JSON as a cell has it. */
    private static String plain(String json) {
        try {
            return json.startsWith("\"") ? JSON.readTree(json).asText() : json;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Puts the values of the current object of the parser into the cells. */
    private void fill(String[] cells, Place place, JsonParser parser) throws IOException {
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            Place here = place.below.get(parser.currentName());
            JsonToken value = parser.nextToken();
            if (here != null && value == JsonToken.START_OBJECT) {
                fill(cells, here, parser);
            } else if (here != null && here.column == Place.NONE && value == JsonToken.START_ARRAY) {
                fillUnits(cells, here, parser);
            } else if (here != null && here.column != Place.NONE) {
                cells[here.column] = value == JsonToken.START_ARRAY ? list(parser) : scalar(parser);
            } else {
                parser.skipChildren();
            }
        }
    }

    /** Puts the numbers of a list of one quantity in every unit into the cells. */
    private void fillUnits(String[] cells, Place place, JsonParser parser) throws IOException {
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            String unit = "";
            String number = "";
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                boolean ofUnit = parser.currentName().equals("unit");
                parser.nextToken();
                unit = ofUnit ? parser.getText() : unit;
                number = ofUnit ? number : number(parser);
            }
            cells[place.below.get(unit).column] = number;
        }
    }

    private String scalar(JsonParser parser) throws IOException {
        return parser.currentToken() == JsonToken.VALUE_STRING ? FormulaGuard.of(parser.getText()) : number(parser);
    }

    private String number(JsonParser parser) throws IOException {
        return parser.currentToken().isNumeric() ? numbers.fromJson(parser.getText()) : parser.getText();
    }

    /** Plain values with semicolons between; of an object, which is a caution, its code. */
    private String list(JsonParser parser) throws IOException {
        List<String> values = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            if (parser.currentToken() == JsonToken.START_OBJECT) {
                values.add(code(parser));
            } else {
                values.add(number(parser));
            }
        }
        return FormulaGuard.of(String.join(CsvColumn.SEPARATOR, values));
    }

    private static String code(JsonParser parser) throws IOException {
        String code = "";
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            boolean here = parser.currentName().equals("code");
            parser.nextToken();
            code = here ? parser.getText() : code;
            parser.skipChildren();
        }
        return code;
    }
}
