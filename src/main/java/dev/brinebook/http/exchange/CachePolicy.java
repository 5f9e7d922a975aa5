// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.exchange;

import io.javalin.http.Context;
import io.javalin.http.Handler;

/**
 * Who may keep an answer to a GET (RFC 9111, section 5.2.2). Pages and short forms of a few numbers may be kept by all; what is
 * answered to a key, by its caller alone; what was calculated for a household, by nobody.
 */
public enum CachePolicy {

    PUBLIC("public, max-age=300"), PRIVATE("private, max-age=300"), NOT_STORED("no-store");

    private static final String ATTRIBUTE = CachePolicy.class.getName();

    private final String field;

    CachePolicy(String field) {
        this.field = field;
    }

    /** The value of the field Cache-Control. */
    String field() {
        return field;
    }

    /** Decides for the answer to a request; the last to decide wins. */
    void decideFor(Context context) {
        context.attribute(ATTRIBUTE, this);
    }

    /** What was decided, or that all may keep it. */
    static CachePolicy of(Context context) {
        CachePolicy decided = context.attribute(ATTRIBUTE);
        return decided == null ? PUBLIC : decided;
    }

    /** Answers as {@code handler} does, to be kept by nobody. */
    public static Handler neverStored(Handler handler) {
        return context -> {
            NOT_STORED.decideFor(context);
            handler.handle(context);
        };
    }

    /** For answers that another caller would not get: kept by its caller alone, and by its key (RFC 9110, section 12.5.5). */
    public static void keepPrivate(Context context) {
        PRIVATE.decideFor(context);
        context.res().addHeader("Vary", "Authorization");
    }
}
