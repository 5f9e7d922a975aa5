// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.fuzz;

import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.Operation;
import dev.brinebook.fuzz.Call.Options;
import dev.brinebook.text.Language;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** How bytes become requests to an operation. */
enum Way {
    /** The bytes are the body of the POST form. */
    BODY,
    /** The bytes choose, number by number, a request that fits the records of the operation. */
    RECORD,
    /** The bytes are the query of the GET form. */
    QUERY,
    /** The first line is the query, the rest the body of the other form of a request, such as a table. */
    TEXT,
    /** The bytes are lines for the operation in bulk: of JSON, or a table. */
    LINES;

    private static final int FORM_SHIFT = 2;
    private static final int FORM_MASK = 7;
    private static final int TABLE = 64;

    boolean of(Operation<?, ?> operation) {
        return switch (this) {
            case QUERY -> !operation.query().isEmpty();
            case TEXT -> operation.textForm() != null;
            default -> true;
        };
    }

    /** The request of bytes; none in the way of records, which takes more than one. */
    Call call(Operation<?, ?> operation, int options, byte[] bytes) {
        return switch (this) {
            case BODY -> Call.post(operation.path(), options(operation, options), Operation.JSON, bytes);
            case QUERY -> Call.get(operation.path() + "?" + Call.query(bytes), options(operation, options));
            case TEXT -> Call.text(operation, options(operation, options & ~(FORM_MASK << FORM_SHIFT)), bytes);
            case LINES -> Call.post("/v1/bulk/" + operation.id(), new Options(language(options), "application/x-ndjson"),
                    (options & TABLE) == 0 ? "application/x-ndjson" : "text/csv", bytes);
            case RECORD -> throw new IllegalArgumentException("a record takes more than one request");
        };
    }

    /** The lowest bits choose the language, those above the form of the answer: mostly JSON, as most callers want. */
    static Options options(Operation<?, ?> operation, int bits) {
        int form = bits >> FORM_SHIFT & FORM_MASK;
        List<String> forms = operation.forms().stream().map(AnswerForm::mediaType).toList();
        return new Options(language(bits), form == 0 || form > forms.size() ? null : forms.get(form - 1));
    }

    private static String language(int bits) {
        List<Language> languages = Language.all();
        return languages.get(bits % languages.size()).tag();
    }

    /** Bits that ask for lines read as a table. */
    static int table() {
        return TABLE;
    }

    static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
