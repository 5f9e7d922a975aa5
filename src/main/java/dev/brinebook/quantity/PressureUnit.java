// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of pressure. Base: kilopascal. */
public enum PressureUnit implements Unit {
    KILOPASCAL("kPa", "kPa", Factor.of(1), "kilopascals"),
    BAR("bar", "bar", Factor.of(100), "bars"),
    PSI("psi", "[psi]", Factor.of(Exact.POUND_KILOGRAMS).times(Exact.STANDARD_GRAVITY)
            .per(Factor.of(Exact.INCH_METRES).times(Exact.INCH_METRES)).per(1000), "pounds-force per square inch");

    private final Definition definition;

    PressureUnit(String symbol, String ucum, Factor factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
