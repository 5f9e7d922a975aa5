// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of the concentration of a dissolved substance. Base: milligrams per litre of the substance itself. */
public enum ConcentrationUnit implements Unit {
    MG_PER_L("mg/L", "mg/L", Factor.of(1), "milligrams per litre"),
    UG_PER_L("ug/L", "ug/L", Factor.of(0.001), "micrograms per litre");

    private final Definition definition;

    ConcentrationUnit(String symbol, String ucum, Factor factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
