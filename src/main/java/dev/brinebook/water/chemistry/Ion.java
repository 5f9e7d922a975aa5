// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.chemistry;

import dev.brinebook.quantity.MolarMass;
import dev.brinebook.text.ListedOnce;
import java.util.Arrays;
import java.util.List;

/**
 * The ions that a balance of charges counts.
 *
 * <p>Conductivities in infinite dilution are those of [SM2510], from memory; an ion that it does not list has none here, as it is
 * rare in drinking water.
 */
@ListedOnce("An ion that a balance of charges counts.")
public enum Ion {
    CALCIUM("Ca", 2, 59.5),
    MAGNESIUM("Mg", 2, 53.1),
    SODIUM("Na", 1, 50.1),
    POTASSIUM("K", 1, 73.5),
    AMMONIUM("NH4", 1, 73.5),
    IRON("Fe", 2, 0),
    MANGANESE("Mn", 2, 0),
    STRONTIUM("Sr", 2, 0),
    BARIUM("Ba", 2, 0),
    HYDROGEN("H", 1, 349.8),
    BICARBONATE("HCO3", -1, 44.5),
    CARBONATE("CO3", -2, 69.3),
    HYDROXIDE("OH", -1, 198.6),
    CHLORIDE("Cl", -1, 76.4),
    SULFATE("SO4", -2, 80.0),
    NITRATE("NO3", -1, 71.4),
    NITRITE("NO2", -1, 0),
    FLUORIDE("F", -1, 55.4),
    /** Weighed as PO4, with the charge that it has from pH 7 to 9, as HPO4. */
    PHOSPHATE("PO4", -2, 0),
    BROMIDE("Br", -1, 0);

    /** The ions without which a balance says nothing; potassium and nitrate are small in most waters. */
    public static final List<Ion> INDISPENSABLE = List.of(CALCIUM, MAGNESIUM, SODIUM, BICARBONATE, CHLORIDE, SULFATE);

    private final String formula;
    private final int charge;
    private final double conductivity;

    Ion(String formula, int charge, double conductivity) {
        this.formula = formula;
        this.charge = charge;
        this.conductivity = conductivity;
    }

    public boolean isCation() {
        return charge > 0;
    }

    /** Charges of one ion, without their sign. */
    public int charges() {
        return Math.abs(charge);
    }

    public double mgPerMmol() {
        return MolarMass.grams(formula);
    }

    public double mgPerMeq() {
        return mgPerMmol() / charges();
    }

    /** Conductivity at 25 °C in infinite dilution, µS/cm per meq/L. */
    public double conductivityPerMeq() {
        return conductivity;
    }

    /** All cations, or all anions. */
    public static List<Ion> all(boolean cations) {
        return Arrays.stream(values()).filter(ion -> ion.isCation() == cations).toList();
    }
}
