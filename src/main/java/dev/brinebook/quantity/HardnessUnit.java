// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of hardness. Base: milligrams per litre as calcium carbonate (g/m³). */
public enum HardnessUnit implements Unit {
    MG_PER_L("mg/L", "mg/L", 1, "milligrams per litre as CaCO3"),
    /** Source: [NIST-SP811] grain and gallon. */
    GPG("gpg", "[gr]/[gal_us]", Exact.GRAIN_MILLIGRAMS / Exact.US_GALLON_LITRES, "grains per US gallon as CaCO3"),
    /** Source: [UK-WMA] gallon; equal to the English or Clark degree. */
    GPG_IMPERIAL("gpg-imperial", "[gr]/[gal_br]", Exact.GRAIN_MILLIGRAMS / Exact.IMPERIAL_GALLON_LITRES,
            "grains per imperial gallon as CaCO3, the English or Clark degree"),
    /** Source: [DIN38409-6] 10 mg/L of CaO. */
    GERMAN_DEGREE("dH", "", 10 * AtomicWeights.CALCIUM_CARBONATE / AtomicWeights.CALCIUM_OXIDE,
            "German degree, 10 mg/L as CaO"),
    FRENCH_DEGREE("fH", "", 10, "French degree, 10 mg/L as CaCO3"),
    MMOL_PER_L("mmol/L", "mmol/L", AtomicWeights.CALCIUM_CARBONATE, "millimoles of calcium and magnesium per litre"),
    /** Source: [GOST31865], whose degree it is. */
    MEQ_PER_L("meq/L", "meq/L", AtomicWeights.CALCIUM_CARBONATE / 2,
            "milliequivalents of calcium and magnesium per litre, the degree of GOST 31865");

    private final Definition definition;

    HardnessUnit(String symbol, String ucum, double factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
