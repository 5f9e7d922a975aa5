// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The fit on the days of 45 real homes, each judged by the 120 days that follow those that it saw. Source: [DAIAD]. */
class HouseholdFitHomesTest {

    private static final List<RealHome> HOMES = RealHome.all();
    /** A fit takes milliseconds, of which most are its quantiles. */
    private static final Map<String, List<Case>> CASES = new ConcurrentHashMap<>();
    private static final Map<String, Double> LATER = new ConcurrentHashMap<>();
    private static final int FIRST = 168;
    private static final int STEP = 30;
    private static final int AHEAD = 120;

    /** A fit to some days of a home, and the logarithm of the mean occupied day of the 120 days after them. */
    private record Case(HouseholdFit fit, double logLater, double logByPeople) {

        double own() {
            return Math.log(fit.ownMeanLitres()) - logLater;
        }

        double combined() {
            return Math.log(fit.meanLitres()) - logLater;
        }

        double people() {
            return logByPeople - logLater;
        }

        double inStandardErrors() {
            return combined() / fit.model().change().levelSpread();
        }
    }

    /** What people alone say in this trial: m_p = 150.3 p^0.508 L. */
    private static double litresOfPeople(RealHome home) {
        return 150.3 * Math.pow(home.people(), 0.508);
    }

    /** Windows in which somebody was there on half of the days at least: nobody reads a meter for three days while away. */
    private static List<Case> cases(int days, boolean withPeople) {
        return CASES.computeIfAbsent(days + " " + withPeople, key -> newCases(days, withPeople, 0.5));
    }

    private static List<Case> newCases(int days, boolean withPeople, double leastOccupiedShare) {
        List<Case> cases = new ArrayList<>();
        for (RealHome home : HOMES) {
            double least = home.absenceLitres();
            for (int at = FIRST; at + AHEAD <= home.days().known().length; at += STEP) {
                MeteredDays seen = home.known(at - days, at);
                long occupied = Arrays.stream(seen.known()).filter(i -> seen.litres(i) >= least).count();
                if (occupied >= leastOccupiedShare * days) {
                    MeteredDays after = home.known(at, at + AHEAD);
                    double later = LATER.computeIfAbsent(home.name() + " " + at, key -> HouseholdFit.of(after, OptionalDouble.empty())
                            .ownMeanLitres());
                    HouseholdFit fit = HouseholdFit.of(seen, withPeople ? OptionalDouble.of(litresOfPeople(home))
                            : OptionalDouble.empty());
                    cases.add(new Case(fit, Math.log(later), Math.log(litresOfPeople(home))));
                }
            }
        }
        return cases;
    }

    private static double rms(List<Case> cases, ToDoubleFunction<Case> of) {
        return Math.sqrt(cases.stream().mapToDouble(of).map(x -> x * x).average().orElseThrow());
    }

    @Test
    void theTableIsWhole() {
        assertEquals(45, HOMES.size());
        assertEquals(17_243, HOMES.stream().mapToInt(home -> home.days().known().length).sum());
    }

    /**
     * Root mean square of the logarithm of the forecast mean over the mean of the next 120 days. Expected: the study that the
     * method is from, 67 homes of the trial of which these are 45. Tolerance 20 %: such a root from 45 homes has a standard
     * error of 1 / √(2 × 45) = 11 %, and the absence limit is taken from the days seen alone.
     */
    @ParameterizedTest(name = "{0} days")
    @CsvSource({"3, 0.30, 0.39, 0.245", "28, 0.24, 0.38, 0.209", "168, 0.175, 0.38, 0.167"})
    void forecastsTheMeanAsTheStudyDid(int days, double own, double people, double combined) {
        List<Case> cases = cases(days, true);
        assertTrue(cases.size() > 150, "only " + cases.size());
        assertEquals(own, rms(cases, Case::own), 0.2 * own, "own");
        assertEquals(people, rms(cases, Case::people), 0.2 * people, "people");
        assertEquals(combined, rms(cases, Case::combined), 0.2 * combined, "combined");
    }

    /**
     * The spread that is stated is the one that is met: errors over √P have a root mean square of 1, in the study 0.95 to 1.23.
     * Days and people together are never worse than either.
     */
    @ParameterizedTest(name = "{0} days")
    @ValueSource(ints = {1, 3, 28, 168})
    void isAsSureAsItSays(int days) {
        List<Case> both = cases(days, true);
        List<Case> alone = cases(days, false);
        assertEquals(1, rms(both, Case::inStandardErrors), 0.2, "with people");
        assertEquals(1, rms(alone, Case::inStandardErrors), 0.2, "without");
        assertTrue(rms(both, Case::combined) < Math.min(rms(both, Case::people), rms(both, Case::own)), "both are better");
        assertEquals(rms(alone, Case::own), rms(alone, Case::combined), 1e-12, "without people the days speak alone");
    }

    /** Whenever the days were read, over holidays too: with the days the forecast is better than people alone, as in the study. */
    @ParameterizedTest(name = "{0} days")
    @ValueSource(ints = {1, 3, 28})
    void isNeverWorseThanPeopleAlone(int days) {
        List<Case> any = newCases(days, true, 0);
        assertTrue(rms(any, Case::combined) < 0.9 * rms(any, Case::people), rms(any, Case::combined) + "");
    }

    /** Two days of 6,000 L in the year of every home are found, and move what is expected of it little. */
    @Test
    void leakDaysAreFoundAndMoveLittle() {
        for (RealHome home : HOMES) {
            int[] known = home.days().known();
            List<Integer> leaks = List.of(known[known.length / 3], known[known.length / 2]);
            MeteredDays with = MeteredDays.of(home.days().firstDate(), IntStream.range(0, home.days().size())
                    .mapToObj(i -> !home.days().isKnown(i) ? OptionalDouble.empty()
                            : OptionalDouble.of(leaks.contains(i) ? 6_000 : home.days().litres(i))).toList());
            HouseholdFit before = HouseholdFit.of(home.days(), OptionalDouble.empty());
            HouseholdFit after = HouseholdFit.of(with, OptionalDouble.empty());
            for (int i : leaks) {
                HighDay day = after.highDays().stream().filter(high -> high.date().equals(with.dateOf(i))).findFirst().orElseThrow();
                assertEquals(6_000, day.litres(), home.name());
                assertEquals(6_000 - day.capLitres(), day.aboveLitres(), 1e-9, home.name());
                assertEquals(4 * before.ownMeanLitres(), day.capLitres(), before.ownMeanLitres(), home.name() + ": four medians");
            }
            assertTrue(after.highDays().size() - before.highDays().size() <= 2, home.name());
            assertEquals(1, after.meanLitres() / before.meanLitres(), 0.035, home.name() + ": 2 x 4 of 250 days or more");
            assertEquals(1, after.cv() / before.cv(), 0.3, home.name() + ": CV² rises by at most 2 x 3² / 250");
        }
    }
}
