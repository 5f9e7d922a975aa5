// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.util.JsonParserDelegate;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.guard.CancellationToken;
import dev.brinebook.text.Message;
import java.io.IOException;

/**
 * Reports every {@code null}, at any depth: unknown values are omitted, never null. Long bodies are read no longer than
 * the {@link CancellationToken} of the thread allows.
 */
final class NullWatchingParser extends JsonParserDelegate {

    /** Tokens between two looks at the sign, which takes longer than a token. */
    private static final int TOKENS_BETWEEN_LOOKS = 256;

    private final Violations violations;
    private int tokens;

    NullWatchingParser(JsonParser parser, Violations violations) {
        super(parser);
        this.violations = violations;
    }

    /** Collector of the errors in the input. */
    Violations violations() {
        return violations;
    }

    @Override
    public JsonToken nextToken() throws IOException {
        if (++tokens % TOKENS_BETWEEN_LOOKS == 0) {
            CancellationToken.obey();
        }
        JsonToken token = super.nextToken();
        if (token == JsonToken.VALUE_NULL && !getParsingContext().inRoot()) {
            violations.add(new Violation(getParsingContext().pathAsPointer().toString(), Code.NULL_VALUE,
                    Message.of("problem.http.omitIfUnknownNull")));
        }
        return token;
    }
}
