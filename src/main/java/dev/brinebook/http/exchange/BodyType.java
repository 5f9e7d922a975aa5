// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.exchange;

import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.text.Message;
import io.javalin.http.Context;
import java.util.List;
import java.util.Locale;

/** The media type of a request body (RFC 9110, section 8.3). */
public final class BodyType {

    private BodyType() {
    }

    /** Which of {@code taken} the body is, in UTF-8; refuses every other. */
    public static String of(Context context, List<String> taken) {
        String encoding = context.header("Content-Encoding");
        if (encoding != null && !encoding.equalsIgnoreCase("identity")) {
            context.header("Accept-Encoding", "identity");
            throw new ProblemException(ProblemType.UNSUPPORTED_MEDIA_TYPE, Message.of("bodyType.compressedBodiesAccepted"));
        }
        String type = context.header("Content-Type");
        String[] parts = type == null ? new String[] {""} : type.toLowerCase(Locale.ROOT).split(";");
        String bare = parts[0].strip();
        boolean known = taken.contains(bare);
        for (int i = 1; i < parts.length && known; i++) {
            String parameter = parts[i].strip().replace("\"", "");
            known = !parameter.startsWith("charset=") || parameter.equals("charset=utf-8");
        }
        if (!known) {
            Message any = Acceptance.anyOf(taken);
            context.header("Accept-Post", String.join(", ", taken));
            throw new ProblemException(ProblemType.UNSUPPORTED_MEDIA_TYPE, type == null
                    ? Message.of("bodyType.bodyMustUtf8", any)
                    : Message.of("bodyType.bodyMustUtf8Content", any));
        }
        return bare;
    }
}
