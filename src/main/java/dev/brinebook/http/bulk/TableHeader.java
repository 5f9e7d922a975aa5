// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import dev.brinebook.api.CsvColumn;
import dev.brinebook.api.CsvColumns;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.WireNames;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.text.Message;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The header row of a table of requests. An error in it affects every row, so it is reported before any. */
final class TableHeader {

    /** What some spreadsheets write before UTF-8; in a JSON body it is refused, but this is how they save a table. */
    private static final byte[] BYTE_ORDER_MARK = "\uFEFF".getBytes(StandardCharsets.UTF_8);
    private static final int LONGEST_NAME = JsonReader.MAX_NAME_LENGTH;

    private final Operation<?, ?> operation;
    private final Map<String, CsvColumn> known = new LinkedHashMap<>();

    TableHeader(Operation<?, ?> operation) {
        this.operation = operation;
        CsvColumns.ofRequest(operation.requestType()).forEach(column -> known.put(column.name(), column));
    }

    /**
     * The reader of the rows under a header.
     *
     * @throws InvalidRequest when columns are unknown, duplicate or missing
     */
    RowReader read(byte[] line) {
        int marked = BYTE_ORDER_MARK.length;
        boolean mark = line.length >= marked && Arrays.equals(line, 0, marked, BYTE_ORDER_MARK, 0, marked);
        List<String> names = RowReader.cells(JsonReader.decode(mark ? Arrays.copyOfRange(line, marked, line.length) : line));
        Violations violations = new Violations();
        Set<String> seen = new HashSet<>();
        List<CsvColumn> columns = new ArrayList<>();
        for (String name : names) {
            CsvColumn column = known.get(name);
            columns.add(column);
            if (column == null) {
                Violations place = at(name, violations);
                place.add(unknown(name, place.pointer(), names.size()));
            } else if (!seen.add(name)) {
                at(name, violations).add(Code.INCONSISTENT, Message.of("tableHeader.duplicateColumnHeader"));
            }
        }
        known.values().stream().filter(column -> column.required() && !seen.contains(column.name())).forEach(column ->
                at(column.name(), violations).add(Code.MISSING, Message.of("tableHeader.missingHeaderEveryRequest")));
        if (!violations.isEmpty()) {
            throw new InvalidRequest(violations.sorted());
        }
        return new RowReader(columns);
    }

    private Violation unknown(String name, String pointer, int columns) {
        if (columns == 1 && (name.contains(";") || name.contains("\t"))) {
            return new Violation(pointer, Code.UNKNOWN_FIELD, Message.of("tableHeader.oneColumnOnlySeparate"));
        }
        Optional<String> below = known.keySet().stream().filter(column -> column.startsWith(name + ".")).findFirst();
        if (below.isPresent()) {
            return new Violation(pointer, Code.UNKNOWN_FIELD, Message.of("tableHeader.writeSeparateColumnsSuch",
                    below.get()));
        }
        String nearest = nearest(name).orElse(null);
        return new Violation(pointer, Code.UNKNOWN_FIELD, nearest == null
                ? Message.of("tableHeader.noColumnNameLists", operation.id(),
                        BulkTemplate.path(operation))
                : Message.of("tableHeader.noColumnNameDid", operation.id(), nearest), null, nearest, null);
    }

    /** The nearest name, or the only one that ends so. */
    private Optional<String> nearest(String name) {
        List<String> ends = known.keySet().stream().filter(column -> column.endsWith("." + name)).toList();
        return ends.size() == 1 ? Optional.of(ends.get(0)) : WireNames.nearest(name, List.copyOf(known.keySet()));
    }

    /** The place that the column would have in a JSON request. */
    private static Violations at(String name, Violations violations) {
        Violations place = violations;
        for (String part : name.substring(0, Math.min(name.length(), LONGEST_NAME)).split("\\.", -1)) {
            place = place.at(part);
        }
        return place;
    }
}
