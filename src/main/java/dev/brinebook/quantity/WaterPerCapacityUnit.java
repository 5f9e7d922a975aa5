// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of regeneration water per capacity restored. Base: litres per kilogram as calcium carbonate. */
public enum WaterPerCapacityUnit implements Unit {
    LITRE_PER_KILOGRAM("L/kg", "L/kg", Factor.of(1), "litres of water per kilogram of hardness as CaCO3"),
    GALLON_PER_KILOGRAIN("gal/kgr", "", Factor.of(Exact.US_GALLON_LITRES).per(Factor.of(Exact.GRAIN_MILLIGRAMS).per(1000)),
            "US gallons of water per 1,000 grains of hardness as CaCO3");

    private final Definition definition;

    WaterPerCapacityUnit(String symbol, String ucum, Factor factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
