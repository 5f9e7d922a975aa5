// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of length. Base: metre. */
public enum LengthUnit implements Unit {
    MILLIMETRE("mm", "mm", Factor.of(0.001), "millimetres"),
    METRE("m", "m", Factor.of(1), "metres"),
    INCH("in", "[in_i]", Factor.of(Exact.INCH_METRES), "inches");

    private final Definition definition;

    LengthUnit(String symbol, String ucum, Factor factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
