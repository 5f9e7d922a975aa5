// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.exchange;

import io.javalin.http.Context;
import java.util.HexFormat;
import java.util.concurrent.ThreadLocalRandom;
import java.util.regex.Pattern;
import org.slf4j.spi.LoggingEventBuilder;

/** The id of a request: the caller's when it is short and safe, else a new one. */
public final class RequestId {

    public static final String HEADER = "X-Request-Id";

    private static final Pattern SAFE = Pattern.compile("[A-Za-z0-9._:/+=-]{1,64}");
    public static final String ATTRIBUTE = "requestId";

    private RequestId() {
    }

    public static void give(Context context) {
        String id = accepted(context.header(HEADER));
        context.attribute(ATTRIBUTE, id);
        context.header(HEADER, id);
    }

    public static String of(Context context) {
        return context.attribute(ATTRIBUTE);
    }

    /** Adds the ids of the request to a line of the log. */
    public static LoggingEventBuilder addTo(LoggingEventBuilder line, Context context) {
        return line.addKeyValue(ATTRIBUTE, of(context)).addKeyValue(TraceParent.ATTRIBUTE, TraceParent.idOf(context));
    }

    /** {@code offered} when it is safe to log and to echo, else a new id. */
    public static String accepted(String offered) {
        return offered != null && SAFE.matcher(offered).matches() ? offered
                : HexFormat.of().toHexDigits(ThreadLocalRandom.current().nextLong());
    }
}
