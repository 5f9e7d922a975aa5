// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of flow per volume of resin. Base: bed volumes per hour. */
public enum BedFlowUnit implements Unit {
    BED_VOLUMES_PER_HOUR("BV/h", "/h", Factor.of(1), "bed volumes per hour"),
    GPM_PER_CUBIC_FOOT("gpm/ft3", "[gal_us]/min/[cft_i]", Factor.of(60).times(Exact.US_GALLON_LITRES).per(Exact.CUBIC_FOOT_LITRES),
            "US gallons per minute and cubic foot of resin");

    private final Definition definition;

    BedFlowUnit(String symbol, String ucum, Factor factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
