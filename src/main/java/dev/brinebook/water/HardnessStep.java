// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.HardnessUnit;
import java.util.Objects;

/**
 * Step in which a controller takes the hardness.
 *
 * @param unit the unit it counts in
 * @param size one step, in that unit
 */
public record HardnessStep(HardnessUnit unit, double size) {

    public HardnessStep {
        Objects.requireNonNull(unit, "unit");
        Guard.positive(size, "size");
    }

    /**
     * The usual step of a unit: whole grains and degrees, and for the other units the step of about the same size. Common practice,
     * no source was found. What is set in a coarse step can be set on a controller with a finer one too.
     */
    public static HardnessStep of(HardnessUnit unit) {
        return new HardnessStep(unit, switch (unit) {
            case GPG, GPG_IMPERIAL, GERMAN_DEGREE, FRENCH_DEGREE -> 1;
            case MMOL_PER_L, MEQ_PER_L -> 0.1;
            case MG_PER_L -> 10;
        });
    }

    /** One step, mg/L as CaCO3. */
    public double mgPerL() {
        return unit.toBase(size);
    }
}
