// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.quantity.ConcentrationUnit;
import dev.brinebook.quantity.Factor;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.TemperatureUnit;
import dev.brinebook.quantity.Unit;
import dev.brinebook.text.ListedOnce;

/** The units that water reports print. Those of one {@link Kind} have one base unit. */
@ListedOnce("The unit of a result in a water report.")
public enum ReportUnit implements Unit {
    MG_PER_L(Kind.MASS, ConcentrationUnit.MG_PER_L),
    UG_PER_L(Kind.MASS, ConcentrationUnit.UG_PER_L),
    /** Parts per million of a dilute water are mg/L to within 1 % up to 7,000 mg/L. Source: [CP-WATER-TESTS]. */
    PPM(Kind.MASS, "ppm", Factor.of(1), "parts per million, taken as milligrams per litre"),
    PPB(Kind.MASS, "ppb", Factor.of(0.001), "parts per billion, taken as micrograms per litre"),
    MMOL_PER_L(Kind.AMOUNT, "mmol/L", Factor.of(1), "millimoles per litre of the substance of the form"),
    MEQ_PER_L(Kind.CHARGE, "meq/L", Factor.of(1), "milliequivalents per litre"),
    GPG(Kind.CALCIUM_CARBONATE, HardnessUnit.GPG),
    GPG_IMPERIAL(Kind.CALCIUM_CARBONATE, HardnessUnit.GPG_IMPERIAL),
    GERMAN_DEGREE(Kind.CALCIUM_CARBONATE, HardnessUnit.GERMAN_DEGREE),
    FRENCH_DEGREE(Kind.CALCIUM_CARBONATE, HardnessUnit.FRENCH_DEGREE),
    MICROSIEMENS_PER_CM(Kind.CONDUCTIVITY, "uS/cm", Factor.of(1), "microsiemens per centimetre"),
    MICROMHO_PER_CM(Kind.CONDUCTIVITY, "umho/cm", Factor.of(1), "micromho per centimetre, an older name of the microsiemens"),
    MILLISIEMENS_PER_CM(Kind.CONDUCTIVITY, "mS/cm", Factor.of(1000), "millisiemens per centimetre"),
    DECISIEMENS_PER_M(Kind.CONDUCTIVITY, "dS/m", Factor.of(1000), "decisiemens per metre"),
    MILLISIEMENS_PER_M(Kind.CONDUCTIVITY, "mS/m", Factor.of(10), "millisiemens per metre"),
    NTU(Kind.TURBIDITY, "NTU", Factor.of(1), "nephelometric turbidity units"),
    FNU(Kind.TURBIDITY, "FNU", Factor.of(1), "formazin nephelometric units, taken as NTU"),
    PLATINUM_COBALT(Kind.COLOUR, "PtCo", Factor.of(1), "platinum-cobalt or Hazen units of colour"),
    PER_100_ML(Kind.COUNT, "/100mL", Factor.of(1), "colonies or most probable number in 100 millilitres"),
    CELSIUS(Kind.TEMPERATURE, TemperatureUnit.CELSIUS),
    FAHRENHEIT(Kind.TEMPERATURE, TemperatureUnit.FAHRENHEIT) {
        @Override
        public double toBase(double value) {
            return TemperatureUnit.FAHRENHEIT.toBase(value);
        }

        @Override
        public double fromBase(double base) {
            return TemperatureUnit.FAHRENHEIT.fromBase(base);
        }
    },
    PH(Kind.PH, "pH", Factor.of(1), "units of pH");

    /** What a unit measures; the base unit of each. */
    public enum Kind {
        /** mg/L. */
        MASS,
        /** mmol/L. */
        AMOUNT,
        /** meq/L. */
        CHARGE,
        /** mg/L as CaCO3. */
        CALCIUM_CARBONATE,
        /** µS/cm. */
        CONDUCTIVITY,
        /** NTU. */
        TURBIDITY,
        /** mg/L of platinum. */
        COLOUR,
        /** In 100 mL. */
        COUNT,
        /** °C. */
        TEMPERATURE,
        /** pH. */
        PH
    }

    private final Kind kind;
    private final Definition definition;

    ReportUnit(Kind kind, String symbol, Factor factor, String meaning) {
        this.kind = kind;
        this.definition = new Definition(symbol, "", factor, factor.binary(), meaning);
    }

    ReportUnit(Kind kind, Unit same) {
        this.kind = kind;
        this.definition = same.definition();
    }

    public Kind kind() {
        return kind;
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
