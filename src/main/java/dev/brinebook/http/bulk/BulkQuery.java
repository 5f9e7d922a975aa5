// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.WireNames;
import dev.brinebook.contract.BulkParameter;
import dev.brinebook.http.exchange.QueryReader;
import dev.brinebook.text.Message;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Reads what a query asks of a stream; every error names its parameter. */
final class BulkQuery {

    private static final Pattern HARMLESS = Pattern.compile("[A-Za-z0-9 ._:-]{1,60}");
    private static final Pattern LINE = Pattern.compile("[1-9]\\d{0,14}");

    private final Map<BulkParameter, List<String>> given = new EnumMap<>(BulkParameter.class);
    private final Violations violations = new Violations();

    private BulkQuery() {
    }

    /**
     * What {@code query} asks.
     *
     * @param answer record of the answers, among whose parts it may choose
     * @param rowsIn whether the requests are a table
     * @param rowsOut whether the answers are one
     * @throws InvalidRequest with every error of the query
     */
    static BulkOptions read(String query, Class<? extends Record> answer, boolean rowsIn, boolean rowsOut) {
        BulkQuery read = new BulkQuery();
        read.collect(query);
        read.refuse(rowsIn, rowsOut);
        AnswerParts parts = AnswerParts.parse(read.text(BulkParameter.DETAIL), read.text(BulkParameter.FIELDS), answer, read.violations);
        BulkOptions options = new BulkOptions(read.is(BulkParameter.MODE, "check"), read.is(BulkParameter.ONLY, "faulty"),
                read.is(BulkParameter.ANSWER, "afterUpload"), read.from(), read.table(), parts);
        if (rowsOut) {
            options.withoutColumn(answer).forEach((index, name) -> read.violations.at("fields").at(index).add(Code.UNKNOWN_FIELD,
                    Message.of("bulkQuery.noColumnHasField", name, AnswerObjects.MEDIA_TYPE)));
        }
        if (!read.violations.isEmpty()) {
            throw new InvalidRequest(read.violations.sorted());
        }
        return options;
    }

    /** The name in the query that an error of it belongs to, known or not. */
    static String nameOf(Violation violation) {
        String[] names = violation.pointer().split("/");
        return names.length < 2 ? null : names[1].replace("~1", "/").replace("~0", "~");
    }

    /** The parameter that an error of a header row belongs to, or null; no request has a property of its name. */
    static String parameterOf(Violation violation) {
        String name = nameOf(violation);
        return WireNames.all(BulkParameter.class).contains(name) ? name : null;
    }

    private void collect(String query) {
        List<String> known = WireNames.all(BulkParameter.class);
        for (Map.Entry<String, String> pair : QueryReader.pairs(query)) {
            int index = known.indexOf(pair.getKey());
            Violations place = violations.at(pair.getKey());
            if (index < 0) {
                place.add(Violation.unknownField(place.pointer(), pair.getKey(), known));
                continue;
            }
            BulkParameter parameter = BulkParameter.values()[index];
            List<String> values = given.computeIfAbsent(parameter, one -> new ArrayList<>());
            values.add(pair.getValue());
            if (values.size() > 1 && !parameter.repeated()) {
                place.add(Code.INCONSISTENT, Message.of("problem.http.givenMoreThanOnce", pair.getKey()));
            } else if (!parameter.choices().isEmpty() && !parameter.choices().contains(pair.getValue())) {
                place.add(notOneOf(place, pair.getValue(), parameter.choices()));
            }
        }
    }

    private static Violation notOneOf(Violations place, String value, List<String> values) {
        return new Violation(place.pointer(), Code.UNKNOWN_VALUE, Message.of("problem.http.mustOne", String.join(", ", values)),
                Violation.names(values), WireNames.nearest(value, values).orElse(null), received(value));
    }

    private static String received(String value) {
        return HARMLESS.matcher(value).matches() ? value : null;
    }

    /** What is said of a table must be of one. */
    private void refuse(boolean rowsIn, boolean rowsOut) {
        given.keySet().stream().filter(parameter -> parameter.ofTable() && !rowsIn && !(parameter.ofAnswers() && rowsOut)).forEach(
                parameter -> violations.add(WireNames.of(parameter), Code.INCONSISTENT,
                        Message.of("bulkQuery.forCsvOnly", AnswerTable.MEDIA_TYPE)));
    }

    private String text(BulkParameter parameter) {
        return given.containsKey(parameter) ? given.get(parameter).get(0) : null;
    }

    private boolean is(BulkParameter parameter, String value) {
        return value.equals(text(parameter));
    }

    private long from() {
        String text = text(BulkParameter.FROM);
        long line = text == null ? 1 : LINE.matcher(text).matches() ? Long.parseLong(text) : 0;
        if (line < 1 || line > BulkParameter.LAST_LINE) {
            violations.at("from").add(new Violation("/from", Code.OUT_OF_RANGE, Message.of("bulkQuery.mustLineNumber",
                    BulkParameter.LAST_LINE), null, null, received(text)));
        }
        return line;
    }

    private TableOptions table() {
        String separator = text(BulkParameter.SEPARATOR);
        return new TableOptions(separator == null ? null : constant(TableForm.Separator.class, separator), numbers(),
                pairs(BulkParameter.MAP, true), pairs(BulkParameter.SET, false), given.getOrDefault(BulkParameter.PASS, List.of()),
                is(BulkParameter.UNKNOWN_COLUMNS, "pass"));
    }

    private NumberForm numbers() {
        char decimal = is(BulkParameter.DECIMAL, "comma") ? ',' : '.';
        NumberForm.Grouping grouping = constant(NumberForm.Grouping.class, text(BulkParameter.THOUSANDS));
        try {
            return new NumberForm(decimal, grouping == null ? NumberForm.Grouping.NONE : grouping);
        } catch (IllegalArgumentException same) {
            violations.add("thousands", Code.INCONSISTENT, Message.of("bulkQuery.thousandsOtherThanDecimal"));
            return NumberForm.AS_JSON;
        }
    }

    /** A constant by its name on the wire; null when there is none of it. */
    private static <E extends Enum<E>> E constant(Class<E> type, String name) {
        int index = WireNames.all(type).indexOf(name);
        return index < 0 ? null : type.getEnumConstants()[index];
    }

    /** Names and values with a colon between: names of properties have none, so the other half may. */
    private Map<String, String> pairs(BulkParameter parameter, boolean propertyLast) {
        Map<String, String> pairs = new LinkedHashMap<>();
        List<String> texts = given.getOrDefault(parameter, List.of());
        for (int i = 0; i < texts.size(); i++) {
            String text = texts.get(i);
            int colon = propertyLast ? text.lastIndexOf(':') : text.indexOf(':');
            Violations place = violations.at(WireNames.of(parameter)).at(i);
            if (colon < 1 || colon == text.length() - 1) {
                place.add(Code.WRONG_TYPE, propertyLast ? Message.of("bulkQuery.mustColumnColonProperty")
                        : Message.of("bulkQuery.mustPropertyColonValue"));
            } else if (pairs.put(Blanks.strip(text.substring(0, colon)), Blanks.strip(text.substring(colon + 1))) != null) {
                place.add(Code.INCONSISTENT, Message.of("problem.http.givenMoreThanOnce", text.substring(0, colon)));
            }
        }
        return pairs;
    }
}
