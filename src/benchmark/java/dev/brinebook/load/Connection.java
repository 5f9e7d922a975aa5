// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.load;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.zip.GZIPInputStream;

/** A kept connection of a caller, with what real callers send: a key, a user agent, the codings that it takes. */
final class Connection implements AutoCloseable {

    /** From here on a body is written while the answer is read. */
    private static final int LONG_BODY = 65_536;
    private static final int OK = 200;
    private static final int BUSY = 503;
    private static final int MOST_TRIES = 100;

    private final Socket socket;
    private final OutputStream out;
    private final String caller;
    private final byte[] buffer = new byte[LONG_BODY];
    private final ByteArrayOutputStream kept = new ByteArrayOutputStream();
    private int at;
    private int end;

    Connection(int port, String key) throws IOException {
        socket = new Socket("127.0.0.1", port);
        socket.setTcpNoDelay(true);
        socket.setSoTimeout(600_000);
        out = socket.getOutputStream();
        caller = " HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\nUser-Agent: load/1.0\r\nAccept: application/json, text/event-stream,"
                + " */*\r\nAccept-Encoding: gzip, deflate\r\nAuthorization: Bearer " + key + "\r\n";
    }

    /** Whether the server on a port answers a path with 200. */
    static boolean answers(int port, String path) {
        try (Connection probe = new Connection(port, "none")) {
            probe.out.write(("GET " + path + probe.caller + "\r\n").getBytes(StandardCharsets.US_ASCII));
            return probe.read(false) == OK;
        } catch (IOException notYet) {
            return false;
        }
    }

    /** Sends a request and reads the whole answer; where the service is busy, as often as a caller of good will, a tenth later. */
    void exchange(Message message) throws IOException {
        int status = send(message, false);
        for (int tries = 0; status == BUSY && isOverloaded() && tries < MOST_TRIES; tries++) {
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(100));
            status = send(message, false);
        }
        if (status != OK) {
            throw new IOException(status + " to " + message.path() + ": " + (message.body().length < LONG_BODY
                    ? new String(message.body(), StandardCharsets.UTF_8) : "") + " " + kept.toString(StandardCharsets.UTF_8));
        }
    }

    /** Whether the last answer says that others were there first, not that its own calculation takes too long. */
    private boolean isOverloaded() {
        return kept.toString(StandardCharsets.UTF_8).contains("/problems/overloaded");
    }

    /** Sends a request and gives what is answered, uncompressed. */
    String answer(Message message) throws IOException {
        int status = send(message, true);
        String body = kept.toString(StandardCharsets.UTF_8);
        if (status != OK) {
            throw new IOException(status + " to " + message.path() + ": " + body);
        }
        return body;
    }

    /** Status of the answer. */
    int status(Message message) throws IOException {
        return send(message, false);
    }

    private int send(Message message, boolean keep) throws IOException {
        byte[] head = ("POST " + message.path() + caller + "Content-Type: " + message.type() + "\r\nContent-Length: "
                + message.body().length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII);
        byte[] whole = new byte[head.length + message.body().length];
        System.arraycopy(head, 0, whole, 0, head.length);
        System.arraycopy(message.body(), 0, whole, head.length, message.body().length);
        if (whole.length < LONG_BODY) {
            out.write(whole);
            return read(keep);
        }
        CompletableFuture<Void> sent = CompletableFuture.runAsync(() -> write(whole));
        int status = read(keep);
        sent.join();
        return status;
    }

    private void write(byte[] whole) {
        try {
            out.write(whole);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private int read(boolean keep) throws IOException {
        int status = Integer.parseInt(line().substring(9, 12));
        long length = 0;
        boolean chunked = false;
        boolean gzip = false;
        for (String line = line(); !line.isEmpty(); line = line()) {
            String header = line.toLowerCase(Locale.ROOT);
            length = header.startsWith("content-length:") ? Long.parseLong(header.substring(15).strip()) : length;
            chunked |= header.startsWith("transfer-encoding:") && header.endsWith("chunked");
            gzip |= header.startsWith("content-encoding:") && header.endsWith("gzip");
        }
        kept.reset();
        boolean keeping = keep || status != OK;
        if (chunked) {
            for (int size = Integer.parseInt(line(), 16); size > 0; size = Integer.parseInt(line(), 16)) {
                body(size, keeping);
                line();
            }
            line();
        } else {
            body(length, keeping);
        }
        if (keeping && gzip) {
            unzip();
        }
        return status;
    }

    private void unzip() throws IOException {
        try (InputStream in = new GZIPInputStream(new ByteArrayInputStream(kept.toByteArray()))) {
            kept.reset();
            in.transferTo(kept);
        }
    }

    private void body(long length, boolean keep) throws IOException {
        for (long left = length; left > 0;) {
            fill();
            int some = (int) Math.min(left, end - at);
            if (keep) {
                kept.write(buffer, at, some);
            }
            at += some;
            left -= some;
        }
    }

    private String line() throws IOException {
        StringBuilder line = new StringBuilder();
        while (true) {
            fill();
            char next = (char) buffer[at++];
            if (next == '\n') {
                return line.toString();
            }
            if (next != '\r') {
                line.append(next);
            }
        }
    }

    private void fill() throws IOException {
        if (at == end) {
            at = 0;
            end = socket.getInputStream().read(buffer);
            if (end < 0) {
                end = 0;
                throw new EOFException("the server closed the connection");
            }
        }
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
