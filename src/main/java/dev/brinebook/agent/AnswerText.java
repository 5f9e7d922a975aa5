// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import dev.brinebook.agent.ValueText.Rounding;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.WireNames;
import dev.brinebook.caution.Severity;
import dev.brinebook.text.Message;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * An answer as one text: cautions, worst first; what to do; the figures that matter; what was assumed; what can be asked next. Stop and
 * warning stand in it word for word whatever else is left out.
 */
final class AnswerText {

    /** Components of an answer that are told apart from its figures. */
    static final Set<String> APART = Set.of("summary", "verdict", "cautions", "assumptions", "basis", "modelVersion");

    enum Detail { NUMBERS, STANDARD, FULL }

    /** Characters up to which notes are given in full: about 800 tokens. */
    private static final int LONGEST_WITH_NOTES = 2_500;
    private static final String FOLDED = "More notes: %s (sentences: detail full)";
    /** About 6,000 tokens of JSON. */
    private static final int LONGEST_PARTS = 15_000;
    private static final int MOST_ASSUMED = 6;
    private static final int LONGEST_NOTE = 60;
    /** What changes an answer most, where it was assumed. */
    private static final List<String> MATTERS = List.of("/softener/saltDose", "/saltDose", "/household/usePerPerson", "/household/dailyUse",
            "/water/iron", "/water/hardnessUncertainty", "/softener/resinVolume", "/prices/saltBag", "/prices/water", "/water/supply",
            "/preferences/capacityTable", "/household/dayToDayVariation", "/preferences/serviceStandard/hardDaysPerYear",
            "/household/continuousFlow", "/water/temperature", "/household/bathrooms");

    private final String operation;
    private final Record answer;
    private final Calculation calculation;
    private final ValueText words;

    AnswerText(String operation, Record answer, Calculation calculation) {
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
        if (notes.stream().mapToInt(one -> line(one).length() + 1).sum() > left) {
            left -= FOLDED.length() + notes.stream().mapToInt(one -> WireNames.of(one.code()).length() + 2).sum();
            while (left > line(notes.get(lines.size())).length()) {
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
        }
        Set<String> assumed = assumptions().stream().filter(one -> one.origin() == Resolved.Origin.DEFAULT).map(one ->
                one.place().substring(one.place().lastIndexOf('/') + 1)).collect(Collectors.toSet());
        lines.addAll(new FigureTable(words, assumed::contains).figures(operation, answer));
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
        return words.of(AnswerTree.at(answer, pointer), "", Rounding.NONE);
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
                .map(part -> "/" + part.getKey()).collect(Collectors.joining(", "));
        return "More: calculate " + operation + " with show of " + (parts.isEmpty() ? "/assumptions" : parts + ", /assumptions")
                + ", or explain of any figure's pointer.";
    }

    /** Parts in full, by pointers. */
    List<String> shown(List<String> pointers) {
        return pointers.stream().map(pointer -> {
            Object part = AnswerTree.at(answer, pointer);
            return part == null ? nothingAt(pointer) : pointer + " " + new String(calculation.write(part), StandardCharsets.UTF_8);
        }).toList();
    }

    private List<String> parts() {
        List<String> lines = new ArrayList<>();
        List<String> left = new ArrayList<>();
        int length = 0;
        for (String name : AnswerTree.components(answer).keySet()) {
            if (!Set.of("summary", "cautions", "basis", "modelVersion").contains(name)) {
                String part = shown(List.of("/" + name)).get(0);
                if (length + part.length() > LONGEST_PARTS) {
                    left.add("/" + name);
                } else {
                    length += part.length();
                    lines.add(part);
                }
            }
        }
        if (!left.isEmpty()) {
            lines.add("Left out, as too long together: " + String.join(", ", left) + " (show has each).");
        }
        return lines;
    }

    /** What each result rests on. */
    List<String> explained(List<String> pointers) {
        List<String> lines = new ArrayList<>();
        for (String pointer : pointers) {
            Object value = AnswerTree.at(answer, pointer);
            if (value == null) {
                lines.add(nothingAt(pointer));
                continue;
            }
            String said = words.of(value, pointer.substring(pointer.lastIndexOf('/') + 1), Rounding.NONE);
            lines.add(pointer + (said == null ? "" : " = " + ValueText.plain(said)));
            List<String> formulas = AnswerExplanation.of(answer, pointer).stream().map(this::basis).toList();
            reason(pointer).filter(reason -> formulas.stream().noneMatch(formula -> formula.contains(reason)))
                    .ifPresent(reason -> lines.add("  numbers: " + reason));
            lines.addAll(formulas);
        }
        lines.add(assumed());
        return lines;
    }

    private String basis(BasisAnswer entry) {
        return "  formula: " + entry.formula().in(calculation.language()) + " Source (" + WireNames.of(entry.kind()) + "): "
                + entry.source();
    }

    /** The reason that an answer gives for a setting, with the numbers of this case. */
    private Optional<String> reason(String pointer) {
        int end = pointer.lastIndexOf('/');
        String setting = pointer.substring(end + 1);
        return AnswerTree.list(answer, pointer.substring(0, Math.max(0, end)) + "/reasons").stream().filter(Record.class::isInstance)
                .map(Record.class::cast).filter(one -> setting.equals(String.valueOf(AnswerTree.component(one, "setting"))))
                .map(one -> ((Message) AnswerTree.component(one, "reason")).in(calculation.language())).findFirst();
    }

    private String nothingAt(String pointer) {
        String safe = pointer.matches("[A-Za-z0-9/_-]{1,80}") ? pointer : "?";
        return "Nothing at " + safe + ". Parts: " + AnswerTree.components(answer).keySet().stream().map(name -> "/" + name)
                .collect(Collectors.joining(", "));
    }
}
