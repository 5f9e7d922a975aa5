// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import dev.brinebook.api.Amount;
import dev.brinebook.api.Operation;
import dev.brinebook.quantity.Quantity;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The parts that requests are made of: every record in them that is neither a quantity nor an amount, by its name for models. */
final class RequestParts {

    private static final String SUFFIX = "Request";

    private final Map<String, Class<?>> byName = new TreeMap<>();

    RequestParts(List<Operation<?, ?>> operations) {
        operations.forEach(operation -> collect(operation.requestType()));
    }

    private void collect(Class<?> type) {
        for (RecordComponent component : type.getRecordComponents()) {
            Class<?> held = held(component);
            if (isPart(held) && byName.put(name(held), held) == null) {
                collect(held);
            }
        }
    }

    /** The parts by name, in alphabetical order. */
    Map<String, Class<?>> byName() {
        return Collections.unmodifiableMap(byName);
    }

    static boolean isPart(Class<?> type) {
        return type.isRecord() && !Quantity.class.isAssignableFrom(type) && !Amount.class.isAssignableFrom(type);
    }

    /** The name of a part, such as {@code stepMinutes}. */
    static String name(Class<?> part) {
        String simple = part.getSimpleName();
        String name = simple.endsWith(SUFFIX) ? simple.substring(0, simple.length() - SUFFIX.length()) : simple;
        return Character.toLowerCase(name.charAt(0)) + name.substring(1);
    }

    /** The type of a component, of a list that of its elements. */
    static Class<?> held(RecordComponent component) {
        if (component.getGenericType() instanceof ParameterizedType list
                && list.getActualTypeArguments()[0] instanceof Class<?> element) {
            return element;
        }
        return component.getType();
    }

    static boolean isList(RecordComponent component) {
        return List.class.isAssignableFrom(component.getType());
    }
}
