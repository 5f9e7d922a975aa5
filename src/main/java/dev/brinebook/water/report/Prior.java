// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.guard.Guard;
import dev.brinebook.source.Table;
import dev.brinebook.water.WaterAnalysis.Supply;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * What a value may turn out to be before it is tested, or tested better. The spread of waters of a supply is assumed
 * [OWN-ASSUMPTION], after what surveys of wells find [USGS-SIR-2008-5227].
 *
 * @param noneShare share of waters that hold none
 * @param median median of the others
 * @param spread standard deviation of the others, of the logarithm unless {@code normal}
 * @param normal whether the value itself is normal, as a pH is, and every value that was tested
 */
public record Prior(double noneShare, double median, double spread, boolean normal) {

    private static final NormalDistribution STANDARD = new NormalDistribution();
    private static final double NINTH_DECILE = STANDARD.inverseCumulativeProbability(0.9);
    private static final Map<Supply, Map<Parameter, Prior>> UNTESTED = read();

    public Prior {
        Guard.within(noneShare, 0, 1, "noneShare");
        Guard.finite(median, "median");
        Guard.notNegative(spread, "spread");
    }

    private static Map<Supply, Map<Parameter, Prior>> read() {
        Map<Supply, Map<Parameter, Prior>> priors = new EnumMap<>(Supply.class);
        for (Supply supply : Supply.values()) {
            priors.put(supply, new EnumMap<>(Parameter.class));
        }
        for (String[] row : Table.read("/water/report-priors.csv", '|', 5)) {
            Parameter parameter = Parameter.named(row[0]);
            boolean normal = parameter == Parameter.PH;
            double median = Double.parseDouble(row[3]);
            double decile = Double.parseDouble(row[4]);
            double spread = normal ? decile - median : StrictMath.log(decile / median);
            priors.get(Supply.valueOf(Parameter.constant(row[1]))).put(parameter, new Prior(Double.parseDouble(row[2]), median,
                    spread / NINTH_DECILE, normal));
        }
        return Collections.unmodifiableMap(priors);
    }

    /** Every parameter that has a spread before it is tested, with that spread. */
    public static Map<Parameter, Prior> untested(Supply supply) {
        return Collections.unmodifiableMap(UNTESTED.get(supply));
    }

    /** What a tested value may really be: normal about it, never below 0. */
    public static Prior tested(Estimate estimate) {
        return new Prior(0, estimate.value(), estimate.standardUncertainty(), true);
    }

    /** The value that a share {@code probability} of the waters stays below, above 0 and below 1. */
    public double quantile(double probability) {
        if (probability < noneShare) {
            return 0;
        }
        double z = STANDARD.inverseCumulativeProbability((probability - noneShare) / (1 - noneShare));
        return normal ? Math.max(0, median + z * spread) : median * StrictMath.exp(z * spread);
    }
}
