// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of flow. Base: litres per minute. */
public enum FlowUnit implements Unit {
    LITRE_PER_MINUTE("L/min", "L/min", Factor.of(1), "litres per minute"),
    LITRE_PER_SECOND("L/s", "L/s", Factor.of(60), "litres per second"),
    CUBIC_METRE_PER_HOUR("m3/h", "m3/h", Factor.of(1000).per(60), "cubic metres per hour"),
    GPM("gpm", "[gal_us]/min", Factor.of(Exact.US_GALLON_LITRES), "US gallons per minute");

    private final Definition definition;

    FlowUnit(String symbol, String ucum, Factor factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
