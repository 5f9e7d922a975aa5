// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import dev.brinebook.agent.ValueText.Rounding;
import dev.brinebook.api.Explainer;
import dev.brinebook.api.ExplanationAnswer.Explained;
import dev.brinebook.api.ExplanationAnswer.ExplainedFormula;
import dev.brinebook.api.ExplanationAnswer.FormulaSource;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.WireNames;
import dev.brinebook.text.Language;
import dev.brinebook.text.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a result of an answer rests on, as lines: value, formula, the numbers that went in, source. */
final class ExplanationLines {

    private static final int MOST_FORMULAS = 4;
    private static final int MOST_RESULTS = 20;

    private final String operation;
    private final Record answer;
    private final ValueText words;
    private final Language language;

    ExplanationLines(String operation, Record answer, Language language) {
        this.operation = operation;
        this.answer = answer;
        this.language = language;
        this.words = new ValueText(language);
    }

    /** The lines for {@code pointer}; none where the answer has nothing. */
    List<String> of(String pointer) {
        Explained explained;
        try {
            explained = Explainer.explain(operation, answer, List.of(pointer)).explanations().get(0);
        } catch (InvalidRequest nothing) {
            return List.of();
        }
        Object value = AnswerTree.at(answer, pointer);
        String said = words.of(value, pointer.substring(pointer.lastIndexOf('/') + 1), Rounding.SETTING);
        List<String> lines = new ArrayList<>(List.of(pointer + (said == null ? results(pointer, value) : " = " + said)));
        List<ExplainedFormula> formulas = nearest(explained.formulas(), pointer);
        reason(pointer).filter(reason -> formulas.stream().noneMatch(one -> one.formula().in(language).contains(reason)))
                .ifPresent(reason -> lines.add("  numbers: " + reason));
        formulas.stream().limit(MOST_FORMULAS).map(one -> formula(one, pointer)).forEach(lines::add);
        if (formulas.isEmpty()) {
            lines.add("  It has no formula: it is a fact of the request, a choice or a text.");
        } else if (formulas.size() > MOST_FORMULAS) {
            lines.add("  and " + (formulas.size() - MOST_FORMULAS) + " more formulas: explain a single result of it");
        }
        return lines.stream().map(ValueText::plain).toList();
    }

    /** The results of an object or a list, each with its value where it is one. */
    private String results(String pointer, Object value) {
        List<String> names = new ArrayList<>();
        if (value instanceof Record part) {
            AnswerTree.components(part).forEach((name, one) -> names.add(name + Optional.ofNullable(words.of(one, name, Rounding.SETTING))
                    .filter(text -> !text.isEmpty()).map(text -> " " + text).orElse("")));
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                names.add(Integer.toString(i));
            }
        }
        return names.isEmpty() ? "" : " holds " + names.stream().limit(MOST_RESULTS).collect(Collectors.joining("; "))
                + (names.size() > MOST_RESULTS ? "; and " + (names.size() - MOST_RESULTS) + " more" : "")
                + ". Explain one by its pointer, such as " + pointer + "/" + names.get(0).split(" ")[0];
    }

    /** Those of the result itself and of what it holds; else those of the nearest part around it. */
    private static List<ExplainedFormula> nearest(List<ExplainedFormula> formulas, String pointer) {
        int deepest = formulas.stream().mapToInt(one -> depth(one.pointer())).filter(depth -> depth <= depth(pointer)).max().orElse(0);
        return formulas.stream().filter(one -> depth(one.pointer()) >= deepest).toList();
    }

    private static int depth(String pointer) {
        return (int) pointer.chars().filter(one -> one == '/').count();
    }

    private String formula(ExplainedFormula one, String pointer) {
        String numbers = one.numbers().stream().map(number -> words.of(number.value(), "", Rounding.FOUR_DIGITS)
                + (number.unit() == null ? "" : " " + number.unit())).collect(Collectors.joining(", "));
        FormulaSource source = one.source();
        return "  formula" + (one.pointer().equals(pointer) ? "" : " of " + one.pointer()) + ": "
                + one.formula().in(language) + (numbers.isEmpty() ? "" : " Numbers: " + numbers + ".") + " Source ("
                + WireNames.of(source.kind()) + "): " + source.key() + ", " + source.title().in(language)
                + (source.url() == null ? "" : ", " + source.url());
    }

    /** The reason that an answer gives for a setting, with the numbers of this case. */
    private Optional<String> reason(String pointer) {
        int end = pointer.lastIndexOf('/');
        String setting = pointer.substring(end + 1);
        return AnswerTree.list(answer, pointer.substring(0, Math.max(0, end)) + "/reasons").stream()
                .filter(one -> setting.equals(Objects.toString(AnswerTree.at(one, "/setting"))))
                .map(one -> ((Message) AnswerTree.at(one, "/reason")).in(language)).findFirst();
    }
}
