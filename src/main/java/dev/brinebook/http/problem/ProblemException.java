// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.problem;

import dev.brinebook.text.Message;

/** Ends a request with a problem. */
public final class ProblemException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final ProblemType type;
    private final transient Message detail;

    public ProblemException(ProblemType type, Message detail) {
        super(detail.toString(), null, false, false);
        this.type = type;
        this.detail = detail;
    }

    public ProblemType type() {
        return type;
    }

    public Message detail() {
        return detail;
    }
}
