// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.regeneration;

import dev.brinebook.model.Model;
import dev.brinebook.model.ModelChange;

/** What one year takes less than another: salt, water, regenerations or visits, in any one unit. */
public final class Saving {

    /** Far above what the rounding of one calculation adds up to, and far below the six digits of an answer. */
    private static final double ASSUMED_ROUNDING_SHARE = 1e-12;

    private Saving() {
    }

    /**
     * {@code before} less {@code after}; 0 where they are the same but for the rounding of binary numbers: a dose given as a mass and
     * the same dose chosen by litre of resin differ in their last bit.
     */
    public static double of(double before, double after, Model model) {
        double saved = before - after;
        return model.has(ModelChange.EQUAL_YEARS_SAVE_NOTHING)
                && Math.abs(saved) <= ASSUMED_ROUNDING_SHARE * Math.max(Math.abs(before), Math.abs(after)) ? 0 : saved;
    }
}
