// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Places in answers and requests, by the names of a JSON pointer to them. */
final class Places {

    /** Every element of a list. */
    static final String EVERY = "*";
    private static final List<String> AMOUNT = List.of("value", "unit");

    private Places() {
    }

    /** What is at {@code name} in an object or list. */
    static Stream<Object> below(Object place, String name) {
        if (place instanceof List<?> list) {
            return name.equals(EVERY) ? list.stream().map(Object.class::cast)
                    : IntStream.range(0, list.size()).filter(i -> Integer.toString(i).equals(name)).mapToObj(list::get);
        }
        return components(place).filter(component -> component.name().equals(name))
                .map(component -> component.of((Record) place)).filter(value -> value != null);
    }

    /** Of an object; none of any other value. */
    static Stream<Plan.Component> components(Object place) {
        return place instanceof Record part && AnswerPart.isObject(part.getClass()) ? Plan.of(part.getClass()).components().stream()
                : Stream.empty();
    }

    /** Whether one of two places holds the other, or is it; {@code pointer} may have {@code *} too. */
    static boolean meet(String pointer, List<String> path) {
        String[] names = pointer.substring(1).split("/");
        return IntStream.range(0, Math.min(names.length, path.size())).allMatch(i -> names[i].equals(path.get(i))
                || names[i].equals(EVERY) || path.get(i).equals(EVERY));
    }

    /** A number, or the reason why there is none, a quantity, code or text; null for what has parts of its own. */
    static Object plain(Object value) {
        if (value instanceof OptionalResultAnswer figure) {
            return figure.value() == null ? figure.reason() : figure.value();
        }
        boolean amount = components(value).map(Plan.Component::name).limit(AMOUNT.size()).toList().equals(AMOUNT);
        return amount || !(value instanceof List) && components(value).findAny().isEmpty() ? value : null;
    }
}
