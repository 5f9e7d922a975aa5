// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of hardness. Base: milligrams per litre as calcium carbonate (g/m³). */
public enum HardnessUnit implements Unit {
    MG_PER_L("mg/L", "mg/L", Factor.of(1), "milligrams per litre as CaCO3"),
    /** Source: [NIST-SP811] grain and gallon. */
    GPG("gpg", "[gr]/[gal_us]", Factor.of(Exact.GRAIN_MILLIGRAMS).per(Exact.US_GALLON_LITRES), "grains per US gallon as CaCO3"),
    /** Source: [UK-WMA] gallon; equal to the English or Clark degree. */
    GPG_IMPERIAL("gpg-imperial", "[gr]/[gal_br]", Factor.of(Exact.GRAIN_MILLIGRAMS).per(Exact.IMPERIAL_GALLON_LITRES),
            "grains per imperial gallon as CaCO3, the English or Clark degree"),
    /** Source: [DIN38409-6] 10 mg/L of CaO. */
    GERMAN_DEGREE("dH", "", Factor.of(10).times(AtomicWeights.CALCIUM_CARBONATE).per(AtomicWeights.CALCIUM_OXIDE),
            "German degree, 10 mg/L as CaO"),
    FRENCH_DEGREE("fH", "", Factor.of(10), "French degree, 10 mg/L as CaCO3"),
    MMOL_PER_L("mmol/L", "mmol/L", Factor.of(AtomicWeights.CALCIUM_CARBONATE), "millimoles of calcium and magnesium per litre"),
    /** Source: [GOST31865], whose degree it is. */
    MEQ_PER_L("meq/L", "meq/L", Factor.of(AtomicWeights.CALCIUM_CARBONATE).per(2),
            "milliequivalents of calcium and magnesium per litre, the degree of GOST 31865");

    /** How many there are. */
    public static final int COUNT = 7;

    private final Definition definition;

    HardnessUnit(String symbol, String ucum, Factor factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
