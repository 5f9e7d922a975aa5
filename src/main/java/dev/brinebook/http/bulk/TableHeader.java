package dev.brinebook.http.bulk;

import dev.brinebook.api.Column;
import dev.brinebook.api.Columns;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.WireNames;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.wording.Message;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The header row of a table of requests. What is wrong with it is wrong with every row, so it is told before any. */
final class TableHeader {

    /** What some spreadsheets write before UTF-8; in a JSON body it is refused, but this is how they save a table. */
    private static final byte[] BYTE_ORDER_MARK = "\uFEFF".getBytes(StandardCharsets.UTF_8);
    private static final int LONGEST_NAME = JsonReader.MAX_NAME_LENGTH;

    private final Operation<?, ?> operation;
    private final Map<String, Column> known = new LinkedHashMap<>();

    TableHeader(Operation<?, ?> operation) {
        this.operation = operation;
        Columns.ofRequest(operation.requestType()).forEach(column -> known.put(column.name(), column));
    }

    /**
     * The reader of the rows under a header.
     *
     * @throws InvalidRequest when columns are unknown, stand twice or are missing
     */
    RowReader read(byte[] line) {
        int marked = BYTE_ORDER_MARK.length;
        boolean mark = line.length >= marked && Arrays.equals(line, 0, marked, BYTE_ORDER_MARK, 0, marked);
        List<String> names = RowReader.cells(JsonReader.decode(mark ? Arrays.copyOfRange(line, marked, line.length) : line));
        Violations violations = new Violations();
        Set<String> seen = new HashSet<>();
        List<Column> columns = new ArrayList<>();
        for (String name : names) {
            Column column = known.get(name);
            columns.add(column);
            if (column == null) {
                Violations place = at(name, violations);
                place.add(unknown(name, place.pointer(), names.size()));
            } else if (!seen.add(name)) {
                at(name, violations).add(Code.INCONSISTENT, Message.of("stands in the header more than once"));
            }
        }
        known.values().stream().filter(column -> column.required() && !seen.contains(column.name())).forEach(column ->
                at(column.name(), violations).add(Code.MISSING, Message.of("is missing in the header: every request needs it")));
        if (!violations.isEmpty()) {
            throw new InvalidRequest(violations.sorted());
        }
        return new RowReader(columns);
    }

    private Violation unknown(String name, String pointer, int columns) {
        if (columns == 1 && (name.contains(";") || name.contains("\t"))) {
            return new Violation(pointer, Code.UNKNOWN_FIELD, Message.of("is one column: part columns by commas"));
        }
        Optional<String> below = known.keySet().stream().filter(column -> column.startsWith(name + ".")).findFirst();
        if (below.isPresent()) {
            return new Violation(pointer, Code.UNKNOWN_FIELD, Message.of("is written in columns of its own, such as {0}",
                    below.get()));
        }
        String nearest = nearest(name).orElse(null);
        return new Violation(pointer, Code.UNKNOWN_FIELD, nearest == null
                ? Message.of("is no column of {0}: {1} lists them; a list of objects or of quantities has none", operation.id(),
                        BulkTemplate.path(operation))
                : Message.of("is no column of {0}: did you mean {1}?", operation.id(), nearest), null, nearest, null);
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
