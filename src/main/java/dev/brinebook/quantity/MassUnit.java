// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of mass. Base: kilogram. */
public enum MassUnit implements Unit {
    GRAM("g", "g", Factor.of(0.001), "grams"),
    KILOGRAM("kg", "kg", Factor.of(1), "kilograms"),
    POUND("lb", "[lb_av]", Factor.of(Exact.POUND_KILOGRAMS), "pounds");

    private final Definition definition;

    MassUnit(String symbol, String ucum, Factor factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
