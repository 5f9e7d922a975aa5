package dev.brinebook.http.server;

import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/**
 * Asks callers to come back, after a moment that holds no thread: whoever is refused at once asks again at once, and a
 * processor that is busy refusing calculates nothing. Beyond so many that wait for their refusal the next is refused at once, as
 * that costs less; one at a time, for a hundred threads that refuse would leave those that calculate no processor.
 */
final class Refusals {

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
