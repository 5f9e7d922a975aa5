// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import dev.brinebook.api.CsvColumn;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.WireNames;
import dev.brinebook.contract.Contract;
import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.text.Message;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The columns that the requests of an operation have, by their names. */
final class KnownColumns {

    private static final String NUMBER = ".value";

    private final String operation;
    private final Map<String, CsvColumn> byName = new LinkedHashMap<>();

    KnownColumns(String operation, List<CsvColumn> columns) {
        this.operation = operation;
        columns.forEach(column -> byName.put(column.name(), column));
    }

    String operation() {
        return operation;
    }

    /** Where all are listed. */
    String template() {
        return Contract.TEMPLATE_PATH.replace("{calculator}", operation);
    }

    /** The column of this name, or null. */
    CsvColumn named(String name) {
        return byName.get(name);
    }

    /** The column of this name, or of the number of the quantity of this name; or null. */
    CsvColumn numberOr(String name) {
        CsvColumn number = byName.get(name + NUMBER);
        return byName.getOrDefault(name, number == null || number.amount() == null ? null : number);
    }

    /** The number of the quantity that {@code unit} is the unit of. */
    CsvColumn numberBeside(CsvColumn unit) {
        return byName.get(unit.name().substring(0, unit.name().lastIndexOf('.')) + NUMBER);
    }

    /** Those that every request needs. */
    Stream<CsvColumn> required() {
        return byName.values().stream().filter(CsvColumn::required);
    }

    /**
     * The separator of a header row: the only one that gives known columns, or columns that {@code named} holds for.
     *
     * @throws InvalidRequest when two would
     */
    char separatorOf(String header, Predicate<String> named) {
        List<TableForm.Separator> possible = new ArrayList<>();
        int most = 0;
        for (TableForm.Separator separator : TableForm.Separator.values()) {
            List<String> cells = split(header, separator);
            boolean same = cells.size() == 1 && !possible.isEmpty();
            if (!same && cells.stream().anyMatch(name -> byName.containsKey(name) || named.test(name))) {
                possible.add(separator);
                most = Math.max(most, cells.size());
            }
        }
        if (possible.size() > 1 && most > 1) {
            possible.removeIf(separator -> split(header, separator).size() == 1);
        }
        if (possible.size() > 1) {
            throw new InvalidRequest(List.of(new Violation("/separator", Code.MISSING, Message.of("knownColumns.separatorNotClear"),
                    Violation.names(WireNames.all(TableForm.Separator.class)), null, null)));
        }
        return possible.isEmpty() ? TableForm.Separator.COMMA.sign() : possible.get(0).sign();
    }

    private static List<String> split(String header, TableForm.Separator separator) {
        try {
            return RowReader.cells(header, RowReader.csv(separator.sign())).stream().map(Blanks::strip).toList();
        } catch (ProblemException notCsv) {
            return List.of(header);
        }
    }

    /** The error of a name that no column has. */
    Violation unknown(String name, String pointer) {
        Optional<String> below = byName.keySet().stream().filter(column -> column.startsWith(name + ".")).findFirst();
        if (below.isPresent()) {
            return new Violation(pointer, Code.UNKNOWN_FIELD, Message.of("tableHeader.writeSeparateColumnsSuch", below.get()));
        }
        String nearest = nearest(name).orElse(null);
        return new Violation(pointer, Code.UNKNOWN_FIELD, nearest == null
                ? Message.of("tableHeader.noColumnNameLists", operation, template())
                : Message.of("tableHeader.noColumnNameDid", operation, nearest), null, nearest, null);
    }

    /** The nearest name, or the only one that ends so. */
    private Optional<String> nearest(String name) {
        List<String> ends = byName.keySet().stream().filter(column -> column.endsWith("." + name)).toList();
        if (ends.size() == 1) {
            return Optional.of(ends.get(0));
        }
        return WireNames.nearest(name, List.copyOf(byName.keySet())).or(() -> nearestQuantity(name));
    }

    /** The number of the quantity of the same object with the nearest name. */
    private Optional<String> nearestQuantity(String name) {
        String owner = name.substring(0, name.lastIndexOf('.') + 1);
        List<String> beside = byName.keySet().stream().filter(column -> column.startsWith(owner) && column.endsWith(NUMBER))
                .map(column -> column.substring(owner.length(), Math.max(owner.length(), column.length() - NUMBER.length()))).toList();
        return WireNames.nearest(name.substring(owner.length()), beside).map(near -> owner + near + NUMBER);
    }

    /** The error of a parameter that names a column which is not among {@code there}. */
    static Violation noColumn(String name, String pointer, List<String> there) {
        String nearest = WireNames.nearest(name, there).orElse(null);
        return new Violation(pointer, Code.UNKNOWN_VALUE, nearest == null ? Message.of("knownColumns.tableHasNoColumn")
                : Message.of("knownColumns.tableHasNoColumnDid", nearest), null, nearest, null);
    }
}
