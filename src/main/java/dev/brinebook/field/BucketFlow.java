// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.field;

import dev.brinebook.guard.Guard;

/** Flow by bucket and watch. */
public final class BucketFlow {

    /** Shortest fill, seconds. Source: [CP-FIELD-TESTS]. */
    public static final double MIN_SECONDS = 3;
    /** How much faster the injector draws water than saturated brine: about the root of the ratio of their densities, 1.2025. */
    public static final double ASSUMED_WATER_FOR_BRINE = 1.10;

    private BucketFlow() {
    }

    /**
     * Flow that fills a volume in a time.
     *
     * <pre>Q = 60 V / t</pre>
     *
     * <p>Q L/min; V litres, 0 or above; t seconds, above 0.
     * Validity: all the water is caught.
     * Source: by definition.
     * Deviation: none.
     */
    public static double litresPerMinute(double litres, double seconds) {
        return 60 * Guard.notNegative(litres, "litres") / Guard.positive(seconds, "seconds");
    }
}
