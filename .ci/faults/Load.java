// SPDX-License-Identifier: Apache-2.0
import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.StandardSocketOptions;
import java.nio.ByteBuffer;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Sends requests at a rate that does not depend on the answers, or as fast as they come, from one thread, and says how it went.
 * A time counts from when the request was due, so that a stalled service shows.
 *
 * <pre>
 * java [-Dservice=pid] -cp ... Load port seconds connections rate path=type=file...</pre>
 *
 * With the process of the service, seconds are of its processor time and the rate is for each of them, so that neither depends on
 * what else the machine does; used is that processor time in milliseconds.
 *
 * Rate 0 is as fast as answers come; otherwise it is requests a second. Failed is what got no whole answer; unsent what found no
 * connection; hasty a 503 that does not say when to come back.
 */
final class Load {

    /** What is due and finds all connections taken waits here, for no longer than this; later it is counted as unsent. */
    private static final long LONGEST_WAIT_NANOS = 1_000_000_000L;
    private static final long LAST_ANSWERS_NANOS = 30_000_000_000L;

    private final InetSocketAddress service;
    private final ServiceClock clock = new ServiceClock(Optional.ofNullable(System.getProperty("service"))
            .map(pid -> ProcessHandle.of(Long.parseLong(pid)).orElseThrow()).orElse(null));
    private final List<byte[]> requests = new ArrayList<>();
    private final Selector selector = Selector.open();
    private final ArrayDeque<Connection> idle = new ArrayDeque<>();
    private final ArrayDeque<Long> waiting = new ArrayDeque<>();
    private final Map<Integer, Integer> statuses = new TreeMap<>();
    private long[] goodNanos = new long[1 << 16];
    private int good;
    private int sent;
    private int failed;
    private int unsent;
    private int hasty;
    private int open;
    private int busy;
    private int mostBusy;

    private Load(int port) throws IOException {
        service = new InetSocketAddress("127.0.0.1", port);
    }

    public static void main(String[] arguments) throws IOException {
        Load load = new Load(Integer.parseInt(arguments[0]));
        for (String each : Arrays.asList(arguments).subList(4, arguments.length)) {
            String[] part = each.split("=");
            load.requests.add(request(part[0], part[1], Files.readAllBytes(Path.of(part[2]))));
        }
        load.run(Long.parseLong(arguments[1]), Integer.parseInt(arguments[2]), Double.parseDouble(arguments[3]));
    }

    private static byte[] request(String path, String type, byte[] body) {
        byte[] head = ("POST " + path + " HTTP/1.1\r\nHost: localhost\r\nContent-Type: " + type + "\r\nContent-Length: " + body.length
                + "\r\nAccept: application/json, text/event-stream, */*\r\n\r\n").getBytes(StandardCharsets.US_ASCII);
        byte[] whole = Arrays.copyOf(head, head.length + body.length);
        System.arraycopy(body, 0, whole, head.length, body.length);
        return whole;
    }

    private void run(long seconds, int connections, double rate) throws IOException {
        long began = System.nanoTime();
        long end = Long.MAX_VALUE;
        long due = 0;
        while (true) {
            long now = System.nanoTime();
            double passed = clock.passedSeconds();
            if (end == Long.MAX_VALUE && passed >= seconds) {
                end = now;
            }
            if (now >= end && (busy == 0 || now - end > LAST_ANSWERS_NANOS)) {
                break;
            }
            if (now < end) {
                for (; rate > 0 && due < passed * rate; due++) {
                    waiting.add(now);
                }
                while (rate == 0 && waiting.size() < connections - busy) {
                    waiting.add(now);
                }
            }
            while (!waiting.isEmpty() && now - waiting.peek() > LONGEST_WAIT_NANOS) {
                waiting.poll();
                unsent++;
            }
            while (!waiting.isEmpty() && (!idle.isEmpty() || open < connections)) {
                start(waiting.poll());
            }
            selector.select(this::move, 1);
        }
        failed += busy;
        printResult((end - began) / 1e9);
    }

    private void start(long due) throws IOException {
        Connection connection = idle.pollLast();
        sent++;
        busy++;
        mostBusy = Math.max(mostBusy, busy);
        try {
            if (connection == null) {
                connection = new Connection();
            }
            connection.begin(due, requests.get(sent % requests.size()));
        } catch (IOException refused) {
            fail(connection);
        }
    }

    private void move(SelectionKey key) {
        Connection connection = (Connection) key.attachment();
        try {
            if (connection.key.isConnectable()) {
                connection.channel.finishConnect();
                connection.send();
            } else if (key.isWritable()) {
                connection.send();
            } else if (connection.receive()) {
                end(connection);
            }
        } catch (IOException broken) {
            fail(connection);
        }
    }

    private void end(Connection connection) throws IOException {
        busy--;
        statuses.merge(connection.status, 1, Integer::sum);
        if (connection.status == 503 && !connection.saysWhenToRetry) {
            hasty++;
        }
        if (connection.status == 200) {
            goodNanos = good == goodNanos.length ? Arrays.copyOf(goodNanos, 2 * good) : goodNanos;
            goodNanos[good++] = System.nanoTime() - connection.due;
        }
        connection.due = 0;
        if (connection.last) {
            connection.close();
        } else {
            idle.add(connection);
        }
    }

    /** Without a connection, or with one that broke; a connection that the service closes while idle is no failure. */
    private void fail(Connection connection) {
        if (connection == null || connection.due != 0) {
            busy--;
            failed++;
        }
        if (connection != null) {
            idle.remove(connection);
            connection.close();
        }
    }

    private void printResult(double seconds) {
        long[] sorted = Arrays.copyOf(goodNanos, good);
        Arrays.sort(sorted);
        StringBuilder byStatus = new StringBuilder();
        statuses.forEach((status, count) -> byStatus.append(" s").append(status).append('=').append(count));
        System.out.printf(Locale.ROOT, "sent=%d failed=%d unsent=%d hasty=%d busy=%d used=%d", sent, failed, unsent, hasty, mostBusy,
                clock.usedMilliseconds());
        System.out.printf(Locale.ROOT, " good=%.1f p50=%.1f p99=%.1f max=%.1f%s%n", good / seconds, at(sorted, 0.5),
                at(sorted, 0.99), at(sorted, 1), byStatus);
    }

    /** The time in milliseconds that a part of the good answers took at most. */
    private static double at(long[] sorted, double part) {
        return sorted.length == 0 ? 0 : sorted[(int) Math.ceil(part * sorted.length) - 1] / 1e6;
    }

    /** One connection, with one request at a time. */
    private final class Connection {

        private final SocketChannel channel = SocketChannel.open();
        private final SelectionKey key;
        private final ByteBuffer answer = ByteBuffer.allocate(1 << 18);
        private ByteBuffer request;
        private long due;
        private int status;
        private boolean last;
        private boolean saysWhenToRetry;
        private int wholeBytes;

        Connection() throws IOException {
            channel.configureBlocking(false);
            channel.setOption(StandardSocketOptions.TCP_NODELAY, true);
            key = channel.register(selector, SelectionKey.OP_CONNECT, this);
            open++;
        }

        void begin(long from, byte[] bytes) throws IOException {
            due = from;
            request = ByteBuffer.wrap(bytes);
            answer.clear();
            wholeBytes = 0;
            if (channel.isConnected()) {
                send();
            } else if (!channel.isConnectionPending() && channel.connect(service)) {
                send();
            }
        }

        void send() throws IOException {
            channel.write(request);
            key.interestOps(request.hasRemaining() ? SelectionKey.OP_READ | SelectionKey.OP_WRITE : SelectionKey.OP_READ);
        }

        /** Whether the answer is whole. */
        boolean receive() throws IOException {
            int count = channel.read(answer);
            if (count < 0 || due == 0) {
                throw new IOException("closed");
            }
            if (wholeBytes == 0) {
                head();
            }
            return wholeBytes > 0 ? answer.position() >= wholeBytes : wholeBytes < 0 && endsInLastChunk();
        }

        private void head() throws IOException {
            String text = new String(answer.array(), 0, Math.min(answer.position(), 8_192), StandardCharsets.ISO_8859_1);
            int blank = text.indexOf("\r\n\r\n");
            if (blank < 0) {
                return;
            }
            String head = text.substring(0, blank + 2).toLowerCase(Locale.ROOT);
            status = Integer.parseInt(head.substring(9, 12));
            last = head.contains("\r\nconnection: close");
            saysWhenToRetry = head.contains("\r\nretry-after: ");
            int length = head.indexOf("\r\ncontent-length: ");
            wholeBytes = length < 0 ? -1
                    : blank + 4 + Integer.parseInt(head.substring(length + 18, head.indexOf('\r', length + 2)));
        }

        private boolean endsInLastChunk() {
            int end = answer.position();
            return end >= 5 && new String(answer.array(), end - 5, 5, StandardCharsets.ISO_8859_1).equals("0\r\n\r\n");
        }

        void close() {
            try {
                channel.close();
                open--;
            } catch (IOException closed) {
                // it is gone either way
            }
        }
    }
}
