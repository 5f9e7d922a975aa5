// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of flow per cross-section of the tank. Base: metres per hour. */
public enum SurfaceFlowUnit implements Unit {
    METRE_PER_HOUR("m/h", "m/h", Factor.of(1), "metres per hour"),
    GPM_PER_SQUARE_FOOT("gpm/ft2", "[gal_us]/min/[sft_i]",
            Factor.of(Exact.US_GALLON_LITRES).times(0.06).per(Factor.of(144).times(Exact.INCH_METRES).times(Exact.INCH_METRES)),
            "US gallons per minute and square foot of tank");

    private final Definition definition;

    SurfaceFlowUnit(String symbol, String ucum, Factor factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
