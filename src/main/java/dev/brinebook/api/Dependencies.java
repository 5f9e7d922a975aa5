// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.source.Table;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which inputs can move each result of each operation. The table was found by changing every input of requests and seeing which results
 * move; a result also rests on what those rest on that it is calculated from or chosen together with.
 */
public final class Dependencies {

    private static final Pattern GROUP = Pattern.compile("([^ ()]+)(?:\\(([^)]*)\\))?");
    private static final Map<String, List<Row>> ROWS = Table.read("/dev/brinebook/api/dependencies.txt", '|', 3).stream()
            .collect(Collectors.groupingBy(cells -> cells[0], Collectors.flatMapping(cells -> rows(cells[1], inputs(cells[2])),
                    Collectors.toList())));

    private static final Map<String, String> NAMED = Table.read("/dev/brinebook/api/named-assumptions.txt", '|', 2).stream()
            .collect(Collectors.toMap(cells -> cells[0], cells -> cells[1]));

    /**
     * A result.
     *
     * @param pointer to it, with {@code *} for any element of a list
     * @param inputs pointers into the request, to lists as wholes
     */
    public record Row(String pointer, Set<String> inputs) {

        public Row {
            inputs = Set.copyOf(inputs);
        }
    }

    private Dependencies() {
    }

    private static Stream<Row> rows(String pointers, Set<String> inputs) {
        return Stream.of(pointers.split(" ")).map(pointer -> new Row(pointer, inputs));
    }

    /** Every result of an operation that some input moves. */
    public static List<Row> of(String operation) {
        return List.copyOf(ROWS.getOrDefault(operation, List.of()));
    }

    /** The inputs of the results at a place, or of the result it is in. */
    static Set<String> of(String operation, List<String> path) {
        return of(operation).stream().filter(row -> Places.meet(row.pointer(), path)).flatMap(row -> row.inputs().stream())
                .collect(Collectors.toSet());
    }

    /** Whether what rests on {@code inputs} rests on an assumption that has no pointer, but a name. */
    static boolean restOn(String name, Set<String> inputs) {
        String end = NAMED.get(name);
        return end != null && inputs.stream().anyMatch(input -> input.endsWith(end));
    }

    /** The input that a pointer belongs to: a list as a whole. */
    public static String input(String pointer) {
        return pointer.replaceAll("/(\\d+|\\*)(/.*)?$", "");
    }

    /** {@code /water(iron sodium) /seed} in full. */
    private static Set<String> inputs(String cell) {
        Set<String> inputs = new LinkedHashSet<>();
        for (Matcher group = GROUP.matcher(cell); group.find();) {
            if (group.group(2) == null) {
                inputs.add(group.group(1));
            } else {
                for (String name : group.group(2).split(" ")) {
                    inputs.add(group.group(1) + "/" + name);
                }
            }
        }
        return inputs;
    }

    /** The inverse: {@code inputs} as a cell of the table. */
    public static String cell(Set<String> inputs) {
        Map<String, List<String>> groups = new TreeMap<>();
        List<String> single = new ArrayList<>();
        inputs.stream().sorted().forEach(input -> {
            int end = input.indexOf('/', 1);
            if (end < 0) {
                single.add(input);
            } else {
                groups.computeIfAbsent(input.substring(0, end), group -> new ArrayList<>()).add(input.substring(end + 1));
            }
        });
        List<String> cells = new ArrayList<>();
        groups.forEach((group, parts) -> cells.add(group + "(" + String.join(" ", parts) + ")"));
        cells.addAll(single);
        return String.join(" ", cells);
    }
}
