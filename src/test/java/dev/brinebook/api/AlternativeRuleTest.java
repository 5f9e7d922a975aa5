// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.brinebook.text.Message;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Properties that stand for each other: what is given, what is reported (by the definition in {@link Alternatives}). */
class AlternativeRuleTest {

    @Alternatives(value = {"a", "b + c"}, required = true)
    private record One(Integer a, Integer b, Integer c) {
    }

    @Alternatives(value = {"a", "b + c"}, required = true, several = true)
    private record Several(Integer a, Integer b, Integer c) {
    }

    @Alternatives({"a", "b", "c"})
    private record None(Integer a, Integer b, Integer c) {
    }

    @Alternatives({"a", "z"})
    private record Unknown(Integer a) {
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            One     | -     | /a missing: Missing `a`. Give one of these: `a`; `b` and `c`.
            One     | a     | -
            One     | b c   | -
            One     | b     | /c missing: Missing `c`. These are required together: `b` and `c`.
            One     | a c   | /c inconsistent: Omit it when `a` is given.
            One     | a b c | /b inconsistent: Omit it when `a` is given., /c inconsistent: Omit it when `a` is given.
            Several | -     | /a missing: Missing `a`. Give one of these: `a`; `b` and `c`.
            Several | c     | /a missing: Missing `a`. Give one of these: `a`; `b` and `c`.
            Several | a c   | -
            Several | a b c | -
            None    | -     | -
            None    | c     | -
            None    | a c   | /c inconsistent: Omit it when `a` is given.
            None    | b c   | /c inconsistent: Omit it when `b` is given.
            """)
    void reportsWhatBreaksTheRule(String record, String given, String faults) {
        Class<?> type = List.of(One.class, Several.class, None.class).stream().filter(each -> each.getSimpleName().equals(record))
                .findFirst().orElseThrow();
        Set<String> names = given == null ? Set.of() : Set.of(given.split(" "));
        Violations violations = new Violations();
        AlternativeRule.of(type).forEach(rule -> rule.check(names::contains, violations));
        assertEquals(faults == null ? "" : faults, violations.sorted().stream().map(fault -> fault.pointer() + " "
                + WireNames.of(fault.code()) + ": " + fault.message()).collect(Collectors.joining(", ")));
    }

    /** A fault elsewhere in the record may be the misspelt alternative itself. */
    @Test
    void missesNothingWhereSomethingElseIsWrong() {
        Violations violations = new Violations();
        violations.add("aa", Violation.Code.UNKNOWN_FIELD, Message.verbatim("unknown"));
        AlternativeRule.of(One.class).forEach(rule -> rule.check(name -> false, violations));
        assertEquals(List.of("/aa"), violations.sorted().stream().map(Violation::pointer).toList());
    }

    @Test
    void namesOnlyPropertiesOfItsRecord() {
        assertThrows(IllegalStateException.class, () -> AlternativeRule.of(Unknown.class));
    }
}
