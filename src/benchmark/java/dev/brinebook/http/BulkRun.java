// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.EOFException;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.LongFunction;

/**
 * Sends long streams through a packaged server with a small heap: every answer must come in its place, every bad line be reported,
 * the heap stay flat, and a reader that stops hold nobody. Prints what it measured; fails on the first thing out of order.
 *
 * <pre>
 * mvn -q -DskipTests package
 * java src/benchmark/java/dev/brinebook/http/BulkRun.java [lines [assessments [jar]]]</pre>
 */
public final class BulkRun {

    private static final String HEAP = "-Xmx256m";
    private static final int BAD_EVERY = 100;
    private static final int SINGLE_CALLS = 20_000;
    private static final int PAUSE_SECONDS = 45;
    private static final int PAUSED_LINES = 50_000;
    private static final int SAMPLE_SECONDS = 5;
    private static final String NDJSON = "application/x-ndjson";
    private static final String[] BAD = {"{\"water\":", "{\"water\":{\"hardness\":{\"value\":-1,\"unit\":\"gpg\"}}}", "no JSON",
        "{\"water\":{\"hardnes\":{\"value\":18,\"unit\":\"gpg\"}}}"};
    private static final int[] BAD_STATUS = {400, 422, 400, 422};
    private static final String ANSWERED = "{\"line\":";

    private static Process server;
    private static int port;

    private BulkRun() {
    }

    public static void main(String[] arguments) throws Exception {
        long lines = arguments.length > 0 ? Long.parseLong(arguments[0]) : 1_000_000;
        long assessments = arguments.length > 1 ? Long.parseLong(arguments[1]) : 100_000;
        start(arguments.length > 2 ? new File(arguments[2]) : jar());
        try {
            String assessment = Files.readString(Path.of("openapi/examples/assess.well-family.request.json"))
                    .replaceAll("\\s*\\n\\s*", "");
            measure("compensateHardness", "/v1/compensated-hardness", BulkRun::hardness, lines, SINGLE_CALLS);
            pause();
            measure("assess", "/v1/assessment", line -> assessment.replaceFirst("\"value\": 22", "\"value\": " + gpg(line)),
                    assessments, SINGLE_CALLS / 10);
        } finally {
            server.destroy();
            server.waitFor();
        }
    }

    private static String hardness(long line) {
        return "{\"water\":{\"hardness\":{\"value\":" + gpg(line)
                + ",\"unit\":\"gpg\"},\"iron\":{\"value\":0.5,\"unit\":\"mg/L\"}}}";
    }

    /** 10 to 30 gpg in steps of a tenth, finer than a test resolves: two hundred waters, whose columns are cached. */
    private static String gpg(long line) {
        return new BigDecimal(100 + line % 200).movePointLeft(1).stripTrailingZeros().toPlainString();
    }

    private static void measure(String calculator, String path, LongFunction<String> request, long lines, int calls)
            throws Exception {
        stream(calculator, request, lines / 50, 0);
        single(path, request, calls / 2);
        long idle = liveBytes();
        double callSeconds = single(path, request, calls);
        List<Long> live = new ArrayList<>();
        CompletableFuture<Double> run = CompletableFuture.supplyAsync(() -> stream(calculator, request, lines, 0));
        while (!run.isDone()) {
            TimeUnit.SECONDS.sleep(SAMPLE_SECONDS);
            live.add(liveBytes());
        }
        double lineSeconds = run.get() / lines;
        long peak = live.stream().mapToLong(Long::longValue).max().orElse(0);
        System.out.printf(Locale.ROOT, "%s: %d lines, 1 %% bad, all in order, every bad one reported; %.1f s%n", calculator, lines,
                run.get());
        System.out.printf(Locale.ROOT, "  a line %.1f us, a single call %.1f us: %.2f times as fast%n", lineSeconds * 1e6,
                callSeconds * 1e6, callSeconds / lineSeconds);
        System.out.printf(Locale.ROOT, "  live heap: idle %.1f MiB, most of %d samples %.1f MiB, after %.1f MiB%n", mebi(idle),
                live.size(), mebi(peak), mebi(liveBytes()));
    }

    /** A reader stops; meanwhile others are answered, and in the end it has everything. */
    private static void pause() throws Exception {
        CompletableFuture<Double> stopped = CompletableFuture.supplyAsync(() ->
                stream("compensateHardness", BulkRun::hardness, PAUSED_LINES, PAUSE_SECONDS));
        TimeUnit.SECONDS.sleep(5);
        double call = single("/v1/compensated-hardness", BulkRun::hardness, SINGLE_CALLS);
        double other = stream("compensateHardness", BulkRun::hardness, PAUSED_LINES, 0);
        if (stopped.isDone()) {
            throw new IllegalStateException("the reader did not stop long enough");
        }
        System.out.printf(Locale.ROOT, "a reader stops for %d s: a single call takes %.1f us meanwhile, another stream of %d"
                + " lines %.1f s; then it reads all, %.1f s from first to last%n", PAUSE_SECONDS, call * 1e6, PAUSED_LINES, other,
                stopped.get());
    }

    /** Seconds for each of a number of calls, one after the other on one connection. */
    private static double single(String path, LongFunction<String> request, int calls) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", port)) {
            socket.setTcpNoDelay(true);
            InputStream in = new BufferedInputStream(socket.getInputStream(), 65_536);
            long began = System.nanoTime();
            for (int call = 1; call <= calls; call++) {
                byte[] body = request.apply(call).getBytes(StandardCharsets.UTF_8);
                socket.getOutputStream().write(concat(head(path, "application/json", "Content-Length: " + body.length), body));
                String answer = head(in);
                int at = answer.toLowerCase(Locale.ROOT).indexOf("content-length: ") + 16;
                in.readNBytes(Integer.parseInt(answer.substring(at, answer.indexOf('\r', at))));
                check(answer.startsWith("HTTP/1.1 200 "), answer);
            }
            return (System.nanoTime() - began) / 1e9 / calls;
        }
    }

    /** Seconds for a whole stream, whose every answer is looked at. */
    private static double stream(String calculator, LongFunction<String> request, long lines, int pauseSeconds) {
        try (Socket socket = new Socket("127.0.0.1", port)) {
            long began = System.nanoTime();
            CompletableFuture<Void> sent = CompletableFuture.runAsync(() -> send(socket, calculator, request, lines));
            TimeUnit.SECONDS.sleep(pauseSeconds);
            InputStream in = new BufferedInputStream(socket.getInputStream(), 65_536);
            String head = head(in);
            check(head.startsWith("HTTP/1.1 200 ") && head.toLowerCase(Locale.ROOT).contains("transfer-encoding: chunked"), head);
            Chunks chunks = new Chunks(in);
            for (long line = 1; line <= lines; line++) {
                check(line, chunks.line());
            }
            check(chunks.line() == null, "there is more than was asked for");
            sent.get();
            return (System.nanoTime() - began) / 1e9;
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private static void check(long line, String answer) {
        boolean bad = line % BAD_EVERY == 0;
        int status = bad ? BAD_STATUS[(int) (line / BAD_EVERY % BAD.length)] : 200;
        String start = ANSWERED + line + ",\"status\":" + status + (bad ? ",\"problem\":{" : ",\"answer\":{");
        check(answer != null && answer.startsWith(start), start + " was " + answer);
        check(bad || answer.contains("\"tested\":{\"value\":" + gpg(line) + ",\"unit\":\"gpg\"}"), answer);
    }

    private static void send(Socket socket, String calculator, LongFunction<String> request, long lines) {
        try {
            OutputStream out = new BufferedOutputStream(socket.getOutputStream(), 65_536);
            out.write(head("/v1/bulk/" + calculator, NDJSON, "Transfer-Encoding: chunked"));
            StringBuilder some = new StringBuilder();
            for (long line = 1; line <= lines; line++) {
                some.append(line % BAD_EVERY == 0 ? BAD[(int) (line / BAD_EVERY % BAD.length)] : request.apply(line))
                        .append('\n');
                if (some.length() > 8_192 || line == lines) {
                    out.write((Integer.toHexString(some.length()) + "\r\n" + some + "\r\n").getBytes(StandardCharsets.US_ASCII));
                    some.setLength(0);
                }
            }
            out.write("0\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
            out.flush();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static byte[] head(String path, String type, String framing) {
        return ("POST " + path + " HTTP/1.1\r\nHost: localhost\r\nContent-Type: " + type + "\r\n" + framing + "\r\n\r\n")
                .getBytes(StandardCharsets.US_ASCII);
    }

    private static String head(InputStream in) throws IOException {
        StringBuilder head = new StringBuilder();
        while (head.length() < 4 || head.indexOf("\r\n\r\n", head.length() - 4) < 0) {
            head.append(next(in));
        }
        return head.toString();
    }

    private static char next(InputStream in) throws IOException {
        int next = in.read();
        if (next < 0) {
            throw new EOFException("the server closed the connection");
        }
        return (char) next;
    }

    /** Lines of a chunked answer. */
    private static final class Chunks {
        private final InputStream in;
        private byte[] chunk = {};
        private int at;

        Chunks(InputStream in) {
            this.in = in;
        }

        /** The next line; null behind the mark that ends a whole answer. */
        String line() throws IOException {
            StringBuilder line = new StringBuilder();
            while (true) {
                int end = at;
                while (end < chunk.length && chunk[end] != '\n') {
                    end++;
                }
                line.append(new String(chunk, at, end - at, StandardCharsets.ISO_8859_1));
                at = end + 1;
                if (end < chunk.length) {
                    return line.toString();
                }
                StringBuilder size = new StringBuilder();
                while (size.length() < 2 || size.indexOf("\r\n", size.length() - 2) < 0) {
                    size.append(next(in));
                }
                int length = Integer.parseInt(size.toString().strip(), 16);
                if (length == 0) {
                    check(line.length() == 0, "the last line is cut off");
                    return null;
                }
                chunk = in.readNBytes(length);
                in.readNBytes(2);
                at = 0;
            }
        }
    }

    /** Bytes of every object that a full collection leaves. */
    private static long liveBytes() throws Exception {
        String jcmd = Path.of(System.getProperty("java.home"), "bin", "jcmd").toString();
        Process histogram = new ProcessBuilder(jcmd, Long.toString(server.pid()), "GC.class_histogram").start();
        String text = new String(histogram.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        String total = text.lines().filter(line -> line.startsWith("Total")).findFirst().orElseThrow();
        return Long.parseLong(total.split("\\s+")[2]);
    }

    private static File jar() {
        File[] jars = new File("target").listFiles((directory, name) -> name.matches("brinebook-[\\d.]+\\.jar"));
        check(jars != null && jars.length == 1, "package the service before");
        return jars[0];
    }

    private static void start(File jar) throws Exception {
        ProcessBuilder java = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), HEAP, "-jar",
                jar.getPath()).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
        port = freePort();
        java.environment().put("PORT", Integer.toString(port));
        java.environment().put("METRICS_PORT", Integer.toString(freePort()));
        server = java.start();
        for (int i = 0; i < 100; i++) {
            TimeUnit.MILLISECONDS.sleep(200);
            try (Socket probe = new Socket("127.0.0.1", port)) {
                check(probe.isConnected(), "not connected");
                return;
            } catch (IOException notYet) {
                check(server.isAlive(), "the server did not start");
            }
        }
    }

    private static int freePort() throws IOException {
        try (ServerSocket free = new ServerSocket(0)) {
            return free.getLocalPort();
        }
    }

    private static byte[] concat(byte[] head, byte[] body) {
        byte[] whole = Arrays.copyOf(head, head.length + body.length);
        System.arraycopy(body, 0, whole, head.length, body.length);
        return whole;
    }

    private static double mebi(long bytes) {
        return bytes / 1024.0 / 1024.0;
    }

    private static void check(boolean asWanted, String otherwise) {
        if (!asWanted) {
            throw new IllegalStateException(otherwise);
        }
    }
}
