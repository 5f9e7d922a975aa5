// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import dev.brinebook.agent.ValueText.Rounding;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.WireNames;
import dev.brinebook.caution.Severity;
import dev.brinebook.text.Message;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * An answer as one text: cautions, worst first; what to do; the figures that matter; what was assumed; what can be asked next. Stop and
 * warning stand in it word for word whatever else is left out.
 */
final class AnswerText {

    /** Components of an answer that have lines of their own, and are none of its figures. */
    static final Set<String> APART = Set.of("summary", "verdict", "cautions", "assumptions", "basis", "modelVersion");

    enum Detail { NUMBERS, STANDARD, FULL }

    /** Characters up to which notes are given in full: about 800 tokens. */
    private static final int LONGEST_WITH_NOTES = 2_500;
    private static final String FOLDED = "More notes: %s (sentences: detail full)";
    private static final int MOST_ASSUMED = 4;
    private static final int MOST_PARTS = 10;
    private static final int MOST_CHANGES = 2;
    private static final int LONGEST_NOTE = 40;
    /** What changes an answer most, where it was assumed. */
    private static final List<String> MATTERS = List.of("/household/country", "/softener/saltDose", "/saltDose",
            "/household/usePerPerson", "/household/dailyUse", "/water/iron", "/water/hardnessUncertainty", "/softener/resinVolume",
            "/prices/saltBag", "/prices/water", "/water/supply", "/preferences/capacityTable", "/household/dayToDayVariation",
            "/preferences/serviceStandard/hardDaysPerYear", "/household/continuousFlow", "/water/temperature", "/household/bathrooms");

    private final Operation<?, ?> operation;
    private final Record answer;
    private final Calculation calculation;
    private final ValueText words;

    AnswerText(Operation<?, ?> operation, Record answer, Calculation calculation) {
        this.operation = operation;
        this.answer = answer;
        this.calculation = calculation;
        this.words = new ValueText(calculation.language());
    }

    /** The text; {@code extra} lines stand behind the figures. */
    String of(Detail detail, List<String> extra) {
        List<String> lines = new ArrayList<>(warnings());
        List<String> body = body(detail, extra);
        int length = Stream.concat(lines.stream(), body.stream()).mapToInt(line -> line.length() + 1).sum();
        int room = detail == Detail.FULL ? Integer.MAX_VALUE : detail == Detail.NUMBERS ? 0 : LONGEST_WITH_NOTES - length;
        lines.addAll(notes(room));
        lines.addAll(body);
        return String.join("\n", lines) + "\n";
    }

    /** The first notes as sentences as far as there is room, the others as codes. */
    private List<String> notes(int room) {
        List<CautionAnswer> notes = cautions().stream().filter(one -> one.severity() == Severity.INFO).toList();
        List<String> lines = new ArrayList<>();
        int left = room;
        if (!notes.isEmpty() && notes.stream().mapToInt(one -> line(one).length() + 1).sum() > left) {
            left -= FOLDED.length() + notes.stream().mapToInt(one -> WireNames.of(one.code()).length() + 2).sum();
            while (lines.size() < notes.size() - 1 && left > line(notes.get(lines.size())).length()) {
                left -= line(notes.get(lines.size())).length() + 1;
                lines.add(line(notes.get(lines.size())));
            }
            lines.add(FOLDED.formatted(notes.stream().skip(lines.size()).map(one -> WireNames.of(one.code()))
                    .collect(Collectors.joining(", "))));
        } else {
            notes.forEach(note -> lines.add(line(note)));
        }
        return lines;
    }

    private List<String> body(Detail detail, List<String> extra) {
        List<String> lines = new ArrayList<>();
        if (detail != Detail.NUMBERS) {
            String summary = said("/summary");
            if (summary != null) {
                lines.add("Summary: " + summary);
            }
            if (said("/verdict/step") != null) {
                lines.add("Verdict: " + said("/verdict/step") + "; confidence " + said("/verdict/confidence"));
            }
            String changes = AnswerTree.list(answer, "/verdict/wouldChange").stream().limit(detail == Detail.FULL ? Integer.MAX_VALUE
                    : MOST_CHANGES).map(one -> ((Message) one).in(calculation.language())).collect(Collectors.joining(" "));
            if (!changes.isEmpty()) {
                lines.add("Would change it: " + ValueText.plain(changes));
            }
        }
        Set<String> assumed = assumptions().stream().filter(one -> one.origin() == Resolved.Origin.DEFAULT).map(one ->
                one.place().substring(one.place().lastIndexOf('/') + 1)).collect(Collectors.toSet());
        lines.addAll(new FigureTable(words, assumed::contains).figures(operation.id(), answer));
        if (AnswerTree.at(answer, "/equalNumbers") != null) {
            lines.addAll(new DifferenceLines(words).of(answer));
        }
        lines.addAll(extra);
        if (detail == Detail.FULL) {
            lines.addAll(parts());
        } else if (detail == Detail.STANDARD) {
            lines.add(assumed());
            lines.add(more());
        }
        lines.add("Model " + AnswerTree.at(answer, "/modelVersion"));
        return lines;
    }

    private String said(String pointer) {
        return words.of(AnswerTree.at(answer, pointer), "", Rounding.SETTING);
    }

    /** Every stop and warning, word for word. */
    List<String> warnings() {
        return cautions().stream().filter(one -> one.severity() != Severity.INFO).map(this::line).toList();
    }

    private String line(CautionAnswer caution) {
        String severity = caution.severity() == Severity.INFO ? "note" : caution.severity().name().toUpperCase(Locale.ROOT);
        return severity + " " + WireNames.of(caution.code()) + ": " + caution.message().in(calculation.language());
    }

    private List<CautionAnswer> cautions() {
        return AnswerTree.list(answer, "/cautions").stream().map(CautionAnswer.class::cast).toList();
    }

    private List<Resolved> assumptions() {
        return AnswerTree.list(answer, "/assumptions").stream().map(Resolved.class::cast)
                .filter(one -> one.origin() != Resolved.Origin.CALLER).toList();
    }

    private String assumed() {
        List<Resolved> all = assumptions();
        String those = all.stream().filter(one -> one.origin() != Resolved.Origin.ESTIMATED && MATTERS.contains(one.place()))
                .sorted(Comparator.comparing(one -> MATTERS.indexOf(one.place()))).limit(MOST_ASSUMED).map(this::assumption)
                .collect(Collectors.joining("; "));
        return "Assumed (" + all.size() + (those.isEmpty() ? ")." : "; these matter most): " + those + ".");
    }

    private String assumption(Resolved one) {
        String value = one.value() != null ? words.of(one.value(), "", Rounding.FOUR_DIGITS) + (one.unit() == null ? "" : " " + one.unit())
                : one.code() != null ? one.code() : "";
        String note = one.note() == null ? "" : one.note().in(calculation.language());
        return (one.place() + " " + value + (note.isEmpty() || note.length() > LONGEST_NOTE ? "" : " (" + note + ")")).strip();
    }

    private String more() {
        String parts = AnswerTree.components(answer).entrySet().stream().filter(part -> !APART.contains(part.getKey())
                && (part.getValue() instanceof Record || part.getValue() instanceof List<?> list && !list.isEmpty()))
                .map(part -> "/" + part.getKey()).limit(MOST_PARTS).collect(Collectors.joining(", "));
        return "More: calculate " + operation.id() + " with show of " + (parts.isEmpty() ? "/assumptions" : parts + ", /assumptions")
                + ", or explain of any figure's pointer.";
    }

    /** Parts in full, by pointers. */
    List<String> shown(List<String> pointers) {
        PartLines parts = new PartLines(words, operation.path());
        List<String> nothing = new ArrayList<>();
        for (String pointer : pointers) {
            Object part = AnswerTree.at(answer, pointer);
            if (part == null) {
                nothing.add(nothingAt(pointer));
            } else {
                parts.add(pointer, part);
            }
        }
        return Stream.concat(parts.lines().stream(), nothing.stream()).toList();
    }

    private List<String> parts() {
        return shown(AnswerTree.components(answer).keySet().stream().filter(name -> !Set.of("summary", "cautions", "basis", "modelVersion")
                .contains(name)).map(name -> "/" + name).toList());
    }

    /** What each result rests on. */
    List<String> explained(List<String> pointers) {
        ExplanationLines explanation = new ExplanationLines(operation.id(), answer, calculation.language());
        List<String> lines = new ArrayList<>();
        for (String pointer : pointers) {
            List<String> found = explanation.of(pointer);
            lines.addAll(found.isEmpty() ? List.of(nothingAt(pointer)) : found);
        }
        lines.add(assumed());
        return lines;
    }

    private String nothingAt(String pointer) {
        String safe = pointer.matches("[A-Za-z0-9/_-]{1,80}") ? pointer : "?";
        return "Nothing at " + safe + ". Parts: " + AnswerTree.components(answer).keySet().stream().map(name -> "/" + name)
                .collect(Collectors.joining(", "));
    }
}
