// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/**
 * Asks callers to retry, after a delay that holds no thread: a caller refused immediately retries immediately, and a processor busy with
 * refusals calculates nothing. Beyond a limit of waiting refusals the next is refused immediately, because that costs less. One at a
 * time, because a hundred refusing threads would leave no processor for calculations.
 */
final class ConnectionRefusal {

    /** More than a caller has connections that holds a twentieth of those allowed by default. */
    private static final int MOST_DELAYED = 128;
    private static final int MOMENT_MILLISECONDS = 500;

    private final Semaphore delayed = new Semaphore(MOST_DELAYED);
    private final Semaphore atOnce = new Semaphore(1);

    /** Answers with a status that refuses; always true, as a handler's answer is. */
    boolean answer(int status, Request request, Response response, Callback callback) {
        if (delayed.tryAcquire()) {
            request.getComponents().getScheduler().schedule(() -> {
                delayed.release();
                Response.writeError(request, response, callback, status);
            }, MOMENT_MILLISECONDS, TimeUnit.MILLISECONDS);
            return true;
        }
        atOnce.acquireUninterruptibly();
        try {
            Response.writeError(request, response, callback, status);
        } finally {
            atOnce.release();
        }
        return true;
    }
}
