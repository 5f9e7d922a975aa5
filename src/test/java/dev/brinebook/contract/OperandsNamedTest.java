// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Main;
import dev.brinebook.api.From;
import dev.brinebook.api.Operation;
import dev.brinebook.http.RandomRequests;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Every operand that a component of an answer names is there: in its record, or in an answer that has the record. */
class OperandsNamedTest {

    /** Results that name operands, so that they cannot get lost. */
    private static final int LEAST = 70;

    @Test
    void everyOperandIsInTheAnswer() {
        List<String> lost = new ArrayList<>();
        Set<RecordComponent> naming = new LinkedHashSet<>();
        Set<RecordComponent> found = new LinkedHashSet<>();
        for (Operation<?, ?> operation : Main.OPERATIONS) {
            for (Class<?> part : parts(operation.answerType())) {
                for (RecordComponent component : part.getRecordComponents()) {
                    if (component.isAnnotationPresent(From.class)) {
                        naming.add(component);
                        boolean all = List.of(component.getAnnotation(From.class).value()).stream().allMatch(from -> from.startsWith("/")
                                ? Assumed.find(operation.answerType(), from).isPresent() : Assumed.find(part, "/" + from).isPresent());
                        if (all) {
                            found.add(component);
                        }
                    }
                }
            }
        }
        naming.stream().filter(component -> !found.contains(component)).forEach(component -> lost.add(component.getDeclaringRecord()
                .getSimpleName() + "." + component.getName()));
        assertEquals(List.of(), lost);
        assertTrue(naming.size() >= LEAST, () -> naming.size() + " results name operands");
    }

    private static Set<Class<?>> parts(Class<?> answer) {
        Set<Class<?>> parts = new LinkedHashSet<>();
        collect(answer, parts);
        return parts;
    }

    private static void collect(Type type, Set<Class<?>> to) {
        Class<?> part = RandomRequests.record(type);
        if (part != null && to.add(part)) {
            for (RecordComponent component : part.getRecordComponents()) {
                collect(component.getGenericType(), to);
            }
        }
    }
}
