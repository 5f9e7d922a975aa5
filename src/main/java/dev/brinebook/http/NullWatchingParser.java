package dev.brinebook.http;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.util.JsonParserDelegate;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.wording.Message;
import java.io.IOException;

/** Reports every {@code null}, wherever it stands: what is unknown is left out, never null. */
final class NullWatchingParser extends JsonParserDelegate {

    private final Violations violations;

    NullWatchingParser(JsonParser parser, Violations violations) {
        super(parser);
        this.violations = violations;
    }

    /** Where the faults of what is read are gathered. */
    Violations violations() {
        return violations;
    }

    @Override
    public JsonToken nextToken() throws IOException {
        JsonToken token = super.nextToken();
        if (token == JsonToken.VALUE_NULL && !getParsingContext().inRoot()) {
            violations.add(new Violation(getParsingContext().pathAsPointer().toString(), Code.NULL_VALUE,
                    Message.of("must not be null: leave it out when it is unknown")));
        }
        return token;
    }
}
