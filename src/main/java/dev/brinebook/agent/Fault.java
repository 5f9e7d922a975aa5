// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import dev.brinebook.api.Violation;
import dev.brinebook.api.WireNames;
import dev.brinebook.text.Message;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * One fault of the arguments, for a model.
 *
 * @param pointer where, from the arguments down
 * @param code stable code of its kind
 * @param said what is wrong and what is allowed, in one line
 */
record Fault(String pointer, String code, String said) {

    /** What can be said again of what was received: a number or a word, with a unit. */
    private static final String HARMLESS = "-?[A-Za-z0-9/.\\-]{1,24}( [A-Za-z0-9/.\\-]{1,12})?";

    static Fault unknownField(String owner, String name, List<String> known) {
        return of(Violation.unknownField(owner + "/" + name, name, known));
    }

    static Fault unknownValue(String pointer, String received, List<String> allowed) {
        return of(new Violation(pointer, Violation.Code.UNKNOWN_VALUE, Message.verbatim(""), Violation.names(allowed),
                WireNames.nearest(received, allowed).orElse(null), received));
    }

    /** A fault that the check of a request found. */
    static Fault of(Violation violation) {
        String code = WireNames.of(violation.code());
        if (violation.allowed() == null || violation.allowed().isEmpty()) {
            return new Fault(violation.pointer(), code, violation.message().toString());
        }
        String allowed = violation.allowed().stream().map(Message::toString).collect(Collectors.joining(", "));
        String meant = violation.didYouMean() == null ? "" : "did you mean " + violation.didYouMean() + "?";
        return new Fault(violation.pointer(), code, violation.code() == Violation.Code.UNKNOWN_FIELD
                ? (meant + " Known: " + allowed).strip()
                : "allowed " + allowed + received(violation.received()) + (meant.isEmpty() ? "" : "; " + meant));
    }

    private static String received(String received) {
        return received != null && received.matches(HARMLESS) ? "; received \"" + received + "\"" : "";
    }

    /** The fault in a line. A name in its pointer that is none of ours is not said again. */
    String line() {
        String place = Arrays.stream(pointer.split("/", -1)).map(name -> name.matches("[A-Za-z0-9_-]{0,40}") ? name : "?")
                .collect(Collectors.joining("/"));
        return (place.isEmpty() ? "(whole)" : place) + " " + code + ": " + said;
    }
}
