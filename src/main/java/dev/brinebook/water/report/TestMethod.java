// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.HardnessUnit;

/**
 * How a value was tested, and how sure that makes it. Spreads that no maker or laboratory states are assumed; a stated uncertainty
 * always comes first.
 *
 * <p>Source: [GUM] 4.3.7 for what lies between two marks; [OWN-ASSUMPTION] for the relative spreads.
 */
public enum TestMethod {
    /** Between two colours of a scale: the spread of the block alone. */
    STRIP(0, 0.3, 0.2),
    /** Counted drops. */
    DROPS(0.03, 0.3, 0.1),
    PHOTOMETER(0.1, 0.1, 0),
    /** A meter of conductivity or pH. */
    METER(0.05, 0.1, 0),
    LABORATORY(0.03, 0.1, 0),
    /** The yearly mean that a utility publishes. */
    UTILITY_AVERAGE(0.1, 0.2, 0),
    /** A sheet that does not say. */
    UNKNOWN(0.05, 0.1, 0);

    /** Spread of the size of a drop, which all tests of one bottle share. */
    public static final double ASSUMED_DROP_SIZE_SHARE = 0.03;
    /** Hardness of one drop where a kit does not say, mg/L. Source: [CP-WATER-TESTS]. */
    static final double USUAL_DROP_MG_PER_L = HardnessUnit.GPG.toBase(1);
    /** The lowest blocks of a strip and the first drop are no closer than this share of the usual highest value tells apart. */
    private static final double ASSUMED_LEAST_SPREAD_SHARE = 0.01;
    private static final double ASSUMED_TEMPERATURE_SPREAD_CELSIUS = 1;
    private static final double UNIFORM = Math.sqrt(12);
    private static final double UNIFORM_HALF = Math.sqrt(3);

    private final double relative;
    private final double phSpread;
    private final double assumedStepShare;

    TestMethod(double relative, double phSpread, double assumedStepShare) {
        this.relative = relative;
        this.phSpread = phSpread;
        this.assumedStepShare = assumedStepShare;
    }

    /**
     * Standard uncertainty of a reading, in its own unit.
     *
     * <pre>
     * strip: step/√12.  drops: √(step²/12 + step²/3 + (0.03 x)²).  others: √((share x)² + digit²/12)
     * </pre>
     *
     * <p>x reading; step between two marks or drops, of which one may be miscounted; digit the last that is printed.
     * Source: [GUM] 4.3.7.
     *
     * @param step resolution of the test, or the last digit printed where it has none; 0 where neither is known
     */
    public double standardUncertainty(Parameter parameter, double value, double step) {
        Guard.notNegative(step, "step");
        if (parameter == Parameter.TEMPERATURE) {
            return ASSUMED_TEMPERATURE_SPREAD_CELSIUS;
        }
        if (parameter == Parameter.PH) {
            return Math.max(phSpread, step / UNIFORM);
        }
        double between = assumedStepShare > 0 && step == 0 ? usualStep(parameter, value) : step;
        double miscounted = this == DROPS ? between / UNIFORM_HALF : 0;
        double size = relative * value;
        return Math.sqrt(between * between / 12 + miscounted * miscounted + size * size);
    }

    /** Whether it is a test that somebody makes at the tap, by eye or with a small instrument. */
    boolean isKit() {
        return this == STRIP || this == DROPS || this == PHOTOMETER;
    }

    private double usualStep(Parameter parameter, double value) {
        return this == DROPS && parameter == Parameter.HARDNESS ? USUAL_DROP_MG_PER_L
                : UNIFORM * Math.max(assumedStepShare * value, ASSUMED_LEAST_SPREAD_SHARE * parameter.usualHigh());
    }
}
