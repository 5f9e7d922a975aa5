// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.water.chemistry.Composition;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Two ways to one number, and the range in which their ratio lies where both are right. None where a report lacks one of them.
 *
 * <p>Ranges after [SM1030E] and [SM2510], from memory, widened where 482 published analyses of good hard water need it [USGS-INL].
 */
public enum RatioCheck {
    /** Weighed residue against the sum of what was found. */
    SOLIDS_TO_SUM(1.0, 1.2, sample -> ratio(solids(sample), sum(sample))),
    SUM_TO_CONDUCTIVITY(0.5, 0.81, sample -> ratio(sum(sample), sample.value(Parameter.CONDUCTIVITY))),
    /** 100 meq/L of cations for each µS/cm. */
    CATIONS_TO_CONDUCTIVITY(0.88, 1.2, sample -> ratio(hundred(sample, Composition::cationsMeqPerL),
            sample.value(Parameter.CONDUCTIVITY))),
    ANIONS_TO_CONDUCTIVITY(0.88, 1.2, sample -> ratio(hundred(sample, Composition::anionsMeqPerL), sample.value(Parameter.CONDUCTIVITY))),
    /** Conductivity calculated from the ions against the measured one. */
    CONDUCTIVITY(0.9, 1.1, sample -> ratio(complete(sample, Composition::conductivity), sample.value(Parameter.CONDUCTIVITY))),
    /** Calcium and magnesium against the hardness stated. Agreement mostly proves that somebody added them up. */
    HARDNESS(0.97, 1.03, sample -> ratio(sample.ionHardnessMgPerL(), sample.value(Parameter.HARDNESS)));

    private static final double[] METER_FACTORS = {0.5, 0.6, 0.64, 0.65, 0.67, 0.7};
    private static final double ROUNDING_MG_PER_L = 0.51;

    private final double low;
    private final double high;
    private final Function<Sample, OptionalDouble> ratio;

    RatioCheck(double low, double high, Function<Sample, OptionalDouble> ratio) {
        this.low = low;
        this.high = high;
        this.ratio = ratio;
    }

    public double low() {
        return low;
    }

    public double high() {
        return high;
    }

    /** The ratio of a sample, where both numbers are there. */
    public OptionalDouble of(Sample sample) {
        return ratio.apply(sample);
    }

    /** Whether the two agree; true where there is nothing to compare. */
    public boolean holds(Sample sample) {
        double value = of(sample).orElse(low);
        return value >= low && value <= high;
    }

    /** Whether dissolved solids are exactly a usual multiple of the conductivity: then nobody weighed them. */
    public static boolean areSolidsOfMeter(Sample sample) {
        if (!sample.has(Parameter.CONDUCTIVITY) || !sample.has(Parameter.DISSOLVED_SOLIDS)) {
            return false;
        }
        for (double factor : METER_FACTORS) {
            if (Math.abs(sample.orZero(Parameter.DISSOLVED_SOLIDS) - factor * sample.orZero(Parameter.CONDUCTIVITY)) < ROUNDING_MG_PER_L) {
                return true;
            }
        }
        return false;
    }

    private static OptionalDouble solids(Sample sample) {
        return areSolidsOfMeter(sample) ? OptionalDouble.empty() : sample.value(Parameter.DISSOLVED_SOLIDS);
    }

    private static OptionalDouble sum(Sample sample) {
        return complete(sample, composition -> composition.residueMgPerL(sample.orZero(Parameter.SILICA)));
    }

    private static OptionalDouble hundred(Sample sample, Function<Composition, Double> sum) {
        return complete(sample, composition -> 100 * sum.apply(composition));
    }

    private static OptionalDouble complete(Sample sample, Function<Composition, Double> number) {
        Composition composition = sample.composition();
        return composition.missing().isEmpty() ? OptionalDouble.of(number.apply(composition)) : OptionalDouble.empty();
    }

    private static OptionalDouble ratio(OptionalDouble above, OptionalDouble below) {
        return above.isPresent() && below.isPresent() && below.getAsDouble() > 0
                ? OptionalDouble.of(above.getAsDouble() / below.getAsDouble()) : OptionalDouble.empty();
    }
}
