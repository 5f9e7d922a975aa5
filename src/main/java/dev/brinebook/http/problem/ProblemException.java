// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.problem;

import dev.brinebook.text.Message;
import java.util.List;

/** Ends a request with a problem. */
public final class ProblemException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final ProblemType type;
    private final transient Message detail;
    private final transient List<Problem.Fault> errors;

    public ProblemException(ProblemType type, Message detail) {
        this(type, detail, List.of());
    }

    /** One whose document lists {@code errors}. */
    public ProblemException(ProblemType type, Message detail, List<Problem.Fault> errors) {
        super(detail.toString(), null, false, false);
        this.errors = List.copyOf(errors);
        this.type = type;
        this.detail = detail;
    }

    public ProblemType type() {
        return type;
    }

    public Message detail() {
        return detail;
    }

    /** The errors to list; empty where the detail says all. */
    public List<Problem.Fault> errors() {
        return errors;
    }
}
