// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of exchange capacity and of the hardness load that uses it. Base: grams as calcium carbonate. */
public enum CapacityUnit implements Unit {
    GRAM("g", "g", Factor.of(1), "grams as CaCO3"),
    GRAIN("gr", "[gr]", Factor.of(Exact.GRAIN_MILLIGRAMS).per(1000), "grains as CaCO3"),
    KILOGRAIN("kgr", "", Factor.of(Exact.GRAIN_MILLIGRAMS), "thousands of grains as CaCO3"),
    EQUIVALENT("eq", "eq", Factor.of(AtomicWeights.CALCIUM_CARBONATE).per(2), "equivalents"),
    MOLE("mol", "mol", Factor.of(AtomicWeights.CALCIUM_CARBONATE), "moles of calcium and magnesium"),
    /** Source: [DIN38409-6] 10 g of CaO in a cubic metre. */
    GERMAN_DEGREE_CUBIC_METRE("dH.m3", "", Factor.of(10).times(AtomicWeights.CALCIUM_CARBONATE).per(AtomicWeights.CALCIUM_OXIDE),
            "German degrees times cubic metres: 10 g as CaO"),
    FRENCH_DEGREE_CUBIC_METRE("fH.m3", "", Factor.of(10), "French degrees times cubic metres: 10 g as CaCO3");

    private final Definition definition;

    CapacityUnit(String symbol, String ucum, Factor factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
