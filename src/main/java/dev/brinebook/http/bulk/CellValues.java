// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import dev.brinebook.api.CsvColumn;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.WireNames;
import dev.brinebook.quantity.Unit;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** The values of cells, as JSON has them. */
final class CellValues {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final int LONGEST_ECHO = 40;
    private static final Pattern HARMLESS = Pattern.compile("[\\w ,./°'-]*");

    /** Units by their symbols in lower case, where only one of a kind has it. */
    private static final ClassValue<Map<String, String>> UNITS = new ClassValue<>() {
        @Override
        protected Map<String, String> computeValue(Class<?> unit) {
            Map<String, String> byName = new HashMap<>();
            Set<String> twice = new HashSet<>();
            for (String symbol : WireNames.all(unit)) {
                if (byName.put(symbol.toLowerCase(Locale.ROOT), symbol) != null) {
                    twice.add(symbol.toLowerCase(Locale.ROOT));
                }
            }
            byName.keySet().removeAll(twice);
            return byName;
        }
    };

    private CellValues() {
    }

    /** The value of a text without blanks. What is not written as its type is stays a text, which the reader of JSON then refuses. */
    static JsonNode of(CsvColumn column, String text, NumberForm numbers) {
        if (column.isNumber()) {
            return numbers.toJson(text).<JsonNode>map(number -> JSON.numberNode(new BigDecimal(number)))
                    .orElseGet(() -> JSON.textNode(text));
        }
        if (column.type() == Boolean.class && (text.equalsIgnoreCase("true") || text.equalsIgnoreCase("false"))) {
            return JSON.booleanNode(text.equalsIgnoreCase("true"));
        }
        if (Unit.class.isAssignableFrom(column.type())) {
            return JSON.textNode(UNITS.get(column.type()).getOrDefault(text.toLowerCase(Locale.ROOT), text));
        }
        return JSON.textNode(text);
    }

    /** Says of a number that is none what was in its cell, and which parameter would make it one. */
    static Violation explain(Violation violation, CsvColumn column, String cell, NumberForm numbers) {
        if (violation.code() != Code.WRONG_TYPE || !column.isNumber() || column.list() && !violation.pointer().matches(".*/\\d+")
                || numbers.toJson(cell).isPresent()) {
            return violation;
        }
        String element = column.list() ? element(violation.pointer(), cell) : cell;
        if (element.length() > LONGEST_ECHO || !HARMLESS.matcher(element).matches()) {
            return violation;
        }
        List<Message> sentences = new ArrayList<>(List.of(Message.of("cellValues.mustNumberGiven", element)));
        otherForms(element).forEach((parameters, number) -> sentences.add(Message.of("cellValues.parametersReadItAs", parameters, number)));
        return new Violation(violation.pointer(), violation.code(), Message.sentences(sentences), null, null, element);
    }

    private static String element(String pointer, String cell) {
        String[] elements = cell.split(CsvColumn.SEPARATOR, -1);
        return Blanks.strip(elements[Math.min(elements.length - 1, Integer.parseInt(pointer.substring(pointer.lastIndexOf('/') + 1)))]);
    }

    /** Parameters with which the text is a number, and which number. */
    private static Map<String, String> otherForms(String text) {
        Map<String, String> numbers = new LinkedHashMap<>();
        for (String decimal : List.of("point", "comma")) {
            for (NumberForm.Grouping grouping : NumberForm.Grouping.values()) {
                String groups = WireNames.of(grouping);
                if (!groups.equals(decimal)) {
                    String parameters = "decimal=" + decimal + (grouping == NumberForm.Grouping.NONE ? "" : "&thousands=" + groups);
                    new NumberForm(decimal.equals("comma") ? ',' : '.', grouping).toJson(text)
                            .filter(number -> !numbers.containsValue(number)).ifPresent(number -> numbers.put(parameters, number));
                }
            }
        }
        return numbers;
    }
}
