// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.commissioning;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.commissioning.CommissioningCheck.Kind;
import dev.brinebook.quantity.Factor;
import dev.brinebook.quantity.FlowUnit;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.LengthUnit;
import dev.brinebook.quantity.PressureUnit;
import dev.brinebook.quantity.Unit;
import dev.brinebook.quantity.VolumeUnit;
import dev.brinebook.text.ListedOnce;
import java.util.Arrays;
import java.util.List;

/** Units of readings; each goes with some kinds of readings. */
@ListedOnce("A unit of a reading.")
public enum ReadingUnit implements Unit {
    GPM(FlowUnit.GPM, Kind.FLOW),
    LITRE_PER_MINUTE(FlowUnit.LITRE_PER_MINUTE, Kind.FLOW),
    US_GALLON(VolumeUnit.US_GALLON, Kind.VOLUME),
    LITRE(VolumeUnit.LITRE, Kind.VOLUME),
    MINUTE("minutes", Kind.MINUTES),
    DEGREE("degrees", Kind.DEGREES),
    INCH(LengthUnit.INCH, Kind.LENGTH),
    METRE(LengthUnit.METRE, Kind.LENGTH),
    MG_PER_L(HardnessUnit.MG_PER_L, Kind.CONCENTRATION, Kind.HARDNESS),
    GPG(HardnessUnit.GPG, Kind.HARDNESS),
    GERMAN_DEGREE(HardnessUnit.GERMAN_DEGREE, Kind.HARDNESS),
    FRENCH_DEGREE(HardnessUnit.FRENCH_DEGREE, Kind.HARDNESS),
    MICROSIEMENS_PER_CM("uS/cm", Kind.CONDUCTIVITY),
    PERCENT("%", Kind.PERCENT),
    PSI(PressureUnit.PSI, Kind.PRESSURE),
    KILOPASCAL(PressureUnit.KILOPASCAL, Kind.PRESSURE),
    BAR(PressureUnit.BAR, Kind.PRESSURE);

    private final Definition definition;
    private final List<Kind> kinds;

    ReadingUnit(Unit unit, Kind... kinds) {
        this.definition = unit.definition();
        this.kinds = List.of(kinds);
    }

    ReadingUnit(String symbol, Kind... kinds) {
        this.definition = new Definition(symbol, "", Factor.of(1), 1, symbol);
        this.kinds = List.of(kinds);
    }

    @Override
    public Definition definition() {
        return definition;
    }

    boolean fits(Kind kind) {
        return kinds.contains(kind);
    }

    /** Symbols of the units that a kind of reading takes. */
    static List<String> symbols(Kind kind) {
        return Arrays.stream(values()).filter(unit -> unit.fits(kind)).map(Unit::symbol).toList();
    }

    /** The unit that the answer has for a kind of reading; a hardness is in the unit of the water test. */
    static ReadingUnit of(Kind kind, AnswerUnits units, Explanation explanation) {
        boolean us = units == AnswerUnits.US;
        return switch (kind) {
            case FLOW -> us ? GPM : LITRE_PER_MINUTE;
            case VOLUME -> us ? US_GALLON : LITRE;
            case LENGTH -> us ? INCH : METRE;
            case PRESSURE -> us ? PSI : KILOPASCAL;
            case HARDNESS -> Arrays.stream(values()).filter(unit -> unit.fits(kind)
                    && unit.symbol().equals(explanation.hardnessUnit().symbol())).findFirst().orElse(us ? GPG : MG_PER_L);
            default -> Arrays.stream(values()).filter(unit -> unit.fits(kind)).findFirst().orElseThrow();
        };
    }
}
