// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.guard.Guard;

/**
 * A value with its standard uncertainty, both in one unit.
 *
 * @param value the value
 * @param standardUncertainty one standard deviation of what it may really be
 */
public record Estimate(double value, double standardUncertainty) {

    public Estimate {
        Guard.finite(value, "value");
        Guard.notNegative(standardUncertainty, "standardUncertainty");
    }

    /** Whether it is exact: it leaves nothing to be weighed. */
    boolean isExact() {
        return standardUncertainty == 0;
    }
}
