// SPDX-License-Identifier: Apache-2.0
import java.nio.ByteBuffer;
import java.util.Locale;

/**
 * One whole answer of HTTP/1.1.
 *
 * @param status the status code
 * @param saysWhenToRetry whether it has Retry-After
 * @param closes whether the connection ends with it
 * @param lines line ends in the body
 * @param text the first characters of the body
 */
record Answer(int status, boolean saysWhenToRetry, boolean closes, int lines, String text) {

    /** Reads answers from bytes as they come, by RFC 9112; interim answers (1xx) are passed over. */
    static final class Reader {

        private static final int MOST_TEXT = 4_096;

        private enum Part { HEAD, BODY, UNTIL_CLOSE, CHUNK_SIZE, CHUNK, CHUNK_END, TRAILER }

        private final StringBuilder line = new StringBuilder();
        private final StringBuilder text = new StringBuilder();
        private Part part = Part.HEAD;
        private int status;
        private boolean saysWhenToRetry;
        private boolean closes;
        private boolean chunked;
        private long left = -1;
        private int lines;

        /** The next whole answer in {@code bytes}, or null when they end before it does. */
        Answer read(ByteBuffer bytes) {
            while (bytes.hasRemaining()) {
                boolean ends = switch (part) {
                    case HEAD -> endOfLine(bytes) && header();
                    case BODY -> body(bytes);
                    case UNTIL_CLOSE -> {
                        left = Long.MAX_VALUE;
                        body(bytes);
                        yield false;
                    }
                    case CHUNK -> {
                        part = body(bytes) ? Part.CHUNK_END : Part.CHUNK;
                        yield false;
                    }
                    case CHUNK_SIZE -> {
                        if (endOfLine(bytes)) {
                            left = Long.parseLong(taken().split(";")[0].strip(), 16);
                            part = left == 0 ? Part.TRAILER : Part.CHUNK;
                        }
                        yield false;
                    }
                    case CHUNK_END -> {
                        if (endOfLine(bytes)) {
                            taken();
                            part = Part.CHUNK_SIZE;
                        }
                        yield false;
                    }
                    case TRAILER -> endOfLine(bytes) && taken().isEmpty();
                };
                if (ends) {
                    return whole();
                }
            }
            return null;
        }

        /** The answer that ended with the connection, or null when that broke it off. */
        Answer atClose() {
            return part == Part.UNTIL_CLOSE ? whole() : null;
        }

        private boolean endOfLine(ByteBuffer bytes) {
            while (bytes.hasRemaining()) {
                char next = (char) (bytes.get() & 0xff);
                if (next == '\n') {
                    return true;
                }
                if (next != '\r') {
                    line.append(next);
                }
            }
            return false;
        }

        private String taken() {
            String taken = line.toString();
            line.setLength(0);
            return taken;
        }

        /** Whether the answer ends with its head. */
        private boolean header() {
            String header = taken().toLowerCase(Locale.ROOT);
            if (status == 0) {
                if (!header.startsWith("http/1.")) {
                    throw new IllegalStateException("no status line: " + header);
                }
                status = Integer.parseInt(header.substring(9, 12));
                closes = header.startsWith("http/1.0");
                return false;
            }
            if (!header.isEmpty()) {
                saysWhenToRetry |= header.matches("retry-after: *\\d+");
                closes |= header.matches("connection: *close");
                chunked |= header.matches("transfer-encoding: *chunked");
                left = header.startsWith("content-length:") ? Long.parseLong(header.substring(15).strip()) : left;
                return false;
            }
            if (status < 200) {
                status = 0;
                return false;
            }
            boolean empty = status == 204 || status == 304 || left == 0 && !chunked;
            part = chunked ? Part.CHUNK_SIZE : left < 0 ? Part.UNTIL_CLOSE : Part.BODY;
            return empty;
        }

        /** Whether the body, or the chunk of it, is whole. */
        private boolean body(ByteBuffer bytes) {
            for (; left > 0 && bytes.hasRemaining(); left--) {
                char next = (char) (bytes.get() & 0xff);
                lines += next == '\n' ? 1 : 0;
                if (text.length() < MOST_TEXT) {
                    text.append(next);
                }
            }
            return left == 0;
        }

        private Answer whole() {
            Answer answer = new Answer(status, saysWhenToRetry, closes || part == Part.UNTIL_CLOSE, lines, text.toString());
            line.setLength(0);
            text.setLength(0);
            part = Part.HEAD;
            status = 0;
            saysWhenToRetry = false;
            closes = false;
            chunked = false;
            left = -1;
            lines = 0;
            return answer;
        }
    }
}
