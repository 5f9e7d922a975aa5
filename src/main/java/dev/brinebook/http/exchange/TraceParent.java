// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.exchange;

import dev.brinebook.http.limit.Exemplar;
import io.javalin.http.Context;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The caller's place in a distributed trace (W3C Trace Context), carried into the log, and into metrics and spans where it is kept. */
public final class TraceParent {

    public static final String HEADER = "traceparent";
    public static final String ATTRIBUTE = "traceId";

    private static final Pattern VALID = Pattern.compile("[0-9a-f]{2}-([0-9a-f]{32})-([0-9a-f]{16})-[0-9a-f]([0-9a-f])");
    private static final String NO_TRACE = "0".repeat(32);

    private TraceParent() {
    }

    /** The id of the trace, or null when there is none or it is not safe to log. */
    public static String idOf(Context context) {
        return idOf(context.header(HEADER));
    }

    public static String idOf(String given) {
        if (given == null) {
            return null;
        }
        Matcher parts = VALID.matcher(given);
        return parts.matches() && !parts.group(1).equals(NO_TRACE) ? parts.group(1) : null;
    }

    /** The trace that the caller keeps, by its sampled flag (section 3.2.2.5), or null. */
    public static Exemplar sampledBy(String given) {
        if (given == null) {
            return null;
        }
        Matcher parts = VALID.matcher(given);
        boolean kept = parts.matches() && !parts.group(1).equals(NO_TRACE) && (Character.digit(parts.group(3).charAt(0), 16) & 1) == 1;
        return kept ? new Exemplar(parts.group(1), parts.group(2)) : null;
    }
}
