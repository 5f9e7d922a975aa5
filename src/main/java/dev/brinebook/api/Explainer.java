// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.api.ExplanationAnswer.Explained;
import dev.brinebook.api.ExplanationAnswer.ExplainedFormula;
import dev.brinebook.api.ExplanationAnswer.FormulaNumber;
import dev.brinebook.api.ExplanationAnswer.FormulaSource;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.caution.Severity;
import dev.brinebook.model.Model;
import dev.brinebook.text.Message;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Explains single results of an answer: from its basis, the results that it takes, and the inputs that it rests on. */
public final class Explainer {

    /** The parameter that names a result, by a JSON pointer into the answer. */
    public static final String POINTER = "pointer";
    /** Results explained in one call at most. */
    public static final int MAX_POINTERS = 5;

    private static final int MOST_NAMES = 40;

    private final Record answer;
    private final List<BasisAnswer> basis;
    private final CaseInputs inputs;

    private Explainer(String calculator, Record request, Record answer) {
        this.answer = answer;
        this.basis = list("basis", BasisAnswer.class);
        this.inputs = new CaseInputs(calculator, request, AnswerHead.of(answer).assumptions());
    }

    /**
     * The explanation of what an operation answers to {@code request}, a request without violations.
     *
     * @param model the version of the model
     * @param pointers JSON pointers into the answer; {@code *} stands for every element of a list
     * @throws InvalidRequest when the answer has nothing at one of them
     */
    public static <Q extends Record> ExplanationAnswer explain(Operation<Q, ?> operation, Q request, Model model,
            List<String> pointers) {
        return explain(operation.id(), request, operation.answer(request, model, AnswerParts.ALL), pointers);
    }

    /**
     * The explanation of an answer that has all its parts.
     *
     * @param calculator the operation that gave it
     * @param request what it answers
     * @param pointers JSON pointers into the answer; {@code *} stands for every element of a list
     * @throws InvalidRequest when the answer has nothing at one of them
     */
    public static ExplanationAnswer explain(String calculator, Record request, Record answer, List<String> pointers) {
        return new Explainer(calculator, request, answer).of(calculator, pointers);
    }

    /** The same of an answer whose request is not at hand: of the inputs, those that the answer lists. */
    public static ExplanationAnswer explain(String calculator, Record answer, List<String> pointers) {
        return explain(calculator, null, answer, pointers);
    }

    private ExplanationAnswer of(String calculator, List<String> pointers) {
        Violations violations = new Violations();
        List<Explained> explained = IntStream.range(0, pointers.size())
                .mapToObj(i -> explained(pointers.get(i), violations.at(POINTER).at(i))).toList();
        if (!violations.isEmpty()) {
            throw new InvalidRequest(violations.sorted());
        }
        return new ExplanationAnswer(calculator, explained, AnswerHead.of(answer).cautions().stream()
                .filter(caution -> caution.severity() != Severity.INFO).toList(), ModelVersion.CURRENT);
    }

    private Explained explained(String pointer, Violations at) {
        List<String> path = pointer.startsWith("/") ? Arrays.asList(pointer.substring(1).split("/", -1)) : List.of(pointer);
        List<Object> places = List.of(answer);
        for (int i = 0; i < path.size(); i++) {
            String name = path.get(i);
            List<Object> next = places.stream().flatMap(place -> Places.below(place, name)).toList();
            if (next.isEmpty() || !pointer.startsWith("/")) {
                at.add(nothing(path.subList(0, i), name, places, at.pointer()));
                return null;
            }
            places = next;
        }
        List<ExplainedFormula> formulas = basis.stream().filter(entry -> Places.meet(entry.pointer(), path)).map(Explainer::formula)
                .toList();
        return new Explained(pointer, path.contains(Places.EVERY) ? null : Places.plain(places.get(0)), formulas,
                Operands.of(answer, path), inputs.of(path));
    }

    private static Violation nothing(List<String> above, String name, List<Object> places, String pointer) {
        Set<String> known = new LinkedHashSet<>();
        places.forEach(place -> {
            if (place instanceof List<?> list) {
                IntStream.range(0, list.size()).limit(MOST_NAMES).forEach(i -> known.add(Integer.toString(i)));
            } else {
                Places.components(place).filter(component -> component.of((Record) place) != null).forEach(component ->
                        known.add(component.name()));
            }
        });
        boolean named = places.stream().noneMatch(List.class::isInstance);
        String start = above.isEmpty() ? "/" : "/" + String.join("/", above) + "/";
        Optional<String> nearest = !named ? Optional.empty() : WireNames.nearest(name, List.copyOf(known)).map(one -> start + one);
        if (nearest.isPresent()) {
            return new Violation(pointer, Code.UNKNOWN_VALUE, Message.of("explainer.didYouMean", nearest.get()), null, nearest.get(), null);
        }
        List<String> there = known.stream().limit(MOST_NAMES).map(one -> start + one).toList();
        return known.isEmpty() ? new Violation(pointer, Code.UNKNOWN_VALUE, Message.of("explainer.nothing"))
                : new Violation(pointer, Code.UNKNOWN_VALUE, Message.of("explainer.known", String.join(", ", there)),
                        Violation.names(there), null, null);
    }

    private static ExplainedFormula formula(BasisAnswer entry) {
        return new ExplainedFormula(entry.pointer(), entry.formula(), entry.formula().numbers().stream()
                .map(number -> new FormulaNumber(number.value(), number.unit())).toList(), FormulaSource.of(entry.key()));
    }

    private <T> List<T> list(String name, Class<T> type) {
        return Places.below(answer, name).flatMap(list -> ((List<?>) list).stream()).map(type::cast).toList();
    }
}
