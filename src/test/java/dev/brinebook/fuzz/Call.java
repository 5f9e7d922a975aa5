// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.fuzz;

import dev.brinebook.api.Operation;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One request of HTTP.
 *
 * @param head request line and headers, as they go over the wire
 */
public record Call(byte[] head, byte[] body) {

    private static final String PRINTABLE = "!\"$%&'()*+,-./:;<=>?@[\\]^_`{|}~";

    public static Call post(String target, Options options, String type, byte[] body) {
        return call("POST " + target, options, List.of("Content-Type: " + type, "Content-Length: " + body.length), body);
    }

    public static Call get(String target, Options options) {
        return call("GET " + target, options, List.of(), new byte[0]);
    }

    private static Call call(String start, Options options, List<String> more, byte[] body) {
        List<String> lines = new ArrayList<>(List.of(start + " HTTP/1.0", "Host: localhost", "X-Request-Id: fuzz",
                "Accept-Language: " + options.language()));
        if (options.accept() != null) {
            lines.add("Accept: " + options.accept());
        }
        lines.addAll(more);
        return new Call((String.join("\r\n", lines) + "\r\n\r\n").getBytes(StandardCharsets.ISO_8859_1), body);
    }

    /** Bytes as a query: what a request line cannot hold is percent-encoded, the rest, percent signs too, stays as it is. */
    public static String query(byte[] bytes) {
        StringBuilder query = new StringBuilder();
        for (byte one : bytes) {
            boolean plain = one > 0 && (Character.isLetterOrDigit(one) || PRINTABLE.indexOf(one) >= 0);
            query.append(plain ? String.valueOf((char) one) : "%%%02X".formatted(one));
        }
        return query.toString();
    }

    byte[] wire() {
        ByteArrayOutputStream wire = new ByteArrayOutputStream();
        wire.writeBytes(head);
        wire.writeBytes(body);
        return wire.toByteArray();
    }

    /** Beside the bytes, what a caller chooses of the answer. */
    public record Options(String language, String accept) {

        public static final Options PLAIN = new Options("en", null);
    }

    /** A line with the query, then the other form of a request, such as a table of readings. */
    public static Call text(Operation<?, ?> operation, Options options, byte[] bytes) {
        int end = 0;
        while (end < bytes.length && bytes[end] != '\n') {
            end++;
        }
        return post(operation.path() + "?" + query(Arrays.copyOf(bytes, end)), options,
                operation.textForm().mediaType(), Arrays.copyOfRange(bytes, Math.min(bytes.length, end + 1), bytes.length));
    }
}
