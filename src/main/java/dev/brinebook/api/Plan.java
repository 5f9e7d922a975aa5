// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;

/** What a type of request record says of itself, read once. */
record Plan(List<Component> components, DiscriminatorValues kinds) {

    record Component(String name, RecordComponent component, Property property) {

        Class<?> type() {
            return component.getType();
        }

        Object of(Record owner) {
            try {
                return component.getAccessor().invoke(owner);
            } catch (IllegalAccessException | InvocationTargetException e) {
                throw new IllegalStateException(component + " cannot be read", e);
            }
        }
    }

    static Plan of(Class<?> type) {
        List<Component> components = Arrays.stream(type.getRecordComponents()).map(component -> {
            Property property = component.getAnnotation(Property.class);
            if (property == null) {
                throw new IllegalStateException(type + "." + component.getName() + " has no @Property");
            }
            component.getAccessor().setAccessible(true);
            return new Component(component.getName(), component, property);
        }).toList();
        return new Plan(components, DiscriminatorValues.of(type));
    }

    /** The kind of a record; null where it has none, or where its discriminator is missing or wrong. */
    String kind(Record owner, Violations at) {
        if (kinds.isEmpty() || at.at(kinds.property()).here()) {
            return null;
        }
        Object kind = components.stream().filter(one -> one.name().equals(kinds.property())).findFirst().orElseThrow()
                .of(owner);
        return kind == null ? kinds.fallback() : WireNames.of((Enum<?>) kind);
    }
}
