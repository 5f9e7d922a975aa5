// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.api.ExplanationAnswer.Operand;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The results of an answer that another result is calculated from, as {@link From} says. */
final class Operands {

    private Operands() {
    }

    /** Those of the result at {@code path}, or of the nearest part around it that names any; none for every element of a list. */
    static List<Operand> of(Record answer, List<String> path) {
        List<String> pointers = List.of();
        Object place = answer;
        for (int depth = 0; depth < path.size(); depth++) {
            String name = path.get(depth);
            String at = path.subList(0, depth).stream().map(part -> "/" + part).collect(Collectors.joining());
            List<String> named = Places.components(place).filter(component -> component.name().equals(name))
                    .flatMap(component -> Stream.ofNullable(component.component().getAnnotation(From.class)))
                    .filter(from -> takes(answer, from.unless()))
                    .flatMap(from -> Arrays.stream(from.value())).map(from -> from.startsWith("/") ? from : at + "/" + from).toList();
            pointers = named.isEmpty() ? pointers : named;
            Optional<Object> next = name.equals(Places.EVERY) ? Optional.empty() : Places.below(place, name).findFirst();
            if (next.isEmpty()) {
                return List.of();
            }
            place = next.get();
        }
        return pointers.stream().flatMap(pointer -> at(answer, "", pointer.substring(1).split("/"), 0)).toList();
    }

    private static boolean takes(Record answer, String[] unless) {
        return unless.length == 0 || at(answer, "", unless[0].substring(1).split("/"), 0)
                .noneMatch(operand -> operand.value() instanceof Enum<?> code && List.of(unless).contains(WireNames.of(code)));
    }

    private static Stream<Operand> at(Object place, String owner, String[] path, int depth) {
        if (depth == path.length) {
            return Stream.ofNullable(Places.plain(place)).map(value -> new Operand(owner, value));
        } else if (path[depth].equals(Places.EVERY) && place instanceof List<?> list) {
            return IntStream.range(0, list.size()).boxed().flatMap(i -> at(list.get(i), owner + "/" + i, path, depth + 1));
        }
        return Places.below(place, path[depth]).flatMap(next -> at(next, owner + "/" + path[depth], path, depth + 1));
    }
}
