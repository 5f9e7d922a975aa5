// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.contract.ErrorResponses;
import dev.brinebook.source.Table;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * The content of the page of a kind of problem.
 *
 * @param kind the kind
 * @param ofOperations whether every operation can report it
 * @param exchanges real requests that meet it, with what they are answered
 * @param codes the kinds of faults that it lists, if it lists any
 */
record ProblemPage(ProblemKind kind, boolean ofOperations, List<Exchange> exchanges, List<FaultCode> codes) {

    /** A request, and the answer with its relevant headers, as sent over the wire. */
    record Exchange(String request, String answer) {

        JsonNode problem() {
            try {
                return new ObjectMapper().readTree(answer.substring(answer.indexOf("\n\n")));
            } catch (JsonProcessingException e) {
                throw new IllegalStateException("the answer is no problem document", e);
            }
        }
    }

    /** A kind of error in a request: its code, meaning, remedy, and a real message. */
    record FaultCode(String code, String meaning, String fix, String message) {
    }

    /** The kind of problem whose answers list errors, each with a code. */
    private static final String LISTING = "invalid-request";

    static ProblemPage of(ProblemKind kind) {
        boolean listing = kind.slug().equals(LISTING);
        List<Exchange> exchanges = listing ? ofFaults() : List.of(exchange(kind.slug()));
        return new ProblemPage(kind, ErrorResponses.isOfOperations(kind.slug()),
                exchanges, listing ? codes(exchanges) : List.of());
    }

    private static List<Exchange> ofFaults() {
        return Stream.of(LISTING, "impossible-request").map(ProblemPage::exchange).toList();
    }

    /** Every code of an error in a request. */
    static List<FaultCode> allCodes() {
        return codes(ofFaults());
    }

    private static List<FaultCode> codes(List<Exchange> exchanges) {
        return Table.read("/dev/brinebook/docs/fault-codes.txt", '|', 3).stream()
                .map(row -> new FaultCode(row[0], row[1], row[2], message(row[0], exchanges))).toList();
    }

    private static String message(String code, List<Exchange> exchanges) {
        for (Exchange exchange : exchanges) {
            for (JsonNode fault : exchange.problem().path("errors")) {
                if (fault.path("code").asText().equals(code)) {
                    return fault.path("pointer").asText() + " " + fault.path("message").asText();
                }
            }
        }
        throw new IllegalStateException("no example shows " + code);
    }

    private static Exchange exchange(String name) {
        return new Exchange(text(name + ".request.txt"), text(name + ".answer.txt"));
    }

    private static String text(String file) {
        try (InputStream stream = ProblemPage.class.getResourceAsStream("problems/" + file)) {
            return new String(Objects.requireNonNull(stream, file).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
