// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.AtomicWeights;

/** The salts that a softener is regenerated with. */
public enum Salt {
    SODIUM_CHLORIDE(AtomicWeights.SODIUM_CHLORIDE),
    POTASSIUM_CHLORIDE(AtomicWeights.POTASSIUM_CHLORIDE);

    private final double molarMassGramsPerMole;

    Salt(double molarMassGramsPerMole) {
        this.molarMassGramsPerMole = molarMassGramsPerMole;
    }

    /** Molar mass, which is also the mass of one equivalent. */
    public double molarMassGramsPerMole() {
        return molarMassGramsPerMole;
    }

    /**
     * The most hardness that this salt can exchange: one equivalent for one equivalent.
     *
     * <pre>e = M(CaCO₃) / (2 M(salt))</pre>
     *
     * <p>e grams as CaCO₃ per gram of salt; M molar masses.
     * Validity: pure salt; 0.8563 for sodium chloride (5,994 grains per pound), 0.6713 for potassium chloride (4,699).
     * Source: [CIAAW] atomic weights; [WT-2014] states 5,989 and 4,695.
     * Deviation: [WT-2014] counts calcium carbonate as 100 g/mol, which is 0.09 % less.
     */
    public double ceilingGramsPerGram() {
        return AtomicWeights.CALCIUM_CARBONATE / (2 * molarMassGramsPerMole);
    }

    /**
     * The mass of sodium chloride with as many equivalents as {@code saltGrams} of this salt; works for doses too.
     *
     * <pre>m(NaCl) = m · M(NaCl) / M(salt)</pre>
     *
     * <p>m grams (or grams per litre of resin); M molar masses.
     * Validity: any mass of 0 or more.
     * Source: [CIAAW] atomic weights.
     * Deviation: takes potassium to regenerate as well as sodium, equivalent for equivalent. The resin holds potassium
     * about 1.5 times as firmly, which helps the brine and hinders the service by about as much.
     */
    public double asSodiumChloride(double saltGrams) {
        return Guard.notNegative(saltGrams, "saltGrams") * sodiumChloridePerGram();
    }

    /** The mass of this salt with as many equivalents as {@code sodiumChlorideGrams}: the inverse. */
    public double fromSodiumChloride(double sodiumChlorideGrams) {
        return Guard.notNegative(sodiumChlorideGrams, "sodiumChlorideGrams") / sodiumChloridePerGram();
    }

    /** Exactly 1 for sodium chloride, so that its doses pass through unchanged. */
    private double sodiumChloridePerGram() {
        return AtomicWeights.SODIUM_CHLORIDE / molarMassGramsPerMole;
    }
}
