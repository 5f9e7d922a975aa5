package dev.brinebook.http;

import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/**
 * Lets in no more requests at once than the threads can hold, however slowly their bodies come; the next is told at once to
 * come back. Health and metrics are always let in: some threads are left for them.
 */
final class Admission extends Handler.Wrapper {

    /** Beside what is calculated, waits for a turn or streams: bodies that come slowly, pages that are read slowly. */
    private static final int OTHERS = 32;
    static final int MOST_AT_ONCE = Turns.AT_ONCE + Turns.MOST_WAITING + BulkHandler.MOST_AT_ONCE + OTHERS;

    private final RequestMetrics metrics;
    private final AtomicInteger inside = new AtomicInteger();

    Admission(RequestMetrics metrics) {
        this.metrics = metrics;
        metrics.showInFlight(inside);
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        String path = request.getHttpURI().getCanonicalPath();
        if (path != null && (path.startsWith("/health/") || path.equals("/metrics"))) {
            return super.handle(request, response, callback);
        }
        if (inside.incrementAndGet() > MOST_AT_ONCE) {
            inside.decrementAndGet();
            metrics.reject(Rejection.REQUESTS);
            Response.writeError(request, response, callback, ProblemType.OVERLOADED.status());
            return true;
        }
        Request.addCompletionListener(request, failure -> inside.decrementAndGet());
        return super.handle(request, response, callback);
    }
}
