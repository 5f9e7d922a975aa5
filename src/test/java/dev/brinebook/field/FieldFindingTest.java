// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.measurement.Reading;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.HardnessUnit;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FieldFindingTest {

    private static final double POUND = Exact.POUND_KILOGRAMS;
    private static final FieldKnown KNOWN = new FieldKnown(OptionalDouble.of(9 * POUND), true);

    private static Map<FieldFinding, OptionalDouble> found(Map<ReadingCode, Reading> readings) {
        return FieldFinding.of(FieldResultsTest.results(readings), KNOWN);
    }

    /** Of the invented softener only the tap and its freeboard, 48 % of the bed as of many a standard fill, are amiss. */
    @Test
    void aSoundSoftenerContradictsNothing() {
        assertEquals(List.of(FieldFinding.RAW_WATER_PASSES, FieldFinding.FREEBOARD_SMALL),
                List.copyOf(found(FieldResultsTest.invented()).keySet()));
    }

    @ParameterizedTest
    @CsvSource({
            // reading changed, its new value as a factor of the old one, finding; the pattern of the trade
            "SALT_BOUGHT, 1.5, SALT_USED_ELSEWHERE",
            "SALT_BOUGHT, 0.02, NO_SALT_USED",
            "BRINE_LEVEL_FALL, 0.4, WATER_LEFT_OVER",
            "BRINE_LEVEL_FALL, 1.6, OUTSIDE_WATER",
            "BRINE_DEGREES, 0.6, BRINE_WEAK",
            "BRINE_DEGREES, 0.6, DOSE_BELOW_SETTING",
            "REFILL_MINUTES, 1.6, WATER_LEFT_OVER",
            "OUTLET_HARDNESS, 40, OUTLET_HARD",
            "METER_CHECK_COUNT, 0.32, METER_COUNTS_TOO_LITTLE",
            "METER_CHECK_COUNT, 1.2, METER_COUNTS_TOO_MUCH",
            "DRAIN_SECONDS, 3, BACKWASH_WEAK",
            "DRAIN_SECONDS, 0.4, BACKWASH_LOSES_RESIN",
            "FREEBOARD, 1.8, RESIN_MISSING",
            "NAMEPLATE_RESIN, 0.6, RESIN_ABOVE_NAMEPLATE",
            "RUN_VOLUME, 0.5, CAPACITY_LOST",
            "RUN_VOLUME, 0.82, CAPACITY_REDUCED",
            "PRESSURE_DROP, 3, PRESSURE_LOSS_HIGH"})
    void findsWhatContradicts(ReadingCode reading, double factor, FieldFinding expected) {
        assertFalse(found(FieldResultsTest.invented()).containsKey(expected));
        Map<ReadingCode, Reading> changed = FieldResultsTest.invented();
        changed.computeIfPresent(reading, (code, old) -> old.shiftedTo(factor * old.value()));
        Map<FieldFinding, OptionalDouble> found = found(changed);
        assertTrue(found.containsKey(expected), found.toString());
        found.get(expected).ifPresent(z -> assertTrue(Math.abs(z) > 1, expected + " " + z));
    }

    /** 4 gpg at the tap and 0.5 at the outlet of raw 20: 0.18, some ten uncertainties from none; 1 gpg is within what drops tell. */
    @Test
    void oneDropMoreAtTheTapProvesNothing() {
        Map<ReadingCode, Reading> readings = FieldResultsTest.invented();
        readings.put(ReadingCode.TAP_HARDNESS, Reading.toStep(HardnessUnit.GPG.toBase(1), HardnessUnit.GPG.toBase(1)));
        assertFalse(found(readings).containsKey(FieldFinding.RAW_WATER_PASSES));
    }

    @Test
    void advisesWhatTellsMostForItsMinutes() {
        Map<ReadingCode, Reading> readings = FieldResultsTest.invented();
        readings.remove(ReadingCode.TAP_HARDNESS);
        List<NextMeasurement.Advice> advice = NextMeasurement.of(FieldResultsTest.results(readings));
        assertEquals(NextMeasurement.HARDNESS_TESTS, advice.get(0).measurement(), "5 minutes for a question that nobody looked at");
        assertTrue(advice.stream().allMatch(each -> each.spreadAfter() < each.spreadNow() && each.minutes() > 0));
        for (int i = 1; i < advice.size(); i++) {
            assertTrue(advice.get(i - 1).gainPerMinute() >= advice.get(i).gainPerMinute());
        }
    }

    /** Where salt is known by the refill alone, the mark of the bucket is most of what is not known: to weigh it is the next step. */
    @Test
    void advisesToWeighTheBucket() {
        Map<ReadingCode, Reading> readings = FieldResultsTest.invented();
        readings.remove(ReadingCode.SALT_BOUGHT);
        readings.remove(ReadingCode.BRINE_LEVEL_FALL);
        List<NextMeasurement> advice = NextMeasurement.of(FieldResultsTest.results(readings)).stream()
                .map(NextMeasurement.Advice::measurement).toList();
        assertEquals(NextMeasurement.WEIGH_BUCKET, advice.get(0), advice.toString());
        assertFalse(advice.contains(NextMeasurement.WEIGH_BUCKET_FOR_DRAIN), "known to 2 %");
    }

    @Test
    void holdsTheDoseAgainstTheSetting() {
        FieldResults results = FieldResultsTest.results(FieldResultsTest.invented());
        assertTrue(FieldFinding.of(results, new FieldKnown(OptionalDouble.of(8 * POUND), true))
                .get(FieldFinding.DOSE_ABOVE_SETTING).getAsDouble() > 2);
        assertFalse(FieldFinding.of(results, new FieldKnown(OptionalDouble.empty(), true)).containsKey(FieldFinding.DOSE_ABOVE_SETTING));
    }

    @Test
    void contradictionsLeaveAQuestionOpen() {
        Map<ReadingCode, Reading> readings = FieldResultsTest.invented();
        readings.remove(ReadingCode.SALT_BOUGHT);
        readings.computeIfPresent(ReadingCode.BRINE_LEVEL_FALL, (code, old) -> old.shiftedTo(0.3 * old.value()));
        FieldResults results = FieldResultsTest.results(readings);
        assertTrue(results.salt().orElseThrow().mean().isEmpty());
        assertEquals(0.35, FieldQuestion.SALT.spread(results), 0.01, "half of 9 and 2.7 over 9");
        assertEquals(NextMeasurement.SALT_BOOKS, NextMeasurement.of(results).get(0).measurement());
        assertTrue(results.capacityLeft().isEmpty(), "nobody knows the dose");
    }
}
