// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.field;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.field.BrineStrength;
import dev.brinebook.field.BrineTankShape;
import dev.brinebook.field.TankBottom;
import dev.brinebook.http.TestServer;
import dev.brinebook.measurement.Instrument;
import dev.brinebook.operation.assessment.Assess;
import dev.brinebook.operation.assessment.AssessmentAnswer;
import dev.brinebook.operation.assessment.AssessmentRequest;
import dev.brinebook.operation.assessment.SavingInterval;
import dev.brinebook.quantity.Exact;
import dev.brinebook.request.field.FieldMeasurementsRequest;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.resin.Salt;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * An invented softener, measured many times with instruments that are off by what is stated of them, and each time sent to the
 * assessment. Of intervals of 95 %, 93 to 97 of 100 must hold the truth.
 */
class FieldRoundTripTest {

    private static final int TRIALS = 100;
    private static final double GALLON = Exact.US_GALLON_LITRES;
    private static final double INCH = Exact.INCH_METRES;
    private static final double POUND = Exact.POUND_KILOGRAMS;
    private static final double DIAMETER = 9.6 * INCH;
    private static final double HEIGHT = 54 * INCH;
    private static final double FREEBOARD = 17.4 * INCH;
    private static final double RESIN_LITRES = TankBottom.ELLIPTICAL.resinLitres(DIAMETER, HEIGHT - FREEBOARD, 0);
    private static final double REFILL_LITRES_PER_MINUTE = 0.5 * GALLON;
    private static final double REFILL_MINUTES = 10;
    private static final double SALT_KILOGRAMS = REFILL_LITRES_PER_MINUTE * REFILL_MINUTES
            * BrineStrength.saltPerWaterKilogramsPerLitre(Salt.SODIUM_CHLORIDE, 100, BrineStrength.SCALE_CELSIUS);
    private static final double BRINE_TANK_WIDTH = 18 * INCH;
    private static final double VOIDS = 0.42;
    private static final double LEVEL_FALL = SALT_KILOGRAMS
            / BrineStrength.saltPerBrineKilogramsPerLitre(Salt.SODIUM_CHLORIDE, 100, BrineStrength.SCALE_CELSIUS)
            / BrineTankShape.ROUND.litres(BRINE_TANK_WIDTH, 0, VOIDS, 1, 1);
    private static final int REGENERATIONS = 40;
    private static final List<Integer> PRIMES = List.of(2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47);
    private static final String CASE = """
            {"water": {"hardness": {"value": 20, "unit": "gpg"}, "hardnessUncertainty": {"value": 0, "unit": "gpg"}},
             "household": {"people": 4, "useUncertainty": 0}, "retrofit": {"cost": {"value": 400, "unit": "USD"}},
             "preferences": {"capacityMethod": "table"}, "softener": %s}""";
    private static final String SOFTENER = """
            {"resinVolume": {"value": %s, "unit": "L"}, "saltPerRegeneration": {"value": %s, "unit": "kg"},
             "tankDiameter": {"value": %s, "unit": "m"}, "tankHeight": {"value": %s, "unit": "m"}, "control": {"kind": "clock",
             "everyDays": 4}}""";
    private static final String TRUE_SOFTENER = String.format(Locale.ROOT, SOFTENER, RESIN_LITRES, SALT_KILOGRAMS, DIAMETER, HEIGHT);
    /** Name plates say 1.25 ft³ and the dose of a rule of thumb. */
    private static final String BELIEVED_SOFTENER = String.format(Locale.ROOT, SOFTENER, 35.4, 5.6, DIAMETER, HEIGHT);

    @Test
    void intervalsHoldTheTruth() {
        double saving = assessed(TestServer.read(CASE.formatted(TRUE_SOFTENER), AssessmentRequest.class).softener()).retrofit().payback()
                .firstYearSaving().total().value().doubleValue();
        int resinHeld = 0;
        int saltHeld = 0;
        int savingHeld = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            FieldMeasurementsAnswer reduced = ReduceFieldMeasurements.OPERATION.answer(TestServer.read(readings(trial),
                    FieldMeasurementsRequest.class));
            SavingInterval interval = assessed(reduced.softener()).savingInterval();
            MeasuredValue salt = reduced.salt().combined().mean();
            resinHeld += holds(reduced.resin().byGeometry().low(), reduced.resin().byGeometry().high(), RESIN_LITRES);
            saltHeld += salt == null ? 0 : holds(salt.low(), salt.high(), SALT_KILOGRAMS);
            savingHeld += salt == null ? 0 : holds(interval.low().value(), interval.high().value(), saving);
        }
        assertShare(resinHeld, "resin");
        assertShare(saltHeld, "salt");
        assertShare(savingHeld, "saving");
    }

    private static AssessmentAnswer assessed(SoftenerRequest softener) {
        AssessmentRequest request = TestServer.read(CASE.formatted(TRUE_SOFTENER), AssessmentRequest.class);
        return Assess.OPERATION.answer(new AssessmentRequest(request.water(), request.household(), softener, request.retrofit(), null, null,
                request.preferences(), null, null, null));
    }

    private static void assertShare(int held, String what) {
        assertTrue(held >= 0.93 * TRIALS && held <= 0.97 * TRIALS, what + ": " + held + " of " + TRIALS);
    }

    private static int holds(BigDecimal low, BigDecimal high, double truth) {
        return truth >= low.doubleValue() && truth <= high.doubleValue() ? 1 : 0;
    }

    /** Errors of a trial from −1 to 1, spread evenly over the trials: multiples of the roots of primes. Source: H. Weyl, 1916. */
    private static double[] errors(int trial) {
        return PRIMES.stream().mapToDouble(prime -> 2 * ((trial + 0.5) * Math.sqrt(prime) % 1) - 1).toArray();
    }

    /** What the instruments show of the softener, each off by its half-width times an error. */
    private static String readings(int trial) {
        double[] e = errors(trial);
        double dip = Instrument.DIP_ROD.halfWidth(1);
        double tape = Instrument.TAPE_IN_BRINE_TANK.halfWidth(1);
        double watch = Instrument.STOPWATCH.halfWidth(1);
        double seconds = 60 * GALLON / REFILL_LITRES_PER_MINUTE;
        double slump = 1 + Instrument.SALT_SLUMP.halfWidth(1) * e[14];
        return String.format(Locale.ROOT, """
                {"units": "metric", "seed": %s, "softener": %s,
                 "resinTank": {"innerDiameter": {"value": %s, "unit": "m"}, "height": {"value": %s, "unit": "m"},
                   "freeboard": {"value": %s, "unit": "m"}},
                 "refill": {"volume": {"value": %s, "unit": "L"}, "seconds": [%s]}, "refillMinutes": %s, "brine": {"degrees": %s},
                 "brineTank": {"width": {"value": %s, "unit": "m"}, "levelBefore": {"value": %s, "unit": "m"},
                   "levelAfter": {"value": %s, "unit": "m"}, "voidShare": %s, "voidSharePlusMinus": 0.04},
                 "books": {"salt": {"value": %s, "unit": "kg"}, "regenerations": %s}}""", trial, BELIEVED_SOFTENER,
                DIAMETER + Instrument.TAPE_ACROSS_TANK.halfWidth(DIAMETER) * e[0], HEIGHT + dip * e[1], FREEBOARD + dip * e[2],
                GALLON + Instrument.MARKED_BUCKET.halfWidth(GALLON) * e[3], seconds + watch * (e[4] + e[5]),
                REFILL_MINUTES + Instrument.VALVE_TIMER.halfWidth(60) / 60 * e[6], 100 + Instrument.HYDROMETER.halfWidth(1) * e[7],
                BRINE_TANK_WIDTH + tape * e[8], 1 + tape * e[9], 1 - LEVEL_FALL / slump + tape * e[10], VOIDS + 0.04 * e[11],
                SALT_KILOGRAMS * REGENERATIONS + 20 * POUND * (e[12] + e[13]), REGENERATIONS);
    }
}
