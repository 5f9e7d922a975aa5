package dev.brinebook.http;

import java.util.Set;
import java.util.concurrent.Semaphore;
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
    private final Turns turns;
    private final Set<String> calculated;
    private final Semaphore refusing = new Semaphore(1);
    private final AtomicInteger inside = new AtomicInteger();

    /** Knows the paths where something is {@code calculated}, in turn. */
    Admission(RequestMetrics metrics, Turns turns, Set<String> calculated) {
        this.metrics = metrics;
        this.turns = turns;
        this.calculated = calculated;
        metrics.showInFlight(inside);
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        String path = request.getHttpURI().getCanonicalPath();
        if (path != null && (path.startsWith("/health/") || path.equals("/metrics"))) {
            return super.handle(request, response, callback);
        }
        if (turns.areAllWaitedFor() && calculated.contains(path)) {
            return refuse(Rejection.TURNS, request, response, callback);
        }
        if (inside.incrementAndGet() > MOST_AT_ONCE) {
            inside.decrementAndGet();
            return refuse(Rejection.REQUESTS, request, response, callback);
        }
        Request.addCompletionListener(request, failure -> inside.decrementAndGet());
        return super.handle(request, response, callback);
    }

    /** One at a time: a hundred threads that refuse would leave those that calculate no processor. */
    private boolean refuse(Rejection reason, Request request, Response response, Callback callback) {
        metrics.reject(reason);
        refusing.acquireUninterruptibly();
        try {
            Response.writeError(request, response, callback, ProblemType.OVERLOADED.status());
        } finally {
            refusing.release();
        }
        return true;
    }
}
