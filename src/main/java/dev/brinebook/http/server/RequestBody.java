// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import dev.brinebook.http.problem.ProblemException;
import io.javalin.http.Context;

/** The body of a request, as {@link BodyHandler} has read it. */
final class RequestBody {

    private RequestBody() {
    }

    /**
     * The whole body as it came.
     *
     * @throws ProblemException when it has more bytes than the limit, was not whole in time, or broke off
     */
    static byte[] read(Context context) {
        Object body = context.req().getAttribute(BodyHandler.ATTRIBUTE);
        if (body instanceof ProblemException fault) {
            throw fault;
        }
        return (byte[]) body;
    }
}
