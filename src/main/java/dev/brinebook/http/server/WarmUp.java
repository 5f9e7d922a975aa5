// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import dev.brinebook.api.Operation;
import dev.brinebook.http.Resources;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketAddress;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.eclipse.jetty.ee10.servlet.ServletContextRequest;
import org.eclipse.jetty.server.ConnectionMetaData;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Calls the service over its own port with an example of each operation, so that no caller waits for what the first call of each has to
 * load. The shortest requests, which take least, are sent before the service is ready; those for which there is no time, afterwards,
 * each while nothing else is calculated. The calls are known by their connection, which nobody else can have at the same time: they need
 * no key, and are neither counted nor logged.
 */
final class WarmUp {

    /** A start takes little longer for it, however slow the machine. */
    static final Duration LONGEST = Duration.ofMillis(150);

    private static final Logger LOG = LoggerFactory.getLogger(WarmUp.class);
    private static final String ATTRIBUTE = WarmUp.class.getName();
    private static final int ANSWER_MILLISECONDS = 30_000;
    private static final int PAUSE_MILLISECONDS = 20;
    private static final String ANSWERED = "HTTP/1.1 200 ";

    private final Queue<Call> left = new ArrayDeque<>();
    private final InetAddress host;
    private volatile Connection connection;

    /** Both ends of a connection, as the service sees them. */
    private record Connection(SocketAddress here, SocketAddress caller) {
    }

    private record Call(String path, byte[] body) {
    }

    /** Will call {@code operations} at the address that the service listens on. */
    WarmUp(List<Operation<?, ?>> operations, String address) {
        operations.stream().map(WarmUp::example).sorted(Comparator.comparingInt(call -> call.body.length)).forEach(left::add);
        try {
            InetAddress listening = InetAddress.getByName(address);
            host = listening.isAnyLocalAddress() ? InetAddress.getLoopbackAddress() : listening;
        } catch (UnknownHostException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Call example(Operation<?, ?> operation) {
        return new Call(operation.path(), Resources.example(operation.exampleFile(operation.examples().get(0), "request")));
    }

    /** Marks a request that is one of these calls; the others have to be admitted. */
    static boolean mark(Context context, WarmUp warmUp) {
        Connection own = warmUp == null ? null : warmUp.connection;
        boolean isOwn = own != null && own.equals(connectionOf(context));
        if (isOwn) {
            context.attribute(ATTRIBUTE, true);
        }
        return isOwn;
    }

    private static Connection connectionOf(Context context) {
        ConnectionMetaData connection = ServletContextRequest.getServletContextRequest(context.req()).getConnectionMetaData();
        return new Connection(connection.getLocalSocketAddress(), connection.getRemoteSocketAddress());
    }

    /** Whether a request was marked. */
    static boolean isMarked(Context context) {
        return context.attribute(ATTRIBUTE) != null;
    }

    /** Sends calls one after another, none once the time is over. */
    void run(int port, Duration longest) {
        long began = System.nanoTime();
        while (!left.isEmpty() && System.nanoTime() - began < longest.toNanos()) {
            ask(left.remove(), port);
        }
    }

    /** Sends what is left from a thread of its own, each call while {@code idle}. */
    void goOn(int port, BooleanSupplier idle) {
        Thread thread = new Thread(() -> {
            try {
                while (!left.isEmpty()) {
                    TimeUnit.MILLISECONDS.sleep(PAUSE_MILLISECONDS);
                    if (idle.getAsBoolean()) {
                        ask(left.remove(), port);
                    }
                }
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
            }
        }, "warm-up");
        thread.setDaemon(true);
        thread.start();
    }

    /** What goes wrong ends the warm-up, not the service: the first callers find it less warm. */
    private void ask(Call call, int port) {
        try (Socket socket = new Socket(host, port)) {
            connection = new Connection(socket.getRemoteSocketAddress(), socket.getLocalSocketAddress());
            socket.setSoTimeout(ANSWER_MILLISECONDS);
            socket.getOutputStream().write(request(call));
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
            if (!answer.startsWith(ANSWERED)) {
                throw new IOException("answered " + answer.lines().findFirst().orElse("nothing"));
            }
        } catch (IOException e) {
            LOG.warn("warming up ended at {}: {}", call.path, e.getMessage());
            left.clear();
        } finally {
            connection = null;
        }
    }

    private static byte[] request(Call call) {
        byte[] head = ("POST " + call.path + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nAccept-Encoding: gzip\r\n"
                + "Content-Type: application/json\r\nContent-Length: " + call.body.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII);
        byte[] whole = new byte[head.length + call.body.length];
        System.arraycopy(head, 0, whole, 0, head.length);
        System.arraycopy(call.body, 0, whole, head.length, call.body.length);
        return whole;
    }
}
