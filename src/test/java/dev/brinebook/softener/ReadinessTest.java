// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.softener.Readiness.Condition;
import dev.brinebook.softener.Readiness.Site;
import dev.brinebook.softener.Readiness.State;
import dev.brinebook.text.Message;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadinessTest {

    private static Site site(OptionalDouble drainFlow, Optional<Boolean> seen, OptionalDouble bore, OptionalDouble years) {
        return new Site(seen, drainFlow, seen, bore, seen, seen, seen, seen, seen, years);
    }

    private static State state(Condition condition, Site site) {
        return Readiness.of(site, 13, 20).stream().filter(check -> check.condition() == condition).findFirst()
                .orElseThrow().state();
    }

    @Test
    void whatNobodyLookedAtIsToCheckOnSite() {
        var unseen = Readiness.of(site(OptionalDouble.empty(), Optional.empty(), OptionalDouble.empty(),
                OptionalDouble.empty()), 13, 20);
        assertEquals(Condition.values().length, unseen.size());
        assertTrue(unseen.stream().allMatch(check -> check.state() == State.CHECK_ON_SITE));
    }

    @Test
    void whatWasSeenIsMetOrNot() {
        assertTrue(Readiness.of(site(OptionalDouble.of(15), Optional.of(true), OptionalDouble.of(0.025),
                OptionalDouble.of(5)), 13, 20).stream().allMatch(check -> check.state() == State.MET));
        assertTrue(Readiness.of(site(OptionalDouble.of(10), Optional.of(false), OptionalDouble.of(0.01),
                OptionalDouble.of(20)), 13, 20).stream().allMatch(check -> check.state() == State.NOT_MET));
        for (Condition condition : Condition.values()) {
            for (Message text : List.of(condition.wanted(), condition.whenNotMet())) {
                assertTrue(text.toString().matches("[A-Z].*[^.]\\."), text + " is a sentence with one full stop");
            }
        }
    }

    @ParameterizedTest(name = "resin of {0} years, good: {1}")
    @CsvSource({"5, true, MET", "10, true, MET", "12, true, CHECK_ON_SITE", "15, true, CHECK_ON_SITE", "16, true, NOT_MET",
        "5, , CHECK_ON_SITE", "5, false, NOT_MET", ", true, CHECK_ON_SITE"})
    void resinLastsTenToFifteenYears(Double years, Boolean good, State expected) {
        Site site = site(OptionalDouble.empty(), Optional.ofNullable(good), OptionalDouble.empty(),
                years == null ? OptionalDouble.empty() : OptionalDouble.of(years));
        assertEquals(expected, state(Condition.RESIN, site), "common practice");
    }

    @Test
    void aDrainTooSmallForTheBackwashIsNotMet() {
        assertEquals(State.MET, state(Condition.DRAIN, site(OptionalDouble.of(13), Optional.of(true),
                OptionalDouble.empty(), OptionalDouble.empty())));
        assertEquals(State.NOT_MET, state(Condition.DRAIN, site(OptionalDouble.of(12.9), Optional.of(true),
                OptionalDouble.empty(), OptionalDouble.empty())));
    }

    /** Only what is not met costs anything; what has no price is named, not counted as nothing. By hand. */
    @ParameterizedTest(name = "seen {0}, bypass {1}, outlet {2}: {3}, {4} without a price")
    @CsvSource({"true, 60, 180, 0, 0", ", 60, 180, 0, 0", "false, 60, 180, 240, 6", "false, 60, , 60, 7", "false, , , 0, 8"})
    void addsUpWhatIsNotMet(Boolean seen, Double bypass, Double outlet, double priced, int unpriced) {
        Map<Condition, Double> prices = new EnumMap<>(Condition.class);
        if (bypass != null) {
            prices.put(Condition.BYPASS, bypass);
        }
        if (outlet != null) {
            prices.put(Condition.POWER_WITHIN_REACH, outlet);
        }
        OptionalDouble bore = seen == null ? OptionalDouble.empty() : OptionalDouble.of(seen ? 0.05 : 0.005);
        Readiness.Cost cost = Readiness.cost(Readiness.of(site(OptionalDouble.empty(), Optional.ofNullable(seen), bore,
                OptionalDouble.of(5)), 13, 20), prices);
        assertEquals(priced, cost.priced());
        assertEquals(unpriced, cost.unpriced().size());
    }

    @Test
    void measuresTheVelocityInTheBore() {
        double gpm = 3.785411784;
        assertEquals(1.245, Readiness.velocityMetresPerSecond(10 * gpm, 0.0254), 0.001,
                "10 gpm in a 1 in bore: 0.4085 x 10 / 1 ft/s, Crane Technical Paper 410 (from memory)");
    }
}
