// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of flow per volume of resin. Base: bed volumes per hour. */
public enum BedFlowUnit implements Unit {
    BED_VOLUMES_PER_HOUR("BV/h", "/h", 1, "bed volumes per hour"),
    GPM_PER_CUBIC_FOOT("gpm/ft3", "[gal_us]/min/[cft_i]", 60 * Exact.US_GALLON_LITRES / Exact.CUBIC_FOOT_LITRES,
            "US gallons per minute and cubic foot of resin");

    private final Definition definition;

    BedFlowUnit(String symbol, String ucum, double factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
