// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import dev.brinebook.agent.ValueText.Rounding;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The values that differ between two answers, as lines: what people act on first. */
final class DifferenceLines {

    private static final int MOST_LINES = 12;
    private static final List<String> FIRST = List.of("settings", "verdict", "year");

    private final ValueText words;

    DifferenceLines(ValueText words) {
        this.words = words;
    }

    /** The lines of the comparison {@code answer}. */
    List<String> of(Record answer) {
        List<?> all = AnswerTree.list(answer, "/differences");
        List<String> lines = new ArrayList<>(List.of("Differences: " + all.size() + "; equal numbers: "
                + words.of(AnswerTree.at(answer, "/equalNumbers"), "equalNumbers", Rounding.SETTING)));
        all.stream().sorted(Comparator.comparing(DifferenceLines::rank)).limit(MOST_LINES).map(this::line).forEach(lines::add);
        if (all.size() > MOST_LINES) {
            lines.add("and " + (all.size() - MOST_LINES) + " more: show [\"/differences\"]");
        }
        return lines;
    }

    private static int rank(Object difference) {
        List<String> names = List.of(pointer(difference).split("/"));
        return IntStream.range(0, FIRST.size()).filter(i -> names.contains(FIRST.get(i))).findFirst().orElse(FIRST.size());
    }

    private static String pointer(Object difference) {
        return (String) AnswerTree.at(difference, "/pointer");
    }

    private String line(Object difference) {
        String causes = AnswerTree.list(difference, "/causes").stream().map(String::valueOf).collect(Collectors.joining(", "));
        String name = pointer(difference).substring(pointer(difference).lastIndexOf('/') + 1);
        List<String> sides = Stream.of("before", "after").map(side -> side(AnswerTree.at(difference, "/" + side), name)).toList();
        // Two that differ in further digits alone would look the same.
        boolean alike = sides.get(0).equals(sides.get(1));
        String change = alike ? words.of(AnswerTree.at(difference, "/change"), "", Rounding.FOR_PEOPLE) : null;
        return pointer(difference) + ": " + sides.get(0) + " → " + sides.get(1) + (change == null ? "" : ", change " + change)
                + (causes.isEmpty() ? "" : " (" + causes + ")");
    }

    private String side(Object value, String name) {
        Object number = AnswerTree.at(value, "/value");
        String said = number instanceof BigDecimal ? words.of(number, name, Rounding.FOR_PEOPLE)
                : Objects.toString(words.of(AnswerTree.at(value, "/code"), name, Rounding.FOR_PEOPLE), "none");
        Object unit = AnswerTree.at(value, "/unit");
        return said + (unit == null ? "" : " " + unit);
    }
}
