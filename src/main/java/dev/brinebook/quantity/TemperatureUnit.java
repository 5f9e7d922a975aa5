// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/** Units of temperature. Base: degree Celsius. The only scales whose zeros differ. */
public enum TemperatureUnit implements Unit {
    CELSIUS("C", "Cel", Factor.of(1), 0, "degrees Celsius"),
    /** Source: [NIST-SP811] t/°C = (t/°F - 32)/1.8. */
    FAHRENHEIT("F", "[degF]", Factor.of(1).per(1.8), 32, "degrees Fahrenheit");

    private final Definition definition;
    private final double zero;

    TemperatureUnit(String symbol, String ucum, Factor factor, double zero, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
        this.zero = zero;
    }

    @Override
    public Definition definition() {
        return definition;
    }

    @Override
    public double toBase(double value) {
        return (value - zero) * definition.factor();
    }

    @Override
    public double fromBase(double base) {
        return base / definition.factor() + zero;
    }
}
