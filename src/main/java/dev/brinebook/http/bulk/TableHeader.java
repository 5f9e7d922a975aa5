// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import dev.brinebook.api.CsvColumn;
import dev.brinebook.api.CsvColumns;
import dev.brinebook.api.FormulaGuard;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.text.Message;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The header row of a table of requests. An error in it affects every row, so it is reported before any. */
final class TableHeader {

    /** Columns of one table at most. */
    static final int MAX_COLUMNS = 1_000;

    private static final int LONGEST_NAME = JsonReader.MAX_NAME_LENGTH;

    /** Errors that a value has by itself, whatever the columns say. */
    private static final Set<Code> OF_VALUE = Set.of(Code.WRONG_TYPE, Code.UNKNOWN_VALUE, Code.OUT_OF_RANGE, Code.WRONG_COUNT);

    private final Operation<?, ?> operation;
    private final JsonReader reader;
    private final TableOptions options;
    private final KnownColumns known;
    private final Violations violations = new Violations();
    /** Where each property is read from: names of columns, or the parameter that sets it. */
    private final Map<String, String> origins = new HashMap<>();
    private final List<TableColumn> columns = new ArrayList<>();
    private final Set<String> names = new HashSet<>();

    TableHeader(Operation<?, ?> operation, JsonReader reader, TableOptions options) {
        this.operation = operation;
        this.reader = reader;
        this.options = options;
        this.known = new KnownColumns(operation.id(), CsvColumns.ofRequest(operation.requestType()));
    }

    /** Finds the end of the header row, before it is known what is between its cells. */
    RowScan scan() {
        return new RowScan(options.separator() == null ? TableForm.Separator.all() : String.valueOf(options.separator().sign()));
    }

    /**
     * The reader of the rows under a header.
     *
     * @throws InvalidRequest when columns are unknown, duplicate or missing, a parameter names none, or one sets a value that no
     *         request may have
     */
    RowReader read(byte[] line) {
        String header = JsonReader.decode(line);
        char separator = options.separator() == null ? known.separatorOf(header, this::isNamed) : options.separator().sign();
        List<String> cells = RowReader.cells(header, RowReader.csv(separator)).stream()
                .map(cell -> FormulaGuard.removedFrom(Blanks.strip(cell))).toList();
        if (cells.size() > MAX_COLUMNS) {
            throw new InvalidRequest(List.of(new Violation("", Code.WRONG_COUNT,
                    Message.of("tableHeader.columnsAtMost", cells.size(), MAX_COLUMNS))));
        }
        for (int i = 0; i < cells.size(); i++) {
            add(cells.get(i), i + 1);
        }
        List<RowReader.Constant> constants = constants();
        refuseValues(constants);
        refuseUnused();
        known.required().filter(column -> !origins.containsKey(column.name())).forEach(column ->
                at(column.name()).add(Code.MISSING, Message.of("tableHeader.missingHeaderEveryRequest")));
        if (violations.isEmpty() && origins.isEmpty()) {
            violations.add(Code.MISSING, Message.of("tableHeader.noColumnIsProperty", known.operation(), known.template()));
        }
        if (!violations.isEmpty()) {
            throw new InvalidRequest(violations.sorted());
        }
        return new RowReader(columns, constants, new TableForm(separator, options.numbers()));
    }

    /** Whether a query names the column. */
    private boolean isNamed(String column) {
        return options.map().containsKey(column) || options.pass().contains(column);
    }

    private void add(String name, int number) {
        boolean own = !AnswerTable.OF_PROBLEMS.contains(name);
        CsvColumn target = own ? target(name) : null;
        boolean unknown = own && target == null && !options.map().containsKey(name);
        boolean passed = own && (options.pass().contains(name) || unknown && options.passUnknown());
        String shown = name.isEmpty() ? "column " + number : name;
        columns.add(new TableColumn(shown, target, passed, own));
        if (!names.add(shown)) {
            at(name).add(Code.INCONSISTENT, Message.of("tableHeader.duplicateColumnHeader"));
        } else if (unknown && !passed) {
            Violations place = at(name);
            place.add(known.unknown(name, place.pointer()));
        } else if (target != null) {
            String other = origins.putIfAbsent(target.name(), name);
            if (other != null) {
                at(target.name()).add(Code.INCONSISTENT, Message.of("tableHeader.twiceGiven", other, name));
            }
        }
    }

    /** What a column holds: what the query says, else the property of its name. */
    private CsvColumn target(String name) {
        String property = options.map().get(name);
        if (property == null) {
            return known.named(name);
        }
        CsvColumn target = known.numberOr(property);
        if (target == null) {
            Violations place = at("map", property);
            place.add(known.unknown(property, place.pointer()));
        }
        return target;
    }

    private List<RowReader.Constant> constants() {
        List<RowReader.Constant> constants = new ArrayList<>();
        options.set().forEach((property, value) -> {
            CsvColumn target = known.named(property);
            Violations place = at("set", property);
            if (target == null) {
                place.add(known.unknown(property, place.pointer()));
            } else if (origins.containsKey(property)) {
                place.add(Code.INCONSISTENT, Message.of("tableHeader.twiceGiven", origins.get(property), "set=" + property));
            } else {
                origins.put(property, "set=" + property);
                constants.add(new RowReader.Constant(target, value, amountOf(target)));
            }
        });
        return constants;
    }

    /** Reports what is wrong with a value that is set, once for all rows; what depends on columns, each row reports. */
    private void refuseValues(List<RowReader.Constant> constants) {
        try {
            reader.read(JsonReader.tree(RowReader.body(constants, options.numbers())), operation.requestType());
        } catch (InvalidRequest incomplete) {
            for (RowReader.Constant constant : constants) {
                Violations place = at("set", constant.column().name());
                incomplete.violations().stream()
                        .filter(fault -> OF_VALUE.contains(fault.code()) && constant.column().holds(fault.pointer()))
                        .map(fault -> CellValues.explain(fault, constant.column(), constant.text(), options.numbers()))
                        .forEach(fault -> place.add(new Violation(place.pointer(), fault.code(), fault.message(), fault.allowed(),
                                fault.didYouMean(), fault.received())));
            }
        }
    }

    /** Index of the column with the number that a unit belongs to; −1 where there is none. */
    private int amountOf(CsvColumn unit) {
        CsvColumn number = unit.amount() == null || unit.isNumber() ? null : known.numberBeside(unit);
        for (int i = 0; number != null && i < columns.size(); i++) {
            if (columns.get(i).target() == number) {
                return i;
            }
        }
        return -1;
    }

    /** What the query says of columns that are not there. */
    private void refuseUnused() {
        List<String> there = List.copyOf(names);
        options.map().keySet().stream().filter(name -> !names.contains(name)).forEach(name -> refuseUnused("map", name, there));
        options.pass().stream().filter(name -> !names.contains(name)).forEach(name -> refuseUnused("pass", name, there));
    }

    private void refuseUnused(String parameter, String name, List<String> there) {
        Violations place = at(parameter, name);
        place.add(KnownColumns.noColumn(name, place.pointer(), there));
    }

    /** The place that the column would have in a JSON request. */
    private Violations at(String name) {
        Violations place = violations;
        for (String part : name.substring(0, Math.min(name.length(), LONGEST_NAME)).split("\\.", -1)) {
            place = place.at(part);
        }
        return place;
    }

    /** A value of a parameter. */
    private Violations at(String parameter, String name) {
        return violations.at(parameter).at(name.substring(0, Math.min(name.length(), LONGEST_NAME)));
    }
}
