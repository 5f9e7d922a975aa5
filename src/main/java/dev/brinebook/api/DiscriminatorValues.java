// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.text.Message;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** The kinds of a record, as declared by its components with {@link Discriminator} and {@link Property}; none, of most records. */
public final class DiscriminatorValues {

    private final RecordComponent chooser;
    private final List<String> names;
    private final Set<String> named;

    private DiscriminatorValues(RecordComponent chooser, List<String> names, Set<String> named) {
        this.chooser = chooser;
        this.names = names;
        this.named = named;
    }

    /**
     * The kinds of a record.
     *
     * @throws IllegalStateException when a component names a kind that there is not
     */
    public static DiscriminatorValues of(Class<?> type) {
        List<RecordComponent> components = List.of(type.getRecordComponents());
        List<RecordComponent> choosers = components.stream().filter(one -> one.isAnnotationPresent(Discriminator.class)).toList();
        List<String> names = choosers.size() == 1 ? WireNames.all(choosers.get(0).getType()) : List.of();
        Set<String> named = new LinkedHashSet<>();
        for (RecordComponent component : components) {
            Property property = component.getAnnotation(Property.class);
            if (property != null) {
                Stream.of(property.kinds(), property.exceptKinds()).flatMap(Arrays::stream).forEach(named::add);
            }
        }
        if (choosers.size() > 1 || !names.containsAll(named)) {
            throw new IllegalStateException(type + " names kinds that it does not have: " + named);
        }
        return new DiscriminatorValues(choosers.isEmpty() ? null : choosers.get(0), names, named);
    }

    public boolean isEmpty() {
        return chooser == null;
    }

    /** Name of the property that holds the kind. */
    public String property() {
        return chooser.getName();
    }

    /** The default kind, or null when the kind is required. */
    String fallback() {
        String code = chooser.getAnnotation(Property.class).defaultCode();
        return code.isEmpty() ? null : code;
    }

    /** Whether what {@code property} describes belongs to {@code kind}, which is null of a record without kinds. */
    public static boolean belongs(Property property, String kind) {
        return (property.kinds().length == 0 || Arrays.asList(property.kinds()).contains(kind))
                && !Arrays.asList(property.exceptKinds()).contains(kind);
    }

    /** Whether a property is for some kinds only. */
    static boolean depends(Property property) {
        return property.kinds().length > 0 || property.exceptKinds().length > 0;
    }

    /** When a property must be left out, in words. */
    Message refusal(Property property) {
        return property.kinds().length == 0
                ? Message.of("kinds.omitWhen", property(), choice(List.of(property.exceptKinds())))
                : Message.of("kinds.omitUnless", property(), choice(List.of(property.kinds())));
    }

    /** The kinds by the first part of the name of the schema that shows them, in their order. */
    public Map<String, List<String>> bySchema() {
        String others = chooser.getAnnotation(Discriminator.class).others();
        Map<String, List<String>> schemas = new LinkedHashMap<>();
        for (String name : names) {
            String prefix = others.isEmpty() || named.contains(name) ? name : others;
            schemas.computeIfAbsent(Character.toUpperCase(prefix.charAt(0)) + prefix.substring(1), p -> new ArrayList<>())
                    .add(name);
        }
        return schemas;
    }

    private static Message choice(List<String> names) {
        int last = names.size() - 1;
        return last == 0 ? Message.verbatim(names.get(0))
                : Message.of("pattern.or", String.join(", ", names.subList(0, last)), names.get(last));
    }
}
