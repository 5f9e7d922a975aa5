// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.comparison;

import dev.brinebook.api.AnswerValues.Value;
import dev.brinebook.model.ModelChange;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * The values of two answers by key, and of what each change of the model alone makes of that of the older model.
 *
 * @param before values of the first answer
 * @param after values of the second
 * @param backwards whether the first is of the newer model
 * @param alone values of the answer of the older model with one change made, for each that lies between the two models; none where there
 *         is one model
 */
record AnswerComparison(Map<String, Value> before, Map<String, Value> after, boolean backwards,
        Map<ModelChange, Map<String, Value>> alone) {

    /** Works out what each change does alone, but where nothing differs, or where there is no other change. */
    static AnswerComparison of(Map<String, Value> before, Map<String, Value> after, boolean backwards, List<ModelChange> changes,
            Function<ModelChange, Map<String, Value>> made) {
        Map<ModelChange, Map<String, Value>> alone = new EnumMap<>(ModelChange.class);
        if (new AnswerComparison(before, after, backwards, Map.of()).differs()) {
            Map<String, Value> newer = backwards ? before : after;
            changes.forEach(change -> alone.put(change, changes.size() == 1 ? newer : made.apply(change)));
        }
        return new AnswerComparison(before, after, backwards, alone);
    }

    private boolean differs() {
        return !before.keySet().equals(after.keySet()) || before.keySet().stream().anyMatch(this::differs);
    }

    private boolean differs(String key) {
        return !isSame(before.get(key), after.get(key));
    }

    private static boolean isSame(Value one, Value other) {
        return one == null ? other == null : one.isSameAs(other);
    }

    int equalNumbers() {
        return (int) before.entrySet().stream().filter(entry -> entry.getValue().number() != null
                && entry.getValue().isSameAs(after.get(entry.getKey()))).count();
    }

    /** In the order of the second answer; then what only the first has. */
    List<ValueDifference> differences() {
        List<String> keys = new ArrayList<>(after.keySet());
        before.keySet().stream().filter(key -> !after.containsKey(key)).forEach(keys::add);
        return keys.stream().filter(this::differs).map(this::difference).toList();
    }

    private ValueDifference difference(String key) {
        if (alone.isEmpty()) {
            return ValueDifference.of(before.get(key), after.get(key), null, null);
        }
        Set<ModelChange> exactly = changes(key, value -> isSame(value, (backwards ? before : after).get(key)));
        Set<ModelChange> moving = changes(key, value -> !isSame(value, (backwards ? after : before).get(key)));
        Set<ModelChange> causes = !exactly.isEmpty() ? exactly : moving.size() > 1 ? moving : alone.keySet();
        return ValueDifference.of(before.get(key), after.get(key), causes.stream().map(ModelChange::id).toList(), exactly.isEmpty());
    }

    private Set<ModelChange> changes(String key, Predicate<Value> of) {
        return alone.entrySet().stream().filter(entry -> of.test(entry.getValue().get(key))).map(Map.Entry::getKey)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
