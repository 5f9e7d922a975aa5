package dev.brinebook.http;

import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/**
 * Finds out whose request it is, and refuses before its body is read what would wait for a permit in vain. Health and metrics
 * are always let in.
 */
final class Admission extends Handler.Wrapper {

    private static final int MOMENT_MILLISECONDS = 500;

    private final RequestMetrics metrics;
    private final Callers callers;
    private final ConcurrencyLimiter limiter;
    private final Predicate<Request> calculated;

    /** Knows which requests are {@code calculated} with a permit. */
    Admission(RequestMetrics metrics, Callers callers, ConcurrencyLimiter limiter, Predicate<Request> calculated) {
        this.metrics = metrics;
        this.callers = callers;
        this.limiter = limiter;
        this.calculated = calculated;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        long waitSeconds = callers.identify(request);
        if (waitSeconds > 0) {
            metrics.reject(Rejection.KEY);
            response.getHeaders().put(HttpHeader.RETRY_AFTER, waitSeconds);
            return refuse(ProblemType.TOO_MANY_REQUESTS.status(), request, response, callback);
        }
        String caller = Callers.identityOf(request);
        if (calculated.test(request) && limiter.isFullFor(caller)) {
            metrics.reject(Rejection.PERMITS);
            return refuse(ProblemType.OVERLOADED.status(), request, response, callback);
        }
        return super.handle(request, response, callback);
    }

    /** Whether a path is answered under any load. */
    static boolean isAlwaysAnswered(Request request) {
        String path = request.getHttpURI().getCanonicalPath();
        return path != null && (path.startsWith("/health/") || path.equals("/metrics"));
    }

    /**
     * Asks to come back, after a moment that holds no thread: whoever is refused at once asks again at once, and a processor
     * that is busy refusing calculates nothing. The timer's thread writes it, as writing never waits: one at a time, however many
     * there are.
     */
    static boolean refuse(int status, Request request, Response response, Callback callback) {
        request.getComponents().getScheduler().schedule(() -> Response.writeError(request, response, callback, status),
                MOMENT_MILLISECONDS, TimeUnit.MILLISECONDS);
        return true;
    }
}
