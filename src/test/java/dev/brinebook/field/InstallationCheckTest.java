// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.field;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.field.InstallationCheck.Outcome;
import dev.brinebook.field.InstallationCheck.Seen;
import dev.brinebook.field.InstallationCheck.Sign;
import dev.brinebook.softener.Readiness;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InstallationCheckTest {

    @ParameterizedTest
    @CsvSource({
            // salt tank, drain line, softer outlet, valve comes off, state of the bypass, outcome; practice of the trade
            "YES, YES, YES, YES, MET, CONVERTIBLE",
            "YES, YES, YES, YES, NOT_MET, CONVERTIBLE_AFTER_WORK",
            "YES, YES, YES, YES, CHECK_ON_SITE, CHECK_FIRST",
            "YES, NOT_CHECKED, YES, YES, NOT_MET, CHECK_FIRST",
            "YES, YES, YES, NO, MET, VALVE_STAYS",
            "YES, YES, NO, NO, MET, FIND_FAULT_FIRST",
            "NO, YES, YES, YES, MET, NOT_A_SOFTENER",
            "NOT_CHECKED, NO, NO, NO, NOT_MET, NOT_A_SOFTENER"})
    void decides(Seen salt, Seen drain, Seen softer, Seen valve, Readiness.State bypass, Outcome expected) {
        Map<Sign, Seen> signs = new EnumMap<>(Map.of(Sign.SALT_TANK, salt, Sign.DRAIN_LINE, drain, Sign.SOFTER_OUTLET, softer,
                Sign.VALVE_COMES_OFF, valve));
        assertEquals(expected, InstallationCheck.outcome(signs, List.of(new Readiness.Check(Readiness.Condition.DRAIN,
                Readiness.State.MET), new Readiness.Check(Readiness.Condition.BYPASS, bypass))));
    }
}
