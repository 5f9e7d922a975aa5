// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodType;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What a type of request record says of itself, read once.
 *
 * @param rules the rules about properties, by the kind that they were asked for
 */
record Plan(List<Component> components, Map<String, Component> byName, DiscriminatorValues kinds, List<AlternativeRule> alternatives,
        Map<String, List<AlternativeRule>> rules) {

    private static final String NO_KIND = "";

    record Component(String name, RecordComponent component, MethodHandle reader, Property property, Limits limits) {

        Class<?> type() {
            return component.getType();
        }

        /** Its value, of a record of the type that it belongs to. */
        Object of(Record owner) {
            try {
                return (Object) reader.invokeExact(owner);
            } catch (RuntimeException | Error e) {
                throw e;
            } catch (Throwable e) { // what a method handle declares
                throw new IllegalStateException(component + " cannot be read", e);
            }
        }
    }

    static Plan of(Class<?> type) {
        RecordComponent[] declared = type.getRecordComponents();
        List<MethodHandle> readers = RecordShape.of(type).readers();
        List<Component> components = IntStream.range(0, declared.length).mapToObj(i -> {
            Property property = declared[i].getAnnotation(Property.class);
            if (property == null) {
                throw new IllegalStateException(type + "." + declared[i].getName() + " has no @Property");
            }
            return new Component(declared[i].getName(), declared[i],
                    readers.get(i).asType(MethodType.methodType(Object.class, Record.class)), property, new Limits(property));
        }).toList();
        return new Plan(components, components.stream().collect(Collectors.toUnmodifiableMap(Component::name, Function.identity())),
                DiscriminatorValues.of(type), AlternativeRule.of(type), new ConcurrentHashMap<>());
    }

    /** Whether a record has the component of that name. */
    boolean has(String name, Record owner) {
        return byName.get(name).of(owner) != null;
    }

    /** The properties that a record of {@code kind} has. */
    List<String> namesOf(String kind) {
        return components.stream().filter(one -> DiscriminatorValues.belongs(one.property(), kind)).map(Component::name).toList();
    }

    /** The rules about properties that belong to {@code kind}, which is null where a record has none or has not said it. */
    List<AlternativeRule> alternativesOf(String kind) {
        return alternatives.isEmpty() ? alternatives : rules.computeIfAbsent(kind == null ? NO_KIND : kind, asked ->
                alternatives.stream().filter(rule -> isOf(rule, kind)).toList());
    }

    private boolean isOf(AlternativeRule rule, String kind) {
        return rule.alternatives().stream().flatMap(List::stream).map(name -> byName.get(name).property())
                .allMatch(property -> kind == null ? !DiscriminatorValues.depends(property) : DiscriminatorValues.belongs(property, kind));
    }

    /** The kind of a record; null where it has none, or where its discriminator is missing or wrong. */
    String kind(Record owner, Violations at) {
        if (kinds.isEmpty() || at.at(kinds.property()).here()) {
            return null;
        }
        Object kind = byName.get(kinds.property()).of(owner);
        return kind == null ? kinds.fallback() : WireNames.of((Enum<?>) kind);
    }
}
