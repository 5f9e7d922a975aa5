// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of salt efficiency: hardness removed per salt used. Base: grams as calcium carbonate per gram. */
public enum SaltEfficiencyUnit implements Unit {
    GRAM_PER_GRAM("g/g", "g/g", Factor.of(1), "grams of hardness as CaCO3 per gram of salt"),
    GRAIN_PER_POUND("gr/lb", "[gr]/[lb_av]", Factor.of(Exact.GRAIN_MILLIGRAMS).per(1e6).per(Exact.POUND_KILOGRAMS),
            "grains of hardness as CaCO3 per pound of salt");

    private final Definition definition;

    SaltEfficiencyUnit(String symbol, String ucum, Factor factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
