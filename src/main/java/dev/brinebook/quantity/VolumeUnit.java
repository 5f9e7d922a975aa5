// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of volume. Base: litre. */
public enum VolumeUnit implements Unit {
    LITRE("L", "L", Factor.of(1), "litres"),
    CUBIC_METRE("m3", "m3", Factor.of(1000), "cubic metres"),
    US_GALLON("gal", "[gal_us]", Factor.of(Exact.US_GALLON_LITRES), "US gallons"),
    IMPERIAL_GALLON("gal-imperial", "[gal_br]", Factor.of(Exact.IMPERIAL_GALLON_LITRES), "imperial gallons"),
    CUBIC_FOOT("ft3", "[cft_i]", Factor.of(Exact.CUBIC_FOOT_LITRES), "cubic feet");

    private final Definition definition;

    VolumeUnit(String symbol, String ucum, Factor factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
