package dev.brinebook.http;

import io.javalin.http.Context;
import java.util.List;
import java.util.stream.Stream;

/** Content negotiation where there is one form to choose (RFC 9110, section 12.5.1). */
final class Acceptance {

    /** Ranges that take in the one form, the most specific first: that one decides. */
    private static final List<String> JSON = List.of("application/json", "application/*", "*/*");

    private Acceptance() {
    }

    /** Refuses a request that accepts no JSON. */
    static void requireJson(Context context) {
        List<String> ranges = ListHeader.of(context, "Accept");
        Stream<String> fitting = JSON.stream().flatMap(form -> ranges.stream()
                .filter(range -> ListHeader.value(range).equals(form)));
        boolean accepted = ranges.isEmpty() || fitting.findFirst().filter(range -> !ListHeader.refused(range)).isPresent();
        if (!accepted) {
            throw new ProblemException(ProblemType.NOT_ACCEPTABLE, "The answer is application/json.");
        }
    }
}
