// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of volume. Base: litre. */
public enum VolumeUnit implements Unit {
    LITRE("L", "L", 1, "litres"),
    CUBIC_METRE("m3", "m3", 1000, "cubic metres"),
    US_GALLON("gal", "[gal_us]", Exact.US_GALLON_LITRES, "US gallons"),
    IMPERIAL_GALLON("gal-imperial", "[gal_br]", Exact.IMPERIAL_GALLON_LITRES, "imperial gallons"),
    CUBIC_FOOT("ft3", "[cft_i]", Exact.CUBIC_FOOT_LITRES, "cubic feet");

    private final Definition definition;

    VolumeUnit(String symbol, String ucum, double factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
