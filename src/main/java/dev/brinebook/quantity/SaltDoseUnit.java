// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of salt dose: salt per volume of resin and regeneration. Base: grams per litre. */
public enum SaltDoseUnit implements Unit {
    GRAM_PER_LITRE("g/L", "g/L", Factor.of(1), "grams of salt per litre of resin"),
    POUND_PER_CUBIC_FOOT("lb/ft3", "[lb_av]/[cft_i]", Factor.of(1000).times(Exact.POUND_KILOGRAMS).per(Exact.CUBIC_FOOT_LITRES),
            "pounds of salt per cubic foot of resin");

    private final Definition definition;

    SaltDoseUnit(String symbol, String ucum, Factor factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
