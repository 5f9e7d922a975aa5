// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import static dev.brinebook.household.MeteredDaysTest.days;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.guard.NoResultReason;
import java.time.LocalDate;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What a measured series says of a household, against series whose truth is known. */
class UseEstimateTest {

    private static final LocalDate MONDAY = LocalDate.of(2025, 1, 6);

    /** there there empty empty there ? there empty: leaves 2 of 3, returns 1 of 2; the pair with a gap does not count. */
    @Test
    void presenceIsCountedFromDayToDay() {
        Presence presence = Presence.of(days(MONDAY, 100, 90, 0, 2, 110, Double.NaN, 80, 1));
        assertArrayEquals(new int[] {0, 1, 4, 6}, presence.occupied());
        assertEquals(3, presence.emptyDays());
        assertEquals(2 / 3.0, presence.leave().value());
        assertEquals(1 / 2.0, presence.comeBack().value());
        assertEquals(3 / 7.0, presence.emptyShare());
    }

    @Test
    void presenceKnowsWhatItHasNotSeen() {
        assertEquals(NoResultReason.NO_SUCH_DAY_FOLLOWED, Presence.of(days(MONDAY, 5, 5)).comeBack().reason());
        assertEquals(NoResultReason.NO_SUCH_DAY_FOLLOWED, Presence.of(days(MONDAY, 5)).leave().reason());
        UseEstimate dry = UseEstimate.of(days(MONDAY, 0, 0, 0));
        assertEquals(3, dry.presence().emptyDays());
        assertEquals(NoResultReason.NOBODY_THERE, dry.shape().reason());
        assertEquals(0, dry.occupiedCv());
        assertTrue(dry.drift(days(MONDAY, 0, 0, 0)).isEmpty());
    }

    @Test
    void aShortSeriesHasNoWeekdaysAndNoVerdict() {
        UseEstimate three = UseEstimate.of(days(MONDAY, 100, 200, 300));
        assertEquals(200, three.occupiedMeanLitres());
        assertTrue(three.weekdayFactors().isEmpty() && three.fit().isEmpty() && three.change().isEmpty());
        assertEquals(1, three.weekendRatio());
    }

    /** Typical days are gamma quantiles of a known CV about known weekday means: a year of them gives both back. */
    @Test
    void aTypicalYearGivesItsOwnNumbersBack() {
        for (double cv : new double[] {0.2, 0.45, 0.6}) {
            WeekdayMeans means = WeekdayMeans.ofWeek(400, 1.3);
            Days year = DayVariation.ofCv(cv).typicalDays(MONDAY, 364, means, 5);
            MeteredDays days = days(MONDAY, IntStream.range(0, 364).mapToDouble(year::useLitres).toArray());
            UseEstimate estimate = UseEstimate.of(days);
            double error = GammaFit.cvStandardError(estimate.shape().value(), estimate.presence().occupiedDays());
            assertEquals(400, estimate.occupiedMeanLitres(), 2, "the year sums to its means");
            assertEquals(cv, estimate.occupiedCv(), 3 * error);
            assertEquals(1.3, estimate.weekendRatio(), 0.25);
            assertEquals(7, estimate.weekdayFactors().orElseThrow().stream().mapToDouble(f -> f).sum(), 1e-9);
            assertEquals(GammaFit.Verdict.GOOD,
                    GammaFit.verdict(estimate.fit().orElseThrow(), estimate.shape().value()), "CV " + cv);
        }
    }

    @Test
    void aStepIsReportedAsAStepAndADriftAsADrift() {
        for (long seed = 1; seed <= 20; seed++) {
            double[] noise = new Random(seed).doubles(200, -30, 30).toArray();
            MeteredDays stepped = days(MONDAY, IntStream.range(0, 200)
                    .mapToDouble(i -> (i < 120 ? 300 : 420) + noise[i]).toArray());
            UseEstimate step = UseEstimate.of(stepped);
            assertEquals(119, step.step(stepped).orElseThrow().lastBefore(), 3, "seed " + seed);
            assertTrue(step.drift(stepped).isEmpty());
            MeteredDays drifting = days(MONDAY, IntStream.range(0, 200).mapToDouble(i -> 300 + 0.8 * i + noise[i]).toArray());
            UseEstimate drift = UseEstimate.of(drifting);
            assertEquals(0.8, drift.drift(drifting).orElseThrow().slopePerDay(), 0.1, "seed " + seed);
            assertFalse(drift.step(drifting).isPresent());
        }
    }

    /** Days without scatter: 7 / (5 + 2 r) on five days and r times as much on two. */
    @Test
    void givesTheWeekendRatioOfEvenDaysExactly() {
        Days year = DayVariation.ofCv(0).typicalDays(MONDAY, 364, WeekdayMeans.ofWeek(400, 1.3), 1);
        UseEstimate even = UseEstimate.of(days(MONDAY, IntStream.range(0, 364).mapToDouble(year::useLitres).toArray()));
        assertEquals(1.3, even.weekendRatio(), 1e-9);
    }

    /** A drift that is certain but adds up to 20 L of 300, less than a change that matters; and days that only scatter. */
    @Test
    void reportsNoDriftThatDoesNotMatter() {
        MeteredDays little = days(MONDAY, IntStream.range(0, 200).mapToDouble(i -> 300 + 0.1 * i).toArray());
        assertTrue(UseEstimate.of(little).drift(little).isEmpty());
        MeteredDays late = days(MONDAY, IntStream.range(0, 400).mapToDouble(i -> i < 200 ? 0 : 300 + 0.1 * (i - 200)).toArray());
        assertTrue(UseEstimate.of(late).drift(late).isEmpty(), "only days with somebody there count");
        double[] noise = new Random(3).doubles(200, 0, 600).toArray();
        MeteredDays scattered = days(MONDAY, noise);
        assertTrue(UseEstimate.of(scattered).drift(scattered).isEmpty());
    }
}
