// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.api.Violation.Code;
import dev.brinebook.text.Message;
import java.util.List;

/** A request that is well-formed but cannot be answered, with every error found. */
public final class InvalidRequest extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Violation> violations;

    public InvalidRequest(List<Violation> violations) {
        super(violations.size() + " violations", null, false, false);
        this.violations = List.copyOf(violations);
    }

    /** A combination that passes the checks of its fields and still has no physical sense. */
    public static InvalidRequest impossible(String pointer, Message message) {
        return new InvalidRequest(List.of(new Violation(pointer, Code.IMPOSSIBLE, message)));
    }

    public List<Violation> violations() {
        return violations;
    }
}
