// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of salt per volume of water or brine. Base: kilograms per litre. */
public enum SaltPerVolumeUnit implements Unit {
    KILOGRAM_PER_LITRE("kg/L", "kg/L", Factor.of(1), "kilograms of salt per litre of water or brine"),
    POUND_PER_US_GALLON("lb/gal", "[lb_av]/[gal_us]", Factor.of(Exact.POUND_KILOGRAMS).per(Exact.US_GALLON_LITRES),
            "pounds of salt per US gallon of water or brine");

    private final Definition definition;

    SaltPerVolumeUnit(String symbol, String ucum, Factor factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
