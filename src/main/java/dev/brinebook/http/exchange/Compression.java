// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.exchange;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.concurrent.BlockingDeque;
import java.util.concurrent.LinkedBlockingDeque;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * Sends larger answers by gzip to callers that take it. Not left to the server's own compression, which does not inform caches ({@code
 * Vary}) and gives both forms the same strong ETag (RFC 9110, sections 8.8.3 and 12.5.5).
 */
public final class Compression {

    /** An answer that fits one packet anyway gains nothing. */
    private static final int WORTH_BYTES = 1_500;
    /** Answers of fifty thousand bytes become a twentieth larger than at level 6, in half the time. */
    private static final int LEVEL = 4;
    /** RFC 1952, section 2.3: two bytes that mark it, deflate, no flags, no time, no extra flags, system unknown. */
    private static final byte[] HEADER = {0x1f, (byte) 0x8b, 8, 0, 0, 0, 0, 0, 0, (byte) 0xff};
    private static final int TRAILER_BYTES = 8;
    /** What deflate adds to bytes that it cannot make fewer, beside a thousandth. */
    private static final int WORST_GROWTH = 64;
    /** To make one takes longer than to compress most answers, as it clears 256 KB. The last used is still in the processor's cache. */
    private static final BlockingDeque<Deflater> IDLE = new LinkedBlockingDeque<>(4);

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
            byte[] gzip = gzip(whole.readAllBytes());
            context.header("Content-Encoding", "gzip").result(gzip);
            context.res().setContentLength(gzip.length);
        } else if (whole != null && whole.available() > 0) {
            context.res().setContentLength(whole.available());
        }
    }

    /** Sends an answer at once, compressed where that is wanted: what is left for Javalin to send passes a new buffer of 32 KB. */
    public static void send(Context context, byte[] whole) throws IOException {
        context.res().addHeader("Vary", "Accept-Encoding");
        byte[] sent = whole;
        if (wanted(context, whole.length)) {
            sent = gzip(whole);
            context.header("Content-Encoding", "gzip");
        }
        context.res().setContentLength(sent.length);
        context.res().getOutputStream().write(sent);
    }

    /** Whether an answer of {@code bytes} will be compressed for this caller. */
    static boolean wanted(Context context, int bytes) {
        return bytes >= WORTH_BYTES && ListHeader.of(context, "Accept-Encoding").stream()
                .anyMatch(coding -> ListHeader.value(coding).equals("gzip") && !ListHeader.refused(coding));
    }

    /** The format of RFC 1952: ten bytes of header, the deflated bytes, their checksum and length with the lowest byte first. */
    private static byte[] gzip(byte[] whole) {
        Deflater idle = IDLE.pollFirst();
        Deflater deflater = idle == null ? new Deflater(LEVEL, true) : idle;
        byte[] gzip = new byte[HEADER.length + WORST_GROWTH + whole.length + whole.length / 1_000 + TRAILER_BYTES];
        System.arraycopy(HEADER, 0, gzip, 0, HEADER.length);
        deflater.setInput(whole);
        deflater.finish();
        int length = HEADER.length;
        while (!deflater.finished()) {
            length += deflater.deflate(gzip, length, gzip.length - length);
        }
        deflater.reset();
        if (!IDLE.offerFirst(deflater)) {
            deflater.end();
        }
        CRC32 checksum = new CRC32();
        checksum.update(whole);
        ByteBuffer.wrap(gzip, length, TRAILER_BYTES).order(ByteOrder.LITTLE_ENDIAN).putInt((int) checksum.getValue()).putInt(whole.length);
        return Arrays.copyOf(gzip, length + TRAILER_BYTES);
    }
}
