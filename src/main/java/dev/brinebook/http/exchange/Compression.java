// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.exchange;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.zip.GZIPOutputStream;

/**
 * Sends larger answers by gzip to callers that take it. Not left to the server's own compression, which does not inform caches ({@code
 * Vary}) and gives both forms the same strong ETag (RFC 9110, sections 8.8.3 and 12.5.5).
 */
public final class Compression {

    /** An answer that fits one packet anyway gains nothing. */
    private static final int WORTH_BYTES = 1_500;

    private Compression() {
    }

    /** Compresses the whole answer that {@code context} holds, where that is wanted, and sets its length. */
    public static void apply(Context context) throws IOException {
        if (context.res().isCommitted()) {
            return;
        }
        context.res().addHeader("Vary", "Accept-Encoding");
        InputStream whole = context.resultInputStream();
        if (whole != null && wanted(context, whole.available())) {
            byte[] gzip = gzip(whole);
            context.header("Content-Encoding", "gzip").result(gzip);
            context.res().setContentLength(gzip.length);
        } else if (whole != null && whole.available() > 0) {
            context.res().setContentLength(whole.available());
        }
    }

    /** Whether an answer of {@code bytes} will be compressed for this caller. */
    static boolean wanted(Context context, int bytes) {
        return bytes >= WORTH_BYTES && ListHeader.of(context, "Accept-Encoding").stream()
                .anyMatch(coding -> ListHeader.value(coding).equals("gzip") && !ListHeader.refused(coding));
    }

    private static byte[] gzip(InputStream whole) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (whole; GZIPOutputStream gzip = new GZIPOutputStream(bytes)) {
            whole.transferTo(gzip);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
