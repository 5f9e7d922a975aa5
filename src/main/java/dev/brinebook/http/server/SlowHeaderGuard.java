// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import dev.brinebook.http.exchange.Problems;
import dev.brinebook.http.limit.Rejection;
import dev.brinebook.http.limit.RequestMetrics;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.text.Language;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.io.Connection;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.thread.Scheduler;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Ends a connection on which the head of a request drips in. A byte now and then keeps it from being idle, and no request has
 * begun that could be late: without this, a sender with the maximum number of connections keeps all others out. As the
 * outermost handler it sees when a request is being handled, and leaves the connection alone until it has been answered.
 *
 * <p>None of Jetty's own limits covers a head: MinimumDataRateHandler begins with the body, and an idle timeout is started
 * anew by each byte.
 */
final class SlowHeaderGuard extends Handler.Wrapper implements Connection.Listener {

    private static final Logger LOG = LoggerFactory.getLogger(SlowHeaderGuard.class);
    private static final String HEAD = "HTTP/1.1 408 Request Timeout\r\nContent-Type: " + Problems.MEDIA_TYPE
            + "\r\nConnection: close\r\nContent-Length: ";

    private final int seconds;
    private final RequestMetrics metrics;
    private final Problems problems;
    private final Map<Connection, Head> heads = new ConcurrentHashMap<>();

    /** State of the headers that a connection waits for. */
    private static final class Head {

        /** Bytes that had come when the last request was answered; negative while one is handled. */
        private volatile long bytesBefore;
        /** When more than these were first seen; 0 before. */
        private volatile long begunNanos;
    }

    /** Headers may take {@code seconds} from their first byte; the connection is checked four times in that time. */
    SlowHeaderGuard(int seconds, RequestMetrics metrics, Problems problems) {
        this.seconds = seconds;
        this.metrics = metrics;
        this.problems = problems;
    }

    private byte[] answer() {
        String document = new String(problems.document(ProblemType.REQUEST_TIMEOUT, ProblemType.REQUEST_TIMEOUT.explanation(), null,
                null, Language.ENGLISH), StandardCharsets.US_ASCII);
        return (HEAD + document.length() + "\r\n\r\n" + document).getBytes(StandardCharsets.US_ASCII);
    }

    /** Looks at the heads of all connections from now on. */
    void watch(Scheduler scheduler) {
        scheduler.schedule(() -> {
            heads.forEach(this::look);
            watch(scheduler);
        }, TimeUnit.SECONDS.toMillis(seconds) / 4, TimeUnit.MILLISECONDS);
    }

    @Override
    public void onOpened(Connection connection) {
        heads.put(connection, new Head());
    }

    @Override
    public void onClosed(Connection connection) {
        heads.remove(connection);
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        Connection connection = request.getConnectionMetaData().getConnection();
        Head head = heads.get(connection);
        if (head != null) {
            head.begunNanos = 0;
            head.bytesBefore = -1;
            Request.addCompletionListener(request, failure -> head.bytesBefore = connection.getBytesIn());
        }
        return super.handle(request, response, callback);
    }

    private void look(Connection connection, Head head) {
        long before = head.bytesBefore;
        if (before < 0 || connection.getBytesIn() <= before) {
            head.begunNanos = 0;
        } else if (head.begunNanos == 0) {
            head.begunNanos = System.nanoTime();
        } else if (System.nanoTime() - head.begunNanos >= TimeUnit.SECONDS.toNanos(seconds)) {
            heads.remove(connection);
            metrics.reject(Rejection.HEAD);
            LOG.info("the headers of a request did not arrive in {} s", seconds);
            connection.getEndPoint().write(Callback.from(connection.getEndPoint()::close), ByteBuffer.wrap(answer()));
        }
    }
}
