// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import dev.brinebook.api.Checked;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;

/** An operation of the tests alone, with a property of every kind and a calculation that each test chooses. */
public final class Trial {

    public static final String PATH = "/v1/trial";

    /** A kind of thing. */
    public enum Kind {
        PLAIN, RATHER_SPECIAL
    }

    @SchemaDescription("A part.")
    public record Part(@Property(value = "How many.", required = true, min = 1, max = 9) Integer count,
            @Property("Which.") Kind kind) {
    }

    @SchemaDescription("A request with a property of every kind.")
    public record Request(
            @Property(value = "A number.", min = 0, max = 10, unit = "NTU") BigDecimal number,
            @Property(value = "A number above a bound.", min = 0, aboveMin = true) BigDecimal positive,
            @Property(value = "A whole number.", min = 1, max = 12) Integer whole,
            @Property(value = "A seed.") Long seed,
            @Property("A flag.") Boolean flag,
            @Property(value = "A text.", minItems = 1, maxItems = 8) String text,
            @Property("A date.") LocalDate date,
            @Property("A choice.") Kind kind,
            @Property(value = "A flow.", min = 1, max = 10, unit = "L/min") FlowQuantity flow,
            @Property(value = "A series.", min = 0, max = 5, minItems = 2, maxItems = 40) List<BigDecimal> series,
            @Property(value = "Parts.", maxItems = 3) List<Part> parts,
            @Property("A part.") Part part) implements Checked {

        @Override
        public void check(Violations at) {
            if (Boolean.TRUE.equals(flag) && text == null) {
                at.add("text", Code.INCONSISTENT, Message.verbatim("must be given when flag is true"));
            }
        }
    }

    @SchemaDescription("An answer.")
    public record Answer(@Property("What came.") String got) {
    }

    private Trial() {
    }

    public static Operation<Request, Answer> doing(Function<Request, Answer> calculation) {
        return new Operation<>("tryOut", PATH, "Try", "For tests.", Request.class, Answer.class, calculation, List.of(),
                List.of());
    }

    /** Answers with what it read, and finds the whole number 7 impossible. */
    public static Answer echo(Request request) {
        if (request.whole() != null && request.whole() == 7) {
            throw InvalidRequest.impossible("/whole", Message.verbatim("seven cannot be"));
        }
        return new Answer(request.toString());
    }
}
