package dev.brinebook.http;

import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Content negotiation where there is one form to choose. */
final class Acceptance {

    private static final List<String> JSON = List.of("application/json", "application/*", "*/*");

    private Acceptance() {
    }

    /** Refuses a request that accepts no JSON. */
    static void requireJson(Context context) {
        if (!accepts(context.header("Accept"))) {
            throw new ProblemException(ProblemType.NOT_ACCEPTABLE, "The answer is application/json.");
        }
    }

    private static boolean accepts(String header) {
        return header == null || header.isBlank() || Arrays.stream(header.toLowerCase(Locale.ROOT).split(","))
                .map(String::strip).anyMatch(Acceptance::accepted);
    }

    private static boolean accepted(String range) {
        String[] parts = range.split(";");
        boolean refused = Arrays.stream(parts).skip(1).map(String::strip)
                .anyMatch(parameter -> parameter.matches("q=0(\\.0{0,3})?"));
        return JSON.contains(parts[0].strip()) && !refused;
    }
}
