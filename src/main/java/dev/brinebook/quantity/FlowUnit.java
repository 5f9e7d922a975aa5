// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of flow. Base: litres per minute. */
public enum FlowUnit implements Unit {
    LITRE_PER_MINUTE("L/min", "L/min", 1, "litres per minute"),
    LITRE_PER_SECOND("L/s", "L/s", 60, "litres per second"),
    CUBIC_METRE_PER_HOUR("m3/h", "m3/h", 1000 / 60.0, "cubic metres per hour"),
    GPM("gpm", "[gal_us]/min", Exact.US_GALLON_LITRES, "US gallons per minute");

    private final Definition definition;

    FlowUnit(String symbol, String ucum, double factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
