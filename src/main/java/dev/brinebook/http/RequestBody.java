package dev.brinebook.http;

import dev.brinebook.wording.Message;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.TimeUnit;

/**
 * The whole body of a request, up to a limit, if it comes in time: one that drips in holds a thread as long as one that
 * stands still, and is never idle.
 */
final class RequestBody {

    private static final int CHUNK_BYTES = 8_192;

    private final int maxBytes;
    private final int seconds;

    RequestBody(Settings settings) {
        this.maxBytes = settings.maxBodyBytes();
        this.seconds = settings.requestSeconds();
    }

    /**
     * The body as it came.
     *
     * @throws ProblemException when it has more bytes than the limit, or is not whole in time
     */
    byte[] read(Context context) throws IOException {
        long length = context.req().getContentLengthLong();
        if (length > 2L * maxBytes) {
            throw tooLarge(context);
        }
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
        InputStream stream = context.req().getInputStream();
        byte[] body = readUpTo(maxBytes + 1, stream, end, context);
        if (body.length > maxBytes) {
            // A caller still sending does not read: a body a little too large is taken in, so that the answer is seen.
            readUpTo(maxBytes, stream, end, context);
            throw tooLarge(context);
        }
        return body;
    }

    private static byte[] readUpTo(int most, InputStream stream, long end, Context context) throws IOException {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        byte[] chunk = new byte[Math.min(most, CHUNK_BYTES)];
        while (body.size() < most) {
            int count = stream.read(chunk, 0, Math.min(chunk.length, most - body.size()));
            if (count < 0) {
                break;
            }
            body.write(chunk, 0, count);
            if (System.nanoTime() - end > 0) {
                context.header("Connection", "close");
                throw new ProblemException(ProblemType.REQUEST_TIMEOUT, ProblemType.REQUEST_TIMEOUT.explanation());
            }
        }
        return body.toByteArray();
    }

    private ProblemException tooLarge(Context context) {
        context.header("Connection", "close");
        return new ProblemException(ProblemType.BODY_TOO_LARGE, Message.of("The body has more than {0} bytes.", maxBytes));
    }
}
