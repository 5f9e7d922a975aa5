package dev.brinebook.http;

import dev.brinebook.wording.Message;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;

/** The whole body of a request, up to a limit. */
final class RequestBody {

    private RequestBody() {
    }

    /**
     * The body as it came.
     *
     * @throws ProblemException when it has more than {@code maxBytes}
     */
    static byte[] read(Context context, int maxBytes) throws IOException {
        long length = context.req().getContentLengthLong();
        if (length > 2L * maxBytes) {
            throw tooLarge(context, maxBytes);
        }
        InputStream stream = context.req().getInputStream();
        byte[] body = stream.readNBytes(maxBytes + 1);
        if (body.length > maxBytes) {
            // A caller still sending does not read: a body a little too large is taken in, so that the answer is seen.
            stream.readNBytes(maxBytes);
            throw tooLarge(context, maxBytes);
        }
        return body;
    }

    private static ProblemException tooLarge(Context context, int maxBytes) {
        context.header("Connection", "close");
        return new ProblemException(ProblemType.BODY_TOO_LARGE, Message.of("The body has more than {0} bytes.", maxBytes));
    }
}
