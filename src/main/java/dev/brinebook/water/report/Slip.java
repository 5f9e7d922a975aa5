// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.quantity.MolarMass;
import dev.brinebook.text.Localizable;
import dev.brinebook.water.chemistry.Composition;
import dev.brinebook.water.chemistry.Ion;
import java.util.EnumSet;
import java.util.Set;

/** Mistakes of writing and reading that reports are known for, each with the composition that there would be without it. */
public enum Slip implements Localizable {
    CALCIUM_TEN_TIMES(0.1, Ion.CALCIUM),
    CALCIUM_A_TENTH(10, Ion.CALCIUM),
    MAGNESIUM_TEN_TIMES(0.1, Ion.MAGNESIUM),
    MAGNESIUM_A_TENTH(10, Ion.MAGNESIUM),
    SODIUM_TEN_TIMES(0.1, Ion.SODIUM),
    CALCIUM_IS_AS_CALCIUM_CARBONATE(MolarMass.grams("Ca") / MolarMass.grams("CaCO3"), Ion.CALCIUM),
    MAGNESIUM_IS_AS_CALCIUM_CARBONATE(MolarMass.grams("Mg") / MolarMass.grams("CaCO3"), Ion.MAGNESIUM),
    CALCIUM_AND_MAGNESIUM_SWAPPED(1, Ion.CALCIUM, Ion.MAGNESIUM),
    CATIONS_HALVED(2, Ion.all(true).toArray(Ion[]::new)),
    /** The number is mg/L as CaCO3 and was read as bicarbonate. */
    ALKALINITY_READ_AS_BICARBONATE(MolarMass.grams("2HCO3") / MolarMass.grams("CaCO3"), Ion.BICARBONATE),
    /** The number is mg/L of bicarbonate and was read as CaCO3. */
    BICARBONATE_READ_AS_ALKALINITY(MolarMass.grams("CaCO3") / MolarMass.grams("2HCO3"), Ion.BICARBONATE),
    ALKALINITY_DOUBLED(0.5, Ion.BICARBONATE),
    ALKALINITY_HALVED(2, Ion.BICARBONATE),
    SULFATE_IS_AS_SULFUR(MolarMass.grams("SO4") / MolarMass.grams("S"), Ion.SULFATE),
    SULFATE_TAKEN_FOR_SULFUR(MolarMass.grams("S") / MolarMass.grams("SO4"), Ion.SULFATE),
    CHLORIDE_IS_AS_SODIUM_CHLORIDE(MolarMass.grams("Cl") / MolarMass.grams("NaCl"), Ion.CHLORIDE),
    NITRATE_IS_AS_NITROGEN(MolarMass.grams("NO3") / MolarMass.grams("N"), Ion.NITRATE),
    NITRATE_TAKEN_FOR_NITROGEN(MolarMass.grams("N") / MolarMass.grams("NO3"), Ion.NITRATE);

    private final double factor;
    private final Set<Ion> ions;

    Slip(double factor, Ion... ions) {
        this.factor = factor;
        this.ions = EnumSet.noneOf(Ion.class);
        this.ions.addAll(Set.of(ions));
    }

    /** The ions whose numbers it changes. */
    public Set<Ion> ions() {
        return EnumSet.copyOf(ions);
    }

    /** Whether the composition has what the slip would have changed. */
    boolean concerns(Composition printed) {
        return ions.stream().anyMatch(ion -> printed.mgPerL(ion) > 0);
    }

    /** The composition as it would be without this slip. */
    public Composition undone(Composition printed) {
        return this == CALCIUM_AND_MAGNESIUM_SWAPPED
                ? printed.with(Ion.CALCIUM, printed.mgPerL(Ion.MAGNESIUM)).with(Ion.MAGNESIUM, printed.mgPerL(Ion.CALCIUM))
                : printed.times(factor, ions);
    }

    @Override
    public String textId() {
        return Localizable.idOf("slip", this);
    }
}
