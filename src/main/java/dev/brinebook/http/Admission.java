package dev.brinebook.http;

import java.util.concurrent.Semaphore;
import java.util.function.Predicate;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/**
 * Finds out whose request it is, and refuses before its body is read what would wait for a permit in vain. Health and metrics
 * are always let in.
 */
final class Admission extends Handler.Wrapper {

    private final RequestMetrics metrics;
    private final Callers callers;
    private final ConcurrencyLimiter limiter;
    private final Predicate<Request> calculated;
    private final Semaphore refusing = new Semaphore(1);

    /** Knows which requests are {@code calculated} with a permit. */
    Admission(RequestMetrics metrics, Callers callers, ConcurrencyLimiter limiter, Predicate<Request> calculated) {
        this.metrics = metrics;
        this.callers = callers;
        this.limiter = limiter;
        this.calculated = calculated;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        String caller = callers.identify(request);
        if (calculated.test(request) && limiter.isFullFor(caller)) {
            metrics.reject(Rejection.PERMITS);
            return refuse(refusing, request, response, callback);
        }
        return super.handle(request, response, callback);
    }

    /** Whether a path is answered under any load. */
    static boolean isAlwaysAnswered(Request request) {
        String path = request.getHttpURI().getCanonicalPath();
        return path != null && (path.startsWith("/health/") || path.equals("/metrics"));
    }

    /** One at a time: a hundred threads that refuse would leave those that calculate no processor. */
    static boolean refuse(Semaphore refusing, Request request, Response response, Callback callback) {
        refusing.acquireUninterruptibly();
        try {
            Response.writeError(request, response, callback, ProblemType.OVERLOADED.status());
        } finally {
            refusing.release();
        }
        return true;
    }
}
