// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.quantity.Unit;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * One plain value of a record as a cell of a table holds it.
 *
 * @param name names of the properties that lead to it, with dots between, such as {@code water.hardness.value}
 * @param path those names
 * @param type type of the value, or of every value of a list
 * @param list whether the cell holds several, with semicolons between
 * @param required whether every request has it
 * @param property what the value says of itself
 * @param amount what the quantity or amount of money says that the value is the number or unit of, null when it is of none
 */
public record CsvColumn(String name, List<String> path, Class<?> type, boolean list, boolean required,
        Property property, Property amount) {

    /** Between the values of a list. */
    public static final String SEPARATOR = ";";

    public CsvColumn {
        path = List.copyOf(path);
    }

    /** Whether its values are numbers, written as in JSON. */
    public boolean isNumber() {
        return Number.class.isAssignableFrom(type);
    }

    /** Whether it has the number, in one unit, of a list of one quantity in every unit. */
    public boolean isOfEveryUnit() {
        return !list && Unit.class.isAssignableFrom(property.eachOf());
    }

    /** Whether a JSON pointer leads to its value, or to one of the list that it is. */
    public boolean holds(String pointer) {
        String own = "/" + String.join("/", path);
        return pointer.equals(own) || list && pointer.startsWith(own + "/");
    }

    /** What it is. */
    public String description() {
        return amount == null ? property.value() : amount.value() + " " + property.value();
    }

    /** What it may be, where that is a range or a closed list. */
    public Optional<String> allowed() {
        if (type.isEnum()) {
            return Optional.of(String.join(", ", WireNames.all(type)));
        }
        Property bounds = amount == null ? property : amount;
        if (!isNumber() || bounds.min() == Double.NEGATIVE_INFINITY && bounds.max() == Double.POSITIVE_INFINITY) {
            return Optional.empty();
        }
        DoubleUnaryOperator same = DoubleUnaryOperator.identity();
        String range = new Range(bounds.min(), bounds.max(), bounds.aboveMin()).inWords(same, same, "").toString();
        return Optional.of(bounds.unit().isEmpty() ? range : range + " " + bounds.unit());
    }

    /** What is taken when the cell is empty, in words; for an amount, the column of its number has it. */
    public Optional<String> fallback() {
        String text = amount == null ? DefaultValue.of(property).inWords() : isNumber() ? DefaultValue.of(amount).inWords() : "";
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }
}
