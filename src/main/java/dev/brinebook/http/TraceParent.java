package dev.brinebook.http;

import io.javalin.http.Context;
import java.util.regex.Pattern;

/** The caller's place in a distributed trace (W3C Trace Context), carried into the log and nowhere else. */
final class TraceParent {

    static final String HEADER = "traceparent";

    private static final Pattern VALID = Pattern.compile("[0-9a-f]{2}-[0-9a-f]{32}-[0-9a-f]{16}-[0-9a-f]{2}");

    private TraceParent() {
    }

    /** The header as it came, or {@code -} when there is none or it is not safe to log. */
    static String of(Context context) {
        return of(context.header(HEADER));
    }

    static String of(String given) {
        return given != null && VALID.matcher(given).matches() ? given : "-";
    }
}
