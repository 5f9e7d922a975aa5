// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.text.Message;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is written of a part of an answer: the whole of it, or some of its properties. Of a list, the same of every element. */
public final class AnswerPart {

    static final AnswerPart WHOLE = new AnswerPart(null);
    /** Of the list of cautions, those that no answer leaves out. */
    static final AnswerPart SERIOUS_CAUTIONS = new AnswerPart(null);

    private final Map<String, AnswerPart> below;

    private AnswerPart(Map<String, AnswerPart> below) {
        this.below = below;
    }

    static AnswerPart of(Map<String, AnswerPart> below) {
        return new AnswerPart(Map.copyOf(below));
    }

    /** What is written of a property, or null where it is left out. */
    public AnswerPart at(String property) {
        return below == null ? this : below.get(property);
    }

    /** Whether nothing of it is left out below. */
    public boolean isWhole() {
        return below == null;
    }

    /** Whether it is the list of cautions, without those that only inform. */
    public boolean isSeriousCautions() {
        return this == SERIOUS_CAUTIONS;
    }

    /** Numbers and codes alone of a type; null where there are none. */
    static AnswerPart numbers(Class<?> type) {
        if (!isObject(type)) {
            return type == Message.class ? null : WHOLE;
        }
        Map<String, AnswerPart> numbers = new LinkedHashMap<>();
        properties(type).forEach((name, of) -> {
            AnswerPart part = numbers(of);
            if (part != null) {
                numbers.put(name, part);
            }
        });
        boolean whole = numbers.size() == properties(type).size() && numbers.values().stream().allMatch(AnswerPart::isWhole);
        return numbers.isEmpty() ? null : whole ? WHOLE : of(numbers);
    }

    /**
     * The places at {@code paths} alone: what {@code given} has of each, or the whole of one that it leaves out.
     *
     * @param given may be null, where all of it is left out
     */
    static AnswerPart picked(AnswerPart given, List<List<String>> paths) {
        if (paths.contains(List.<String>of())) {
            return given == null ? WHOLE : given;
        }
        Map<String, List<List<String>>> byName = new LinkedHashMap<>();
        paths.forEach(path -> byName.computeIfAbsent(path.get(0), name -> new ArrayList<>()).add(path.subList(1, path.size())));
        Map<String, AnswerPart> picked = new LinkedHashMap<>();
        byName.forEach((name, rests) -> picked.put(name, picked(given == null ? null : given.at(name), rests)));
        return of(picked);
    }

    /** The properties of a type, each with its type or that of its elements; none for a plain value. */
    static Map<String, Class<?>> properties(Class<?> type) {
        Map<String, Class<?>> properties = new LinkedHashMap<>();
        if (isObject(type)) {
            for (RecordComponent component : type.getRecordComponents()) {
                Type of = component.getGenericType();
                properties.put(component.getName(),
                        of instanceof ParameterizedType list ? (Class<?>) list.getActualTypeArguments()[0] : component.getType());
            }
        }
        return properties;
    }

    static boolean isObject(Class<?> type) {
        return type.isAnnotationPresent(SchemaDescription.class);
    }
}
