// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.exchange;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;

/**
 * Lets a GET answer be kept, by whom {@link CachePolicy} says, and asked for again without being sent again (RFC 9110,
 * section 13). A caller that keeps what no cache may keep can ask for it by its ETag too.
 */
public final class Cached {

    private Cached() {
    }

    /** Gives the answer that {@code context} holds a strong ETag, and turns it into 304 when the caller has it. */
    public static void mark(Context context) {
        byte[] body = bytes(Objects.requireNonNull(context.resultInputStream(), "answer"));
        String coding = Compression.wanted(context, body.length) ? "-gzip" : "";
        String tag = '"' + HexFormat.of().formatHex(digest(body), 0, 12) + coding + '"';
        context.header("ETag", tag).header("Cache-Control", CachePolicy.of(context).field());
        if (holds(ListHeader.of(context, "If-None-Match"), tag)) {
            context.status(304).result(new byte[0]);
            context.res().setContentType(null);
        } else {
            context.result(body);
        }
    }

    /** Weak comparison, as If-None-Match asks for. */
    private static boolean holds(List<String> ifNoneMatch, String tag) {
        return ifNoneMatch.stream().anyMatch(given -> given.equals("*") || given.equals(tag) || given.equals("W/" + tag));
    }

    private static byte[] bytes(InputStream stream) {
        try (stream) {
            return stream.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] digest(byte[] body) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(body);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
