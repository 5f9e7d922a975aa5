// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.api.Violation.Code;
import dev.brinebook.text.Message;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is below a place, by its JSON pointer (RFC 6901): a name that only begins alike is another place. */
class ViolationsTest {

    @ParameterizedTest
    @CsvSource({"a, '', true", "a, b, true", "a0, '', false", "a-b, '', false", "a.b, c, false", "A, a, false", "b, a, false",
        "a~b, '', false"})
    void distinguishesPlacesBelowAPointer(String first, String second, boolean below) {
        Violations violations = new Violations();
        Violations place = second.isEmpty() ? violations.at(first) : violations.at(first).at(second);
        place.add(Code.MISSING, Message.of("is missing"));
        assertEquals(below, violations.at("a").here());
        assertEquals(true, violations.here());
        violations.at("a").forgetBelow();
        assertEquals(below && !second.isEmpty() ? List.of() : List.of(place.pointer()),
                violations.sorted().stream().map(Violation::pointer).toList());
    }

    @Test
    void keepsTheFirstFaultOfAPlace() {
        Violations violations = new Violations();
        violations.add("a", Code.MISSING, Message.of("is missing"));
        violations.add("a", Code.OUT_OF_RANGE, Message.of("is far out of range"));
        assertEquals(List.of(Code.MISSING), violations.sorted().stream().map(Violation::code).toList());
    }
}
