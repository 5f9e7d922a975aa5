package dev.brinebook.api;

import dev.brinebook.wording.Message;

/**
 * One fault of a request.
 *
 * @param pointer JSON pointer to the faulty value
 * @param code stable code of the kind of fault
 * @param message one sentence that says what is wrong and what would be right
 * @param allowed what is allowed, or null
 * @param didYouMean the nearest known name, or null
 * @param received what came, when it is short and harmless, or null
 */
public record Violation(String pointer, Code code, Message message, Message allowed, String didYouMean, String received) {

    /** The closed list of kinds of fault. */
    public enum Code {
        UNKNOWN_FIELD, MISSING, NULL_VALUE, WRONG_TYPE, UNKNOWN_VALUE, OUT_OF_RANGE, WRONG_COUNT, INCONSISTENT, IMPOSSIBLE
    }

    public Violation(String pointer, Code code, Message message) {
        this(pointer, code, message, null, null, null);
    }
}
