// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import com.fasterxml.jackson.databind.JsonNode;
import dev.brinebook.api.WireNames;
import dev.brinebook.docs.AnsweredExamples.Answered;
import dev.brinebook.source.Source;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The calculation of an operation as its answers give it: the {@code basis} of every committed answer, each formula once. A formula whose
 * words differ between answers only in numbers is one formula, shown with the numbers of the first; a formula in only one answer may also
 * hold numbers of its case.
 */
final class Formulas {

    /**
     * One formula.
     *
     * @param pointers JSON pointers to the results that it gives; a * stands for every element of a list
     * @param formula the formula, in words
     * @param source where it comes from
     * @param numbersOf the example whose numbers the words may hold, or empty
     */
    record Line(Set<String> pointers, String formula, Source source, String numbersOf) {

        /** How far the source can be trusted, as answers name it. */
        String kind() {
            return WireNames.of(source.kind());
        }
    }

    private record Meaning(String pointer, String maskedFormula, Source source) {
    }

    private record FirstSeen(String formula, Source source, String example, boolean certain, boolean varies) {

        /** Keeps the first words of a formula, and knows whether other examples have the same numbers. */
        FirstSeen and(FirstSeen next) {
            return next.example.equals(example) && next.formula.equals(formula) ? this
                    : new FirstSeen(formula, source, example, true, varies || !formula.equals(next.formula));
        }

        String numbersOf() {
            return varies || !certain && formula.matches(".*\\d.*") ? example : "";
        }
    }

    private Formulas() {
    }

    static List<Line> of(List<Answered> examples) {
        Map<Meaning, FirstSeen> firstSeen = new LinkedHashMap<>();
        for (Answered example : examples) {
            example.entries("basis").forEach(entry -> add(firstSeen, entry, example.name()));
        }
        Map<Line, Line> lines = new LinkedHashMap<>();
        firstSeen.forEach((meaning, first) -> lines.computeIfAbsent(new Line(Set.of(), first.formula(), first.source(),
                first.numbersOf()), key -> new Line(new TreeSet<>(), key.formula(), key.source(),
                key.numbersOf())).pointers().add(meaning.pointer()));
        return List.copyOf(lines.values());
    }

    private static void add(Map<Meaning, FirstSeen> firstSeen, JsonNode entry, String example) {
        String formula = entry.path("formula").asText();
        Source source = CitedSources.get(entry.path("source").asText());
        firstSeen.merge(new Meaning(pattern(entry.path("pointer").asText()), maskNumbers(formula), source),
                new FirstSeen(formula, source, example, false, false), FirstSeen::and);
    }

    /** An index of a list is replaced by *, for every element. */
    static String pattern(String pointer) {
        return pointer.replaceAll("/\\d+(?=/|$)", "/*");
    }

    static String maskNumbers(String text) {
        return text.replaceAll("\\d+(?:[.,]\\d+)*", "#");
    }
}
