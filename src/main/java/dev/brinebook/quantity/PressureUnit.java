// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of pressure. Base: kilopascal. */
public enum PressureUnit implements Unit {
    KILOPASCAL("kPa", "kPa", 1, "kilopascals"),
    BAR("bar", "bar", 100, "bars"),
    PSI("psi", "[psi]", Exact.PSI_PASCALS / 1000, "pounds-force per square inch");

    private final Definition definition;

    PressureUnit(String symbol, String ucum, double factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
