// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/**
 * Abridged standard atomic weights and the molar masses made of them, in g/mol.
 *
 * <p>Source: [CIAAW] abridged values.
 */
public final class AtomicWeights {

    public static final double CALCIUM = 40.078;
    public static final double MAGNESIUM = 24.305;
    public static final double IRON = 55.845;
    public static final double MANGANESE = 54.938;
    public static final double SODIUM = 22.990;
    public static final double POTASSIUM = 39.098;
    public static final double CARBON = 12.011;
    public static final double OXYGEN = 15.999;
    public static final double CHLORINE = 35.45;
    public static final double HYDROGEN = 1.008;
    public static final double NITROGEN = 14.007;
    public static final double FLUORINE = 18.998;
    public static final double SILICON = 28.085;
    public static final double PHOSPHORUS = 30.974;
    public static final double SULFUR = 32.06;
    public static final double BROMINE = 79.904;
    public static final double STRONTIUM = 87.62;
    public static final double BARIUM = 137.327;

    /** CaCO3, the substance that hardness is counted as. */
    public static final double CALCIUM_CARBONATE = CALCIUM + CARBON + 3 * OXYGEN;
    /** CaO, the substance that the German degree is defined by. */
    public static final double CALCIUM_OXIDE = CALCIUM + OXYGEN;
    public static final double SODIUM_CHLORIDE = SODIUM + CHLORINE;
    public static final double POTASSIUM_CHLORIDE = POTASSIUM + CHLORINE;

    private AtomicWeights() {
    }
}
