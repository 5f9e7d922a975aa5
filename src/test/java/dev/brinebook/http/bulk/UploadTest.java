// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.HttpText;
import dev.brinebook.http.Served;
import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Uploads of clients that write everything before they read (RFC 9112, section 9.3, has no rule against them), and continued ones. */
@Timeout(60)
class UploadTest {

    private static final String PATH = "/v1/bulk/convertHardness";
    private static final int MEGABYTES = 20;

    /** More than all buffers on the way hold, written whole before a byte is read. */
    @Test
    void answersAClientThatWritesEverythingFirst() throws IOException {
        byte[] row = ("18.5,gpg," + "x".repeat(1_000) + "\n").getBytes(StandardCharsets.US_ASCII);
        byte[] header = "hardness.value,hardness.unit,note\n".getBytes(StandardCharsets.US_ASCII);
        int rows = MEGABYTES * 1_048_576 / row.length;
        try (Socket socket = new Socket("127.0.0.1", Served.SERVER.port())) {
            socket.setSoTimeout(40_000);
            OutputStream out = socket.getOutputStream();
            out.write(("POST " + PATH + "?answer=afterUpload&pass=note&fields=classes HTTP/1.1\r\nHost: a\r\nContent-Type: text/csv\r\n"
                    + "Connection: close\r\nContent-Length: " + (header.length + (long) rows * row.length) + "\r\n\r\n")
                    .getBytes(StandardCharsets.US_ASCII));
            out.write(header);
            for (int i = 0; i < rows; i++) {
                out.write(row);
            }
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(answer.startsWith("HTTP/1.1 200 "), answer.substring(0, 100));
            assertEquals(rows, answer.split(",200,x").length - 1);
            assertTrue(answer.contains("\n" + (rows + 1) + ",200,x"), "the last row");
        }
        assertNoFileIsLeft();
    }

    private static void assertNoFileIsLeft() throws IOException {
        try (Stream<Path> files = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            assertEquals(List.of(), files.filter(file -> file.getFileName().toString().startsWith("brinebook-upload")).toList());
        }
    }

    /** The answers are those of the same lines without waiting. */
    @ParameterizedTest
    @CsvSource({"application/x-ndjson, application/x-ndjson", "application/x-ndjson, text/csv"})
    void answersTheSameAfterTheUpload(String in, String out) {
        String lines = Served.SMALLEST + "\n{\n\n" + Served.SMALLEST + "\n";
        assertEquals(post(PATH, in, out, lines), post(PATH + "?answer=afterUpload", in, out, lines));
    }

    /** Rows appended to those already there are the answer of an unbroken stream, byte for byte; lines before may be empty. */
    @Test
    void continuesFromALine() {
        String header = "hardness.value,hardness.unit\n";
        String rows = "1,gpg\n-2,gpg\n\n3,gpg\n4,gpg\n";
        String whole = post(PATH, "text/csv", "text/csv", header + rows);
        List<String> lines = whole.lines().toList();
        for (int from = 2; from <= 7; from++) {
            int first = from;
            String expected = String.join("", lines.stream().skip(1).filter(line -> Integer.parseInt(line.split(",")[0]) >= first)
                    .map(line -> line + "\r\n").toList());
            String before = "\n".repeat(from - 2);
            String rest = String.join("", (header + rows).lines().skip(from - 1).map(line -> line + "\n").toList());
            assertEquals(expected, post(PATH + "?from=" + from, "text/csv", "text/csv", header + rows), "from " + from);
            assertEquals(expected, post(PATH + "?from=" + from, "text/csv", "text/csv", header + before + rest), "emptied, from " + from);
        }
        String objects = Served.SMALLEST + "\n{\n" + Served.SMALLEST + "\n";
        String all = post(PATH, "application/x-ndjson", "*/*", objects);
        assertEquals(all.substring(all.indexOf("{\"line\":2")), post(PATH + "?from=2", "application/x-ndjson", "*/*", objects));
        assertEquals(all.substring(all.indexOf("{\"line\":3")), post(PATH + "?from=3&answer=afterUpload", "application/x-ndjson", "*/*",
                objects));
    }

    /** An empty answer says that all lines are answered; a start further on is an error. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', ignoreLeadingAndTrailingWhitespace = false, textBlock = """
            text/csv|hardness.value,hardness.unit@1,gpg@2,gpg@@|5|4
            text/csv|hardness.value,hardness.unit@|2|1
            application/x-ndjson|{}@{}|3|2
            application/x-ndjson|@|2|1
            """)
    void aStartBehindTheEndIsSaid(String type, String body, int end, int last) {
        String sent = body.replace('@', '\n');
        assertEquals("", post(PATH + "?from=" + end, type, type, sent));
        String beyond = post(PATH + "?from=" + (end + 1), type, type, sent);
        assertEquals(1, beyond.lines().count(), beyond);
        assertTrue(beyond.startsWith(type.equals("text/csv") ? end + ",422," : "{\"line\":" + end + ",\"status\":422,"), beyond);
        assertTrue(beyond.contains("Must be at most " + end + ". The last line is " + last + "."), beyond);
    }

    private static String post(String path, String in, String out, String body) {
        return Served.given().contentType(in).accept(out).header("X-Request-Id",
                "same").body(body.getBytes(StandardCharsets.UTF_8)).post(path)
                .then().statusCode(200).extract().asString();
    }

    @Test
    void keepsAnUploadAndTellsOfItsProgress() throws IOException {
        byte[] sent = new byte[3_000_000];
        new Random(1).nextBytes(sent);
        AtomicLong onDisk = new AtomicLong();
        AtomicInteger moved = new AtomicInteger();
        try (UploadSpool spool = UploadSpool.receive(new ByteArrayInputStream(sent), onDisk, moved::incrementAndGet);
                InputStream read = spool.read()) {
            assertTrue(onDisk.get() >= sent.length, "noise does not get smaller: " + onDisk);
            assertTrue(moved.get() > 100);
            assertNoFileIsLeft();
            assertArrayEquals(sent, read.readAllBytes());
        }
        assertEquals(0, onDisk.get());
    }

    /** A body of so many bytes that is not held anywhere. */
    private static final class Long extends InputStream {

        private long left;

        Long(long left) {
            this.left = left;
        }

        @Override
        public int read() {
            return left-- > 0 ? 'x' : -1;
        }

        @Override
        public int read(byte[] buffer, int offset, int length) {
            int n = (int) Math.min(length, left);
            left -= n;
            return n > 0 ? n : -1;
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            104857600 |         0 |
            104857601 |         0 | BODY_TOO_LARGE
            999999999999 |      0 | BODY_TOO_LARGE
            10000000  | 268435450 | OVERLOADED
            """)
    void boundsUploadsEachAndTogether(long bytes, long others, ProblemType refused) {
        AtomicLong onDisk = new AtomicLong(others);
        if (refused == null) {
            UploadSpool.receive(new Long(bytes), onDisk, () -> { }).close();
        } else {
            assertEquals(refused, assertThrows(ProblemException.class, () -> UploadSpool.receive(new Long(bytes), onDisk,
                    () -> { })).type());
        }
        assertEquals(others, onDisk.get(), "everything is given back");
    }

    /** One that breaks off is answered, and leaves nothing. */
    @Test
    void anUploadThatBreaksOffIsAnError() throws IOException {
        try (Socket socket = new Socket("127.0.0.1", Served.SERVER.port())) {
            socket.setSoTimeout(10_000);
            socket.getOutputStream().write(("POST " + PATH + "?answer=afterUpload HTTP/1.1\r\nHost: a\r\nContent-Type: text/csv\r\n"
                    + "Transfer-Encoding: chunked\r\n\r\n5\r\n1,gpg\r\nno size\r\n").getBytes(StandardCharsets.US_ASCII));
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            HttpText.assertProblem(answer, 400, "bad-request");
        }
        assertNoFileIsLeft();
        assertFalse(post(PATH + "?answer=afterUpload", "application/x-ndjson", "*/*", Served.SMALLEST).isEmpty());
    }
}
