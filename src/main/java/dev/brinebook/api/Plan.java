// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;

/** What a type of request record says of itself, read once. */
record Plan(List<Component> components, DiscriminatorValues kinds, List<AlternativeRule> alternatives) {

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
        return new Plan(components, DiscriminatorValues.of(type), AlternativeRule.of(type));
    }

    /** Whether a record has the component of that name. */
    boolean has(String name, Record owner) {
        return named(name).of(owner) != null;
    }

    /** The properties that a record of {@code kind} has. */
    List<String> namesOf(String kind) {
        return components.stream().filter(one -> DiscriminatorValues.belongs(one.property(), kind)).map(Component::name).toList();
    }

    /** The rules about properties that belong to {@code kind}, which is null where a record has none or has not said it. */
    List<AlternativeRule> alternativesOf(String kind) {
        return alternatives.isEmpty() ? alternatives : alternatives.stream().filter(rule -> rule.alternatives().stream()
                .flatMap(List::stream).map(name -> named(name).property())
                .allMatch(property -> kind == null ? !DiscriminatorValues.depends(property) : DiscriminatorValues.belongs(property, kind)))
                .toList();
    }

    private Component named(String name) {
        return components.stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
    }

    /** The kind of a record; null where it has none, or where its discriminator is missing or wrong. */
    String kind(Record owner, Violations at) {
        if (kinds.isEmpty() || at.at(kinds.property()).here()) {
            return null;
        }
        Object kind = named(kinds.property()).of(owner);
        return kind == null ? kinds.fallback() : WireNames.of((Enum<?>) kind);
    }
}
