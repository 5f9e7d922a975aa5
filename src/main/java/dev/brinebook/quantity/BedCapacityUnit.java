// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of exchange capacity per volume of resin. Base: grams as calcium carbonate per litre. */
public enum BedCapacityUnit implements Unit {
    GRAM_PER_LITRE("g/L", "g/L", Factor.of(1), "grams as CaCO3 per litre of resin"),
    KILOGRAIN_PER_CUBIC_FOOT("kgr/ft3", "", Factor.of(Exact.GRAIN_MILLIGRAMS).per(Exact.CUBIC_FOOT_LITRES),
            "thousands of grains as CaCO3 per cubic foot of resin"),
    EQUIVALENT_PER_LITRE("eq/L", "eq/L", Factor.of(AtomicWeights.CALCIUM_CARBONATE).per(2), "equivalents per litre of resin");

    private final Definition definition;

    BedCapacityUnit(String symbol, String ucum, Factor factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
