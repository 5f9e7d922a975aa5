// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Rows;
import dev.brinebook.water.WaterAnalysis.Supply;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NextTestTest {

    private static final int REPORTS = 200;
    private static final int WORLDS = 500;
    /** Half a step of the values tried, and what 500 worlds scatter in strata, for each end of a range. */
    private static final double RESOLUTION = 0.015;

    /** What one may expect of households: the test that matters most for each. Common practice. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            PRIVATE_WELL, HARDNESS, nothing was tested: the size of everything hangs on it
            PUBLIC_SUPPLY, HARDNESS, as in a well
            """)
    void ordersHardnessFirstWhereNothingWasTested(Supply supply, Parameter first, String why) {
        assertEquals(first, NextTest.ranked(new Sample(Map.of()), supply, Set.of()).get(0).parameter(), why);
    }

    @Test
    void ordersWhatIsInDoubt() {
        Sample well = WaterSampleTest.of(Parameter.HARDNESS, 320, Parameter.IRON, 1.6, Parameter.MANGANESE, 0.02, Parameter.PH, 7.4);
        List<NextTest> ranked = NextTest.ranked(well, Supply.PRIVATE_WELL, Set.of());
        assertEquals(Parameter.IRON_DISSOLVED, ranked.get(0).parameter(), "whether the iron is dissolved decides how it is treated");
        assertTrue(ranked.get(0).changesShare() > 0.4);
        assertEquals(NextTest.Bottle.FILTERED, ranked.get(0).order().bottle());
        assertTrue(ranked.stream().noneMatch(test -> test.parameter() == Parameter.HARDNESS && test.changesShare() > 0.1),
                "hardness is known to 0.01 mg/L");
        Sample strip = WaterSampleTest.of(Parameter.IRON, 0.05).with(Parameter.HARDNESS, new Estimate(276, 35));
        assertEquals(Parameter.HARDNESS, NextTest.ranked(strip, Supply.PUBLIC_SUPPLY, Set.of()).get(0).parameter(),
                "a strip cannot size a softener");
        assertTrue(NextTest.ranked(strip, Supply.PUBLIC_SUPPLY, Set.of()).get(0).tested());
    }

    /** A test that answers a reason comes first, unless it was made. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            INFANT, COLIFORM
            LOW_SODIUM_DIET, SODIUM
            ROTTEN_EGG_SMELL, HYDROGEN_SULFIDE
            YELLOW_COLOUR, COLOUR
            RED_STAINS, PH
            SCALE, ALKALINITY
            """)
    void ordersFirstWhatAnswersAReason(TestReason reason, Parameter first) {
        Sample well = WaterSampleTest.of(Parameter.HARDNESS, 320, Parameter.IRON, 0.02, Parameter.IRON_DISSOLVED, 0.02,
                reason == TestReason.SCALE ? Parameter.PH : Parameter.TEMPERATURE, 7.4);
        List<NextTest> ranked = NextTest.ranked(well, Supply.PRIVATE_WELL, Set.of(reason));
        assertEquals(first, ranked.get(0).parameter());
        List<NextTest> asked = ranked.stream().filter(NextTest::asked).toList();
        assertEquals(asked, ranked.subList(0, asked.size()));
        assertTrue(asked.stream().allMatch(NextTest::isWorthwhile));
        assertTrue(asked.stream().noneMatch(NextTest::tested));
    }

    @Test
    void everyReasonHasTestsThatCanBeOrdered() {
        for (TestReason reason : TestReason.values()) {
            assertEquals(reason.tests(), NextTest.ranked(new Sample(Map.of(Parameter.IRON, new Estimate(1, 0.1))), Supply.PUBLIC_SUPPLY,
                    Set.of(reason)).stream().map(NextTest::parameter).filter(reason.tests()::contains)
                    .collect(Collectors.toSet()), reason.name());
        }
    }

    @Test
    void tablesAreWhole() {
        assertEquals(38, Rows.in("/water/report-priors.csv"));
        assertEquals(23, Rows.in("/water/report-tests.csv"));
        assertEquals(19, Prior.untested(Supply.PRIVATE_WELL).size());
        assertEquals(19, Prior.untested(Supply.PUBLIC_SUPPLY).size());
    }

    /** Median and ninth decile come back; the share without any is none. */
    @Test
    void spreadsAsItsTableSays() {
        Prior iron = Prior.untested(Supply.PRIVATE_WELL).get(Parameter.IRON);
        assertEquals(0, iron.quantile(0.19));
        assertEquals(0.12, iron.quantile(0.2 + 0.8 * 0.5), 1e-9);
        assertEquals(1.5, iron.quantile(0.2 + 0.8 * 0.9), 1e-9);
        assertEquals(8.0, Prior.untested(Supply.PRIVATE_WELL).get(Parameter.PH).quantile(0.9), 1e-9);
        double stains = 0;
        for (int i = 0; i < 1000; i++) {
            stains += iron.quantile((i + 0.5) / 1000) > 1 ? 0.001 : 0;
        }
        assertTrue(stains > 0.1 && stains < 0.2, "about one well in six has much iron: " + stains);
        assertEquals(0, Prior.tested(new Estimate(0.1, 1)).quantile(0.01), "never below zero");
    }

    /**
     * By brute force: of 200 random incomplete reports each is looked at in 500 random worlds, where everything that is not known has a
     * true value. The first test named must be the one whose true value changes the verdict in most worlds, within what they resolve.
     */
    @Test
    void namesFirstWhatChangesTheVerdictMostOften() {
        long seed = 20_261_130;
        Random random = new Random(seed);
        int same = 0;
        for (int i = 0; i < REPORTS; i++) {
            Supply supply = random.nextBoolean() ? Supply.PRIVATE_WELL : Supply.PUBLIC_SUPPLY;
            Sample report = incomplete(supply, random);
            Map<Parameter, Integer> changes = bruteForce(report, supply, random);
            Parameter first = NextTest.ranked(report, supply, Set.of()).get(0).parameter();
            int most = Collections.max(changes.values());
            assertTrue(changes.get(first) >= most - RESOLUTION * WORLDS,
                    "seed " + seed + ", report " + i + ": " + first + " of " + changes + " for " + report);
            same += changes.get(first) == most ? 1 : 0;
        }
        assertTrue(same >= 0.9 * REPORTS, "exactly the same in " + same);
    }

    private static Sample incomplete(Supply supply, Random random) {
        Map<Parameter, Estimate> values = new EnumMap<>(Parameter.class);
        Prior.untested(supply).forEach((parameter, prior) -> {
            if (random.nextBoolean()) {
                double value = Math.min(prior.quantile(0.001 + 0.998 * random.nextDouble()), parameter.highest());
                TestMethod method = TestMethod.values()[random.nextInt(TestMethod.values().length)];
                values.put(parameter, new Estimate(value, method.standardUncertainty(parameter, value, 0)));
            }
        });
        return new Sample(values);
    }

    private static Map<Parameter, Integer> bruteForce(Sample report, Supply supply, Random random) {
        Sample known = NextTest.withHardness(report, supply);
        ReportAdvice now = ReportAdvice.of(known, supply);
        Map<Parameter, List<Double>> truths = new EnumMap<>(Parameter.class);
        for (NextTest test : NextTest.ranked(report, supply, Set.of())) {
            Prior doubt = NextTest.doubt(test.parameter(), report, supply).orElseThrow();
            List<Double> drawn = new ArrayList<>();
            for (int world = 0; world < WORLDS; world++) {
                drawn.add(doubt.quantile((world + random.nextDouble()) / WORLDS));
            }
            Collections.shuffle(drawn, random);
            truths.put(test.parameter(), drawn);
        }
        Map<Parameter, Integer> changes = new EnumMap<>(Parameter.class);
        truths.keySet().forEach(parameter -> changes.put(parameter, 0));
        for (int world = 0; world < WORLDS; world++) {
            for (Map.Entry<Parameter, List<Double>> truth : truths.entrySet()) {
                Sample found = NextTest.found(known, truth.getKey(), truth.getValue().get(world));
                changes.merge(truth.getKey(), ReportAdvice.of(found, supply).equals(now) ? 0 : 1, Integer::sum);
            }
        }
        return changes;
    }
}
