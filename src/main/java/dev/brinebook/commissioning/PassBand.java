// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.commissioning;

import dev.brinebook.guard.Guard;
import dev.brinebook.measurement.Measured;

/**
 * What a reading of sound equipment shows, in its base unit.
 *
 * @param expected what it should show
 * @param lowFail below it the equipment is faulty; minus infinity where less is never wrong
 * @param lowPass from it on it passes; minus infinity likewise
 * @param highPass up to it it passes; infinity where more is never wrong
 * @param highFail above it the equipment is faulty; infinity likewise
 * @param allowed half-width of the band for the equipment alone
 */
public record PassBand(double expected, double lowFail, double lowPass, double highPass, double highFail, double allowed) {

    /** Standard uncertainties to the edge of the band: sound equipment is measured again in 4.3 % of readings. */
    public static final double PASS_FACTOR = Measured.COVERAGE_FACTOR;
    /** Standard uncertainties to the limit of failure: sound equipment fails in 0.3 % of readings. */
    public static final double ASSUMED_FAIL_FACTOR = 3;

    public PassBand {
        Guard.finite(expected, "expected");
        Guard.positive(allowed, "allowed");
        if (!(lowFail <= lowPass && lowPass <= highPass && highPass <= highFail)) {
            throw new IllegalArgumentException("limits must be in order: " + lowFail + ", " + lowPass + ", " + highPass + ", " + highFail);
        }
    }

    /**
     * A band about an expected reading.
     *
     * <pre>u² = u_e² + u_m²;  pass within x ± 2 u,  fail beyond x ± 3 u</pre>
     *
     * <p>u_e standard uncertainty of sound equipment, u_m of the reading, both in the unit of x.
     * Validity: both about normal.
     * Source: [GUM] 5.1.2 and 6.3.3.
     * Deviation: the limits of the band are ours.
     */
    public static PassBand about(double expected, double equipment, double reading) {
        double u = Math.hypot(Guard.positive(equipment, "equipment"), Guard.notNegative(reading, "reading"));
        return new PassBand(expected, expected - ASSUMED_FAIL_FACTOR * u, expected - PASS_FACTOR * u, expected + PASS_FACTOR * u,
                expected + ASSUMED_FAIL_FACTOR * u, PASS_FACTOR * equipment);
    }

    /** A band about a reading that should be the same as another: what the readings may be off, but no more than {@code allowed}. */
    static PassBand same(double reading, double allowed) {
        return new PassBand(0, -ASSUMED_FAIL_FACTOR * reading, -PASS_FACTOR * reading, PASS_FACTOR * reading,
                ASSUMED_FAIL_FACTOR * reading, allowed);
    }

    /** A band up to a limit, whatever is expected; a reading fails above it by more than it may be off. */
    static PassBand atMost(double expected, double limit, double reading) {
        return new PassBand(expected, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, limit, limit + PASS_FACTOR * reading,
                expected < limit ? limit - expected : limit);
    }

    /** A band from a limit on; a reading fails below it by more than it may be off. */
    static PassBand atLeast(double expected, double limit, double reading) {
        return new PassBand(expected, limit - PASS_FACTOR * reading, limit, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY,
                expected - limit);
    }

    /**
     * What a reading comes to.
     *
     * @param value the reading, base unit
     * @param uncertainty its standard uncertainty
     * @param known whether the band rests on nothing that was assumed of the equipment
     */
    public ReadingOutcome outcome(double value, double uncertainty, boolean known) {
        if (value < lowFail || value > highFail) {
            return !known ? ReadingOutcome.FLOW_NOT_KNOWN : value < lowFail ? ReadingOutcome.BELOW : ReadingOutcome.ABOVE;
        }
        if (PASS_FACTOR * uncertainty > allowed) {
            return ReadingOutcome.TOO_UNCERTAIN;
        }
        return value >= lowPass && value <= highPass ? ReadingOutcome.WITHIN : ReadingOutcome.BETWEEN_LIMITS;
    }
}
