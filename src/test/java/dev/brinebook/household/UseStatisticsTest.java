// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.household.GammaFit.Verdict;
import dev.brinebook.source.Table;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Gamma fit, change point and trend, each against another tool and by hand. */
class UseStatisticsTest {

    private static double[] values(String text) {
        return Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }

    private static double[] series(String name) {
        return Table.read("/household/cross-series.csv", ',', 2).stream().filter(row -> row[0].equals(name)).findFirst()
                .map(row -> values(row[1])).orElseThrow();
    }

    private static double compute(String quantity, double[] x) {
        int[] days = IntStream.range(0, x.length).toArray();
        return switch (quantity) {
            case "shape" -> GammaFit.shape(x).value();
            case "cvStandardError" -> GammaFit.cvStandardError(GammaFit.shape(x).value(), x.length);
            case "andersonDarling" -> GammaFit.andersonDarling(x, GammaFit.shape(x).value());
            case "pettittK" -> ChangePoint.of(x).statistic();
            case "pettittLastBefore" -> ChangePoint.of(x).lastBefore();
            case "pettittProbability" -> ChangePoint.of(x).probability();
            case "kendallS" -> Trend.of(days, x).statistic();
            case "trendProbability" -> Trend.of(days, x).probability();
            case "slope" -> Trend.of(days, x).slopePerDay();
            default -> throw new IllegalArgumentException(quantity);
        };
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/household/cross-use-statistics.csv", useHeadersInDisplayName = true)
    void agreesWithAnotherLibrary(String series, String quantity, String expected, String tolerance, String source,
                                  String why) {
        Printed.assertAgrees(expected, tolerance, compute(quantity, series(series)));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/household/worked-use-statistics.csv", useHeadersInDisplayName = true)
    void agreesWithArithmetic(String values, String quantity, String expected, String tolerance, String source, String why) {
        Printed.assertAgrees(expected, tolerance, compute(quantity, values(values)));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/household/cross-anderson-darling.csv", useHeadersInDisplayName = true)
    void thePointsAgreeWithSimulation(double shape, int percent, String expected, String tolerance, String source, String why) {
        Printed.assertAgrees(expected, tolerance, GammaFit.point(shape, percent == 5 ? 1 : 2));
    }

    @Test
    void theTablesAreWhole() {
        assertEquals(63, Rows.in("/household/cross-use-statistics.csv"));
        assertEquals(10, Rows.in("/household/worked-use-statistics.csv"));
        assertEquals(20, Rows.in("/household/cross-anderson-darling.csv"));
    }

    @Test
    void saysHowWellGammaFits() {
        assertEquals(Verdict.GOOD, GammaFit.verdict(0.5, 5));
        assertEquals(Verdict.DOUBTFUL, GammaFit.verdict(0.9, 5));
        assertEquals(Verdict.POOR, GammaFit.verdict(1.1, 5));
        assertEquals(0.828, GammaFit.point(0.1, 1), "held at the last row");
        assertEquals(0.752, GammaFit.point(1e12, 1), "and at the first");
        assertEquals((0.786 + 0.768) / 2, GammaFit.point(4 / 3.0, 1), 1e-12, "1 / shape is 0.75, midway between 1 and 1/2");
        assertEquals(0.758 + 0.25 * (0.762 - 0.758), GammaFit.point(1 / (0.2 + 0.25 * (1 / 3.0 - 0.2)), 1), 1e-12);
        double[] twoLevels = IntStream.range(0, 100).mapToDouble(i -> i % 2 == 0 ? 100 + i % 7 : 300 + i % 5).toArray();
        double shape = GammaFit.shape(twoLevels).value();
        assertEquals(Verdict.POOR, GammaFit.verdict(GammaFit.andersonDarling(twoLevels, shape), shape));
    }

    @Test
    void daysThatDoNotDifferHaveNoShape() {
        assertEquals(NoResultReason.DAYS_DO_NOT_DIFFER, GammaFit.shape(new double[] {5, 5, 5}).reason());
        assertThrows(IllegalArgumentException.class, () -> GammaFit.shape(new double[] {5, 0}));
    }

    /** Very even days: the normal limit must join the function without a step, 1 / CV² being the shape. */
    @Test
    void evenDaysAreFittedByTheLimit() {
        for (double spread : new double[] {1e-4, 3e-3, 0.0099, 0.0101}) {
            double[] x = IntStream.range(0, 200).mapToDouble(i -> 1 + spread * Math.sqrt(2) * Math.sin(i)).toArray();
            double shape = GammaFit.shape(x).value();
            assertEquals(1 / (spread * spread), shape, 0.01 * shape);
            assertTrue(Double.isFinite(GammaFit.andersonDarling(x, shape)));
            assertEquals(spread / Math.sqrt(2 * 200), GammaFit.cvStandardError(shape, 200), 0.01 * spread,
                    "the standard error of a standard deviation, for a narrow distribution");
        }
        double[] x = IntStream.range(0, 200).mapToDouble(i -> 1 + 0.01 * Math.sqrt(2) * Math.sin(i)).toArray();
        double byTheFunction = GammaFit.andersonDarling(x, 1e4);
        assertEquals(byTheFunction, GammaFit.andersonDarling(x, 1e4 + 1e-6), 2e-5 * byTheFunction);
        assertEquals(Math.log(9999.0) - org.hipparchus.special.Gamma.digamma(9999.0), GammaFit.logLessDigamma(10001), 1.1e-8);
    }

    /** A change inserted at random is found within a few days of its place, and none where there is none. */
    @Test
    void findsAStepOnlyWhereThereIsOne() {
        int found = 0;
        int falselyFound = 0;
        for (long seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            double[] even = random.doubles(100, 100, 300).toArray();
            double[] stepped = IntStream.range(0, 100).mapToDouble(i -> even[i] + (i < 60 ? 0 : 150)).toArray();
            ChangePoint change = ChangePoint.of(stepped);
            found += change.matters() && Math.abs(change.lastBefore() - 59) <= 4 ? 1 : 0;
            falselyFound += ChangePoint.of(even).matters() ? 1 : 0;
        }
        assertTrue(found >= 190, "found " + found);
        assertTrue(falselyFound <= 4, "one in a hundred is allowed, found " + falselyFound);
        assertFalse(new ChangePoint(5, 100, 0.001, 100, 105).matters(), "five percent is of no use");
        assertEquals(0, new ChangePoint(1, 4, 0.5, 10, 20).squaresLeft(new double[] {10, 10, 20, 20}), "values of its own");
    }
}
