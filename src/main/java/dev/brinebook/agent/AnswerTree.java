// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads an answer by JSON pointers, as it is before it is written: its values still know their kinds. */
final class AnswerTree {

    private static final ClassValue<Map<String, RecordComponent>> COMPONENTS = new ClassValue<>() {
        @Override
        protected Map<String, RecordComponent> computeValue(Class<?> type) {
            Map<String, RecordComponent> components = new LinkedHashMap<>();
            for (RecordComponent component : type.getRecordComponents()) {
                component.getAccessor().setAccessible(true);
                components.put(component.getName(), component);
            }
            return components;
        }
    };

    private AnswerTree() {
    }

    /** What is at {@code pointer} below {@code from}; null where there is nothing. */
    static Object at(Object from, String pointer) {
        Object here = from;
        for (String name : pointer.split("/")) {
            if (!name.isEmpty()) {
                here = below(here, name);
            }
        }
        return here;
    }

    private static Object below(Object here, String name) {
        if (here instanceof Record part) {
            return component(part, name);
        }
        boolean index = name.matches("\\d{1,6}");
        return here instanceof List<?> list && index && Integer.parseInt(name) < list.size() ? list.get(Integer.parseInt(name)) : null;
    }

    /** The component of that name, or null. */
    static Object component(Record part, String name) {
        RecordComponent component = COMPONENTS.get(part.getClass()).get(name);
        try {
            return component == null ? null : component.getAccessor().invoke(part);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(component + " cannot be read", e);
        }
    }

    /** The components that have a value, in their order. */
    static Map<String, Object> components(Record part) {
        Map<String, Object> values = new LinkedHashMap<>();
        COMPONENTS.get(part.getClass()).keySet().forEach(name -> {
            Object value = component(part, name);
            if (value != null) {
                values.put(name, value);
            }
        });
        return values;
    }

    /** The list at {@code pointer}; empty where there is none. */
    static List<?> list(Object from, String pointer) {
        return at(from, pointer) instanceof List<?> list ? list : List.of();
    }
}
