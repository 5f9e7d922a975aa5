// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import dev.brinebook.api.Violation;
import dev.brinebook.text.Message;
import java.util.List;

/**
 * What came of a calculation.
 *
 * @param answer the answer, or null
 * @param violations the errors of the request, if there is no answer
 * @param problem why there is neither, or null
 */
public record Outcome(Record answer, List<Violation> violations, Message problem) {

    public static Outcome answered(Record answer) {
        return new Outcome(answer, List.of(), null);
    }

    public static Outcome invalid(List<Violation> violations) {
        return new Outcome(null, List.copyOf(violations), null);
    }

    public static Outcome failed(Message problem) {
        return new Outcome(null, List.of(), problem);
    }
}
