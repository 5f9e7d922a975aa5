// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of length. Base: metre. */
public enum LengthUnit implements Unit {
    MILLIMETRE("mm", "mm", 0.001, "millimetres"),
    METRE("m", "m", 1, "metres"),
    INCH("in", "[in_i]", Exact.INCH_METRES, "inches");

    private final Definition definition;

    LengthUnit(String symbol, String ucum, double factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
