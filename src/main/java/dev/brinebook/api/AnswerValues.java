// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.quantity.Unit;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.Currency;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * The numbers, quantities, codes and dates of an answer, without its texts, assumptions, basis and version.
 *
 * <p>Each has a key that is the same in another answer of the operation: its pointer, but an element of a list is named by its first
 * code, name or quantity, where no two elements share it, so that one element more does not shift the others.
 */
public final class AnswerValues {

    private static final Set<String> LEFT_OUT = Set.of("assumptions", "basis", "modelVersion");
    private static final List<String> AMOUNT = List.of("value", "unit");

    private final Map<String, Value> values = new LinkedHashMap<>();

    private AnswerValues() {
    }

    /**
     * One value.
     *
     * @param pointer its JSON pointer in the answer
     * @param number the number, or null
     * @param unit symbol of the unit of the number, or null
     * @param code the code, name or date, or null
     * @param flag true or false, or null
     */
    public record Value(String pointer, BigDecimal number, String unit, String code, Boolean flag) {

        /** Whether another is equal, wherever it is; 1.0 and 1 are. */
        public boolean isSameAs(Value other) {
            return other != null && Objects.equals(unit, other.unit)
                    && Objects.equals(code, other.code) && Objects.equals(flag, other.flag)
                    && (number == null ? other.number == null : other.number != null && number.compareTo(other.number) == 0);
        }
    }

    /** All values of an answer by key, in the order of the answer. */
    public static Map<String, Value> of(Record answer) {
        AnswerValues found = new AnswerValues();
        RecordShape shape = RecordShape.of(answer.getClass());
        Object[] components = shape.values(answer);
        for (int i = 0; i < components.length; i++) {
            if (!LEFT_OUT.contains(shape.names().get(i))) {
                found.add(components[i], "/" + shape.names().get(i), "/" + shape.names().get(i));
            }
        }
        return found.values;
    }

    private void add(Object value, String pointer, String key) {
        if (value instanceof Collection<?> list) {
            addAll(List.copyOf(list), pointer, key);
        } else if (value instanceof Record part && RecordShape.of(part.getClass()).names().equals(AMOUNT)) {
            Object[] amount = RecordShape.of(part.getClass()).values(part);
            values.put(key, new Value(pointer, (BigDecimal) amount[0], unit(amount[1]), null, null));
        } else if (value instanceof Record part && part.getClass().isAnnotationPresent(SchemaDescription.class)) {
            RecordShape shape = RecordShape.of(part.getClass());
            Object[] components = shape.values(part);
            for (int i = 0; i < components.length; i++) {
                add(components[i], pointer + "/" + shape.names().get(i), key + "/" + shape.names().get(i));
            }
        } else if (value instanceof Number number) {
            values.put(key, new Value(pointer, new BigDecimal(number.toString()), null, null, null));
        } else if (value instanceof Boolean flag) {
            values.put(key, new Value(pointer, null, null, null, flag));
        } else if (value != null && !(value instanceof Message)) {
            String code = value instanceof Enum<?> constant ? WireNames.of(constant) : value.toString();
            values.put(key, new Value(pointer, null, null, code, null));
        }
    }

    private void addAll(List<?> list, String pointer, String key) {
        List<String> names = list.stream().map(AnswerValues::name).toList();
        boolean named = !names.contains("") && new HashSet<>(names).size() == names.size();
        for (int i = 0; i < list.size(); i++) {
            add(list.get(i), pointer + "/" + i, key + "/" + (named ? names.get(i) : i));
        }
    }

    /**
     * What identifies an element of a list: its first component, or its second behind a rank; the unit of a quantity; nothing for plain
     * values.
     */
    private static String name(Object element) {
        if (!(element instanceof Record part)) {
            return "";
        }
        RecordShape shape = RecordShape.of(part.getClass());
        Object[] components = shape.values(part);
        if (shape.names().equals(AMOUNT)) {
            return unit(components[1]);
        }
        Object first = components[0] instanceof Integer && components.length > 1 ? components[1] : components[0];
        return first == null || first instanceof Collection<?> ? "" : first.toString();
    }

    private static String unit(Object unit) {
        return unit instanceof Unit known ? known.symbol() : unit instanceof Currency currency ? currency.getCurrencyCode()
                : String.valueOf(unit);
    }
}
