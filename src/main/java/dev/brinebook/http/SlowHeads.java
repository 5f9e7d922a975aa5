package dev.brinebook.http;

import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.io.Connection;
import org.eclipse.jetty.util.thread.Scheduler;

/**
 * Closes a connection on which the head of a request drips in. A byte now and then keeps it from being idle, and no request
 * has begun that could be late: without this, whoever has as many sockets as there may be connections keeps all others out.
 */
final class SlowHeads implements Connection.Listener {

    private final Scheduler scheduler;
    private final int seconds;

    /** A head may take so many {@code seconds}, and as long again until it is looked at. */
    SlowHeads(Scheduler scheduler, int seconds) {
        this.scheduler = scheduler;
        this.seconds = seconds;
    }

    /**
     * What a look at a connection saw.
     *
     * @param requests heads that were whole
     * @param waits whether all of these are answered
     * @param bytes how many had come when it was first seen to wait
     * @param begun whether more have come since, and so part of a head
     */
    private record Seen(long requests, boolean waits, long bytes, boolean begun) {

        Seen next(Connection connection) {
            long now = connection.getMessagesIn();
            boolean waitsNow = now == connection.getMessagesOut();
            boolean still = waits && waitsNow && now == requests;
            return new Seen(now, waitsNow, still ? bytes : connection.getBytesIn(), still && connection.getBytesIn() > bytes);
        }
    }

    @Override
    public void onOpened(Connection connection) {
        later(connection, new Seen(0, true, 0, false));
    }

    private void later(Connection connection, Seen before) {
        scheduler.schedule(() -> look(connection, before), seconds, TimeUnit.SECONDS);
    }

    private void look(Connection connection, Seen before) {
        if (!connection.getEndPoint().isOpen()) {
            return;
        }
        Seen now = before.next(connection);
        if (before.begun() && now.begun()) {
            connection.getEndPoint().close();
        } else {
            later(connection, now);
        }
    }
}
