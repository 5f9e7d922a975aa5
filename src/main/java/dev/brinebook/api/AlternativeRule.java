// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.api.Violation.Code;
import dev.brinebook.text.Joint;
import dev.brinebook.text.Message;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.function.Predicate;

/**
 * What {@link Alternatives} says of a record.
 *
 * @param alternatives the names of each alternative
 * @param required whether one must be given
 * @param several whether more than one may be given
 */
public record AlternativeRule(List<List<String>> alternatives, boolean required, boolean several) {

    /**
     * The rules of a record, in their order.
     *
     * @throws IllegalStateException when one names a property that there is not
     */
    public static List<AlternativeRule> of(Class<?> record) {
        List<String> known = Arrays.stream(record.getRecordComponents()).map(component -> component.getName()).toList();
        return Arrays.stream(record.getAnnotationsByType(Alternatives.class)).map(rule -> {
            List<List<String>> alternatives = Arrays.stream(rule.value()).map(names -> List.of(names.split(" \\+ "))).toList();
            if (alternatives.size() < 2 || !alternatives.stream().allMatch(known::containsAll)) {
                throw new IllegalStateException(record + " has no such alternatives: " + alternatives);
            }
            return new AlternativeRule(alternatives, rule.required(), rule.several());
        }).toList();
    }

    /** Whether the rule is about properties that a schema with {@code names} has. */
    public boolean concerns(Collection<String> names) {
        return alternatives.stream().allMatch(names::containsAll);
    }

    /** Reports what breaks the rule; {@code given} says which properties a request has. */
    void check(Predicate<String> given, Violations at) {
        if (isKept(given)) {
            return;
        }
        List<List<String>> begun = alternatives.stream().filter(names -> names.stream().anyMatch(given)).toList();
        boolean complete = begun.stream().anyMatch(names -> names.stream().allMatch(given));
        if (required && (several ? !complete : begun.isEmpty())) {
            if (!at.here()) {
                String first = alternatives.get(0).get(0);
                at.add(first, Code.MISSING, Message.of("alternatives.missing", first, choice()));
            }
        } else if (!several && !begun.isEmpty()) {
            begun.get(0).stream().filter(given.negate()).forEach(name ->
                    at.add(name, Code.MISSING, Message.of("alternatives.missingTogether", name, together(begun.get(0)))));
            begun.stream().skip(1).flatMap(List::stream).filter(given).forEach(name ->
                    at.add(name, Code.INCONSISTENT, Message.of("alternatives.omitWhen",
                            together(begun.get(0).stream().filter(given).toList()))));
        }
    }

    private boolean isKept(Predicate<String> given) {
        int begun = 0;
        int complete = 0;
        for (List<String> names : alternatives) {
            int there = 0;
            for (String name : names) {
                there += given.test(name) ? 1 : 0;
            }
            begun += there > 0 ? 1 : 0;
            complete += there == names.size() ? 1 : 0;
        }
        return several ? complete > 0 || !required : begun == complete && (begun == 1 || begun == 0 && !required);
    }

    /** Every alternative, in words. */
    private Message choice() {
        return Message.joined(Joint.SEMICOLON, alternatives.stream().map(AlternativeRule::together).toList());
    }

    private static Message together(List<String> names) {
        return Message.joined(Joint.AND, names.stream().map(name -> Message.verbatim("`" + name + "`")).toList());
    }
}
