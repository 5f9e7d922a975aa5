// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.quantity.Quantity;
import dev.brinebook.text.Message;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The inputs of a case that its results rest on.
 *
 * @param operation that answered it
 * @param request as it was sent, or null
 * @param assumptions what the answer says that inputs came to
 */
record CaseInputs(String operation, Record request, List<Resolved> assumptions) {

    /** Those of the results at a place of the answer: what the request gives first, then what was taken instead. */
    List<Resolved> of(List<String> path) {
        Set<String> inputs = Dependencies.of(operation, path);
        List<Resolved> known = assumptions.stream().filter(one -> one.pointer() == null ? Dependencies.restOn(one.name(), inputs)
                : inputs.stream().anyMatch(input -> isWithin(input, Dependencies.input(one.pointer())))).toList();
        Stream<Resolved> given = inputs.stream().filter(input -> input.startsWith("/")
                && known.stream().noneMatch(one -> isWithin(input, Dependencies.input(one.place()))))
                .sorted().flatMap(input -> given(input).stream());
        return Stream.concat(given, known.stream()).sorted(Comparator.comparing(one -> one.origin() != Resolved.Origin.CALLER)).toList();
    }

    private static boolean isWithin(String input, String place) {
        return input.equals(place) || input.startsWith(place + "/");
    }

    private Optional<Resolved> given(String pointer) {
        Optional<Object> place = Optional.ofNullable(request);
        for (String name : pointer.substring(1).split("/")) {
            place = place.flatMap(part -> part instanceof Record owner ? Plan.of(owner.getClass()).components().stream()
                    .filter(component -> component.name().equals(name)).map(component -> component.of(owner))
                    .filter(value -> value != null).findFirst() : Optional.empty());
        }
        return place.map(value -> resolved(pointer, value));
    }

    /** Null for what has inputs of its own. */
    private static Resolved resolved(String pointer, Object value) {
        if (value instanceof Quantity<?> quantity) {
            return Resolved.of(pointer, quantity);
        } else if (value instanceof Number number) {
            return Resolved.of(pointer, number, null);
        } else if (value instanceof Enum<?> choice) {
            return Resolved.of(pointer, choice);
        } else if (value instanceof List<?> list) {
            return Resolved.inWords(pointer, Message.of("explainer.listOf", list.size()));
        } else if (value instanceof JsonObject) {
            return Resolved.inWords(pointer, Message.of("explainer.caseGiven"));
        }
        return value instanceof Record ? null : Resolved.ofCode(pointer, value.toString());
    }
}
