// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.text.Message;

/**
 * One error in a request.
 *
 * @param pointer JSON pointer to the value with the error
 * @param code stable code of the kind of error
 * @param message one sentence with the error and what is allowed
 * @param allowed what is allowed, or null
 * @param didYouMean the nearest known name, or null
 * @param received the value received, when it is short and harmless, or null
 */
public record Violation(String pointer, Code code, Message message, Message allowed, String didYouMean, String received) {

    /** The closed list of kinds of error. */
    public enum Code {
        UNKNOWN_FIELD, MISSING, NULL_VALUE, WRONG_TYPE, UNKNOWN_VALUE, OUT_OF_RANGE, WRONG_COUNT, INCONSISTENT, IMPOSSIBLE
    }

    public Violation(String pointer, Code code, Message message) {
        this(pointer, code, message, null, null, null);
    }
}
