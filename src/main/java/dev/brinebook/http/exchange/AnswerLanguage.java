// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.exchange;

import dev.brinebook.text.Language;
import io.javalin.http.Context;

/** The language of what an answer says to people (RFC 9110, sections 8.5 and 12.5.4). */
public final class AnswerLanguage {

    public static final String ACCEPT = "Accept-Language";
    public static final String HEADER = "Content-Language";

    private AnswerLanguage() {
    }

    /** The language requested by the caller, reported to the caller and, once, to caches. */
    public static Language of(Context context) {
        Language language = Language.of(context.header(ACCEPT));
        if (!context.res().containsHeader(HEADER)) {
            context.header(HEADER, language.tag());
            context.res().addHeader("Vary", ACCEPT);
        }
        return language;
    }
}
