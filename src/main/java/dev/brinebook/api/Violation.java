// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.text.Message;
import java.util.List;

/**
 * One error in a request.
 *
 * @param pointer JSON pointer to the value with the error
 * @param code stable code of the kind of error
 * @param message one sentence with the error and what is allowed
 * @param allowed what is allowed: the names one by one, or a range as one text; null where neither says it
 * @param didYouMean the nearest known name, or null
 * @param received the value received, when it is short and harmless, or null
 */
public record Violation(String pointer, Code code, Message message, List<Message> allowed, String didYouMean, String received) {

    /** The closed list of kinds of error. */
    public enum Code {
        UNKNOWN_FIELD, MISSING, NULL_VALUE, WRONG_TYPE, UNKNOWN_VALUE, OUT_OF_RANGE, WRONG_COUNT, INCONSISTENT, IMPOSSIBLE
    }

    public Violation {
        allowed = allowed == null ? null : List.copyOf(allowed);
    }

    /** Every name that is allowed, one by one. */
    public static List<Message> names(List<String> names) {
        return names.stream().map(Message::verbatim).toList();
    }

    /** A name that is not known, with the nearest that is, and all of them. */
    public static Violation unknownField(String pointer, String name, List<String> known) {
        String nearest = WireNames.nearest(name, known).orElse(null);
        return new Violation(pointer, Code.UNKNOWN_FIELD, nearest == null
                ? Message.of("faultCollector.unknownFieldKnownFields", String.join(", ", known))
                : Message.of("faultCollector.unknownFieldDidYou", nearest), names(known), nearest, null);
    }

    public Violation(String pointer, Code code, Message message) {
        this(pointer, code, message, null, null, null);
    }
}
