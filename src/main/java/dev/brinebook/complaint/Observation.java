// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.complaint;

import dev.brinebook.guard.Guard;

/**
 * What was seen or measured.
 *
 * @param sign of which
 * @param value the number over what the sound softener would show; of a look 1 for yes and 0 for no; NaN where the test showed nothing
 * @param uncertainty standard uncertainty of the number, above 0; of a look 0
 */
public record Observation(Sign sign, double value, double uncertainty) {

    public Observation {
        Guard.notNegative(uncertainty, "uncertainty");
    }

    /** A look that was answered. */
    public static Observation of(Sign sign, boolean yes) {
        return new Observation(sign, yes ? 1 : 0, 0);
    }

    /** A test that was made but shows nothing of this sign. */
    public static Observation none(Sign sign) {
        return new Observation(sign, Double.NaN, 0);
    }

    /** Whether it shows something. */
    public boolean isKnown() {
        return !Double.isNaN(value);
    }

    /** Whether a look was answered by yes. */
    public boolean yes() {
        return value > 0;
    }

    /** Likelihood of it under a cause, but for a factor that all causes share. */
    double likelihood(Cause cause) {
        if (!isKnown()) {
            return 1;
        }
        return sign.isLook() ? SignTable.look(sign, cause, yes()) : SignTable.density(this, cause);
    }
}
