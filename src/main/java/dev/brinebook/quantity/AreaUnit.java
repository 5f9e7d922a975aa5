// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of area. Base: square metre. */
public enum AreaUnit implements Unit {
    SQUARE_METRE("m2", "m2", Factor.of(1), "square metres"),
    SQUARE_FOOT("ft2", "[sft_i]", Factor.of(144).times(Exact.INCH_METRES).times(Exact.INCH_METRES), "square feet");

    private final Definition definition;

    AreaUnit(String symbol, String ucum, Factor factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
