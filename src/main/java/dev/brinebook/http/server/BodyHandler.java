// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import dev.brinebook.http.Settings;
import dev.brinebook.http.access.AccessPolicy;
import dev.brinebook.http.limit.Rejection;
import dev.brinebook.http.limit.RequestMetrics;
import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.text.Message;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.thread.Invocable;
import org.eclipse.jetty.util.thread.Scheduler;

/**
 * Reads the body of a request that is calculated before anything else handles it, without a thread and without a permit, up to
 * a limit and until a deadline that holds whatever drips in. The body, or why there is none, is then an attribute of the
 * request; {@link RequestBody} gives it to whoever answers.
 *
 * <p>Jetty's EagerContentHandler would do the reading, but keeps the network buffers, eight thousand bytes for each byte that
 * drips in, and knows neither limit nor deadline; its MinimumDataRateHandler looks at the rate only when bytes come.
 */
final class BodyHandler extends Handler.Wrapper {

    /** Attribute of the body's bytes, or of the {@link ProblemException} that took their place. */
    static final String ATTRIBUTE = BodyHandler.class.getName();

    private static final int SMALLEST_BUFFER = 512;

    private final Predicate<Request> reads;
    private final int maxBytes;
    private final int seconds;
    private final CallerShares bytes;
    private final RequestMetrics metrics;
    private final ConnectionRefusal refusals;

    /** Reads the bodies of requests that {@code reads} holds for; those that come hold {@code bytes}. */
    BodyHandler(Predicate<Request> reads, Settings settings, CallerShares bytes, RequestMetrics metrics,
            ConnectionRefusal refusals) {
        this.reads = reads;
        this.maxBytes = settings.maxBodyBytes();
        this.seconds = settings.requestSeconds();
        this.bytes = bytes;
        this.metrics = metrics;
        this.refusals = refusals;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        if (!reads.test(request)) {
            return super.handle(request, response, callback);
        }
        new Reading(request, response, callback).begin();
        return true;
    }

    /** One body being received. The reader or the timer ends it, whichever is first. */
    private final class Reading implements Invocable.Task {

        private final Request request;
        private final Response response;
        private final Callback callback;
        private final String caller;
        private final AtomicBoolean ended = new AtomicBoolean();
        private byte[] body;
        private final AtomicInteger length = new AtomicInteger();
        private final AtomicInteger held = new AtomicInteger();
        private Scheduler.Task timer;

        Reading(Request request, Response response, Callback callback) {
            this.request = request;
            this.response = response;
            this.callback = callback;
            this.caller = AccessPolicy.identityOf(request);
            this.body = new byte[(int) Math.min(Math.max(request.getLength(), 0), SMALLEST_BUFFER)];
        }

        void begin() {
            if (request.getLength() > 2L * maxBytes) {
                end(tooLarge());
                return;
            }
            // What there is no room for is not read at all.
            if (request.getLength() > body.length && !grow((int) Math.min(request.getLength(), maxBytes))) {
                refuse();
                return;
            }
            run();
            if (!ended.get()) {
                timer = request.getComponents().getScheduler().schedule(this::late, seconds, TimeUnit.SECONDS);
                if (ended.get()) {
                    timer.cancel();
                }
            }
        }

        @Override
        public InvocationType getInvocationType() {
            return InvocationType.BLOCKING;
        }

        /** Reads what has come, and waits for the rest without a thread. */
        @Override
        public void run() {
            while (!ended.get()) {
                Content.Chunk chunk = request.read();
                if (chunk == null) {
                    request.demand(this);
                    return;
                }
                if (Content.Chunk.isFailure(chunk)) {
                    end(broken(chunk.getFailure()));
                    return;
                }
                boolean last = chunk.isLast();
                boolean kept = keep(chunk.getByteBuffer());
                chunk.release();
                int come = length.get();
                if (!kept) {
                    refuse();
                } else if (come > 2L * maxBytes || last && come > maxBytes) {
                    end(tooLarge());
                } else if (last) {
                    end(null);
                }
            }
        }

        /** Keeps what belongs to a body within the limit. Of one a little too large the rest is read, so that the answer is seen. */
        private boolean keep(ByteBuffer chunk) {
            int more = chunk.remaining();
            int come = length.addAndGet(more);
            if (come > maxBytes) {
                return true;
            }
            if (come > body.length && !grow(Math.max(come, (int) Math.min(2L * body.length, maxBytes)))) {
                return false;
            }
            chunk.get(body, come - more, more);
            if (ended.get()) {
                release(); // the timer has ended it meanwhile
            }
            return true;
        }

        private boolean grow(int wanted) {
            if (!bytes.tryTake(caller, wanted - held.get())) {
                return false;
            }
            held.set(wanted);
            body = Arrays.copyOf(body, wanted);
            return true;
        }

        private void release() {
            bytes.giveBack(caller, held.getAndSet(0));
        }

        private void refuse() {
            if (ended.compareAndSet(false, true)) {
                metrics.reject(Rejection.BYTES);
                release();
                body = null;
                refusals.answer(ProblemType.OVERLOADED.status(), request, response, callback);
            }
        }

        private void late() {
            request.getContext().execute(() -> end(problem(ProblemType.REQUEST_TIMEOUT)));
        }

        /** Lets the request be answered, with its body or with its error. */
        private void end(ProblemException fault) {
            if (!ended.compareAndSet(false, true)) {
                return;
            }
            if (timer != null) {
                timer.cancel();
            }
            request.setAttribute(ATTRIBUTE, fault != null ? fault : length.get() == body.length ? body : Arrays.copyOf(body, length.get()));
            if (fault != null) {
                response.getHeaders().put(HttpHeader.CONNECTION, "close");
            }
            if (held.get() > 0) {
                Request.addCompletionListener(request, failure -> release());
            }
            try {
                if (!BodyHandler.super.handle(request, response, callback)) {
                    Response.writeError(request, response, callback, ProblemType.NOT_FOUND.status());
                }
            } catch (Throwable failure) {
                Response.writeError(request, response, callback, failure);
            }
        }

        private ProblemException tooLarge() {
            return new ProblemException(ProblemType.BODY_TOO_LARGE, Message.of("bodyHandler.bodyMoreThanBytes", maxBytes));
        }

        private static ProblemException broken(Throwable failure) {
            return problem(failure instanceof TimeoutException ? ProblemType.REQUEST_TIMEOUT
                    : ProblemType.ofBroken(new IOException(failure)));
        }

        private static ProblemException problem(ProblemType type) {
            return new ProblemException(type, type.explanation());
        }
    }
}
