// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.quantity.CapacityUnit;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.Salt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FieldFormulasTest {

    private static final double INCH = Exact.INCH_METRES;
    private static final double POUNDS_PER_GALLON = Exact.POUND_KILOGRAMS / Exact.US_GALLON_LITRES;
    private static final Salt SALT = Salt.SODIUM_CHLORIDE;

    @ParameterizedTest
    @CsvFileSource(resources = {"/field/published-field.csv", "/field/worked-field.csv"}, useHeadersInDisplayName = true)
    void agrees(String kind, double a, double b, String expected, String tolerance) {
        Printed.assertAgrees(expected, tolerance, switch (kind) {
            case "density" -> BrineStrength.densityKilogramsPerCubicMetre(a / 100, b);
            case "void" -> BrineTankShape.voidShare(a * Exact.POUND_KILOGRAMS / (Exact.CUBIC_FOOT_LITRES / 1000));
            case "saltPerBrine", "perGallon" -> BrineStrength.saltPerBrineKilogramsPerLitre(SALT, a, 20) / POUNDS_PER_GALLON;
            case "resin" -> TankBottom.ELLIPTICAL.resinLitres(a * INCH, b * INCH, 0) / Exact.CUBIC_FOOT_LITRES;
            case "bed" -> depthInches(a - 0.4, b);
            case "round" -> BrineTankShape.ROUND.litres(a * INCH, 0, b, INCH, 1) / Exact.US_GALLON_LITRES;
            case "square" -> BrineTankShape.SQUARE.litres(a * INCH, 0, b, INCH, 1) / Exact.US_GALLON_LITRES;
            case "sg" -> BrineStrength.specificGravity(a);
            case "perLitre" -> BrineStrength.saltPerBrineKilogramsPerLitre(SALT, a, 20);
            case "perWater" -> BrineStrength.saltPerWaterKilogramsPerLitre(SALT, a, 20) / POUNDS_PER_GALLON;
            case "correction" -> BrineStrength.correctedDegrees(a, BrineStrength.SCALE_CELSIUS + b) - a;
            case "dissolve" -> SaltDissolving.minutes(b * 1e-6, 0.42, a / 1000);
            case "bypass" -> RawWaterShare.of(20, a, b);
            case "capacity" -> CapacityUnit.GRAIN.fromBase(BreakthroughRun.capacityGrams(a * Exact.US_GALLON_LITRES,
                    HardnessUnit.GPG.toBase(b + 0.5), HardnessUnit.GPG.toBase(0.5)));
            default -> throw new IllegalArgumentException(kind);
        });
    }

    /** The depth whose volume is that of the fill, by halving. */
    private static double depthInches(double diameterInches, double cubicFeet) {
        double low = diameterInches / 4;
        double high = 100;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            boolean tooLittle = TankBottom.ELLIPTICAL.resinLitres(diameterInches * INCH, middle * INCH, 0)
                    < cubicFeet * Exact.CUBIC_FOOT_LITRES;
            low = tooLittle ? middle : low;
            high = tooLittle ? high : middle;
        }
        return low;
    }

    @Test
    void readsEveryRow() {
        assertEquals(9, Rows.in("/field/published-field.csv"));
        assertEquals(38, Rows.in("/field/worked-field.csv"));
    }

    @Test
    void bottomsHoldWhatGeometrySays() {
        double dome = 1000 * Math.PI * 0.3 * 0.3 * 0.3 / 24;
        assertEquals(dome, TankBottom.ELLIPTICAL.resinLitres(0.3, 0.075, 0), 1e-9);
        assertEquals(2 * dome, TankBottom.HEMISPHERICAL.resinLitres(0.3, 0.15, 0), 1e-9);
        assertEquals(1000 * Math.PI / 4 * 0.3 * 0.3 * 0.15, TankBottom.FLAT.resinLitres(0.3, 0.15, 0), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> TankBottom.ELLIPTICAL.resinLitres(0.3, 0.07, 0));
    }

    /** By hand: 9.6 in wide, 31 in deep hold 2,185.9 in³; a dome of 2.4 in holds π 9.6³/24 = 115.8 in³, its lower half 5/16 of that. */
    @ParameterizedTest
    @CsvSource({"0, 2185.9", "1.2, 2149.7", "2.4, 2070.1", "4.8, 1896.4"})
    void gravelTakesRoomFromResin(double gravelInches, double cubicInches) {
        assertEquals(cubicInches, TankBottom.ELLIPTICAL.resinLitres(9.6 * INCH, 31 * INCH, gravelInches * INCH)
                / (1000 * INCH * INCH * INCH), 0.1);
    }

    /** By hand: π/4 (18² − 4²) · 0.42 and π/4 · 4² are 114.2 in³ in each inch; salt that slumps by 8 % changes the first alone. */
    @ParameterizedTest
    @CsvSource({"0, 1, 106.88", "4, 1, 114.17", "4, 1.08, 122.29"})
    void brineWellIsOpenWater(double wellInches, double slump, double cubicInches) {
        assertEquals(cubicInches, BrineTankShape.ROUND.litres(18 * INCH, wellInches * INCH, 0.42, INCH, slump)
                / (1000 * INCH * INCH * INCH), 0.01);
    }

    /** What the table gives of a volume gives the volume back, between the ends of the table. */
    @ParameterizedTest
    @ValueSource(doubles = {15, 28.3, 42.5, 60})
    void resinByRunIsTheInverseOfTheTable(double litres) {
        double salt = 5.5;
        double capacity = litres * CapacityTable.WORKING.capacityGramsPerLitre(Math.max(CapacityTable.MIN_SALT_DOSE_GRAMS_PER_LITRE,
                Math.min(CapacityTable.MAX_SALT_DOSE_GRAMS_PER_LITRE, 1000 * salt / litres)));
        boolean inTable = BreakthroughRun.isInTable(SALT, salt, litres);
        assertEquals(inTable, BreakthroughRun.hasResinLitres(SALT, salt, capacity));
        if (inTable) {
            assertEquals(litres, BreakthroughRun.resinLitres(SALT, salt, capacity), 1e-6);
        }
    }

    @Test
    void liftIsThatOfTheBackwashFormula() {
        assertTrue(BedLift.expansionShare(10, 0.24, 12).exists());
        assertEquals(BedLift.expansionShare(10, 0.24, 12).value(), BedLift.expansionOrMost(10, 0.24, 12));
        assertEquals(2, BedLift.expansionOrMost(400, 0.24, 12), "carried out");
        assertEquals(4.1 * Exact.PSI_PASCALS / 1000, BedLift.dropKilopascals(1.5 * Exact.CUBIC_FOOT_LITRES, 9.6 * INCH,
                6 * Exact.US_GALLON_LITRES, 10), 0.05 * Exact.PSI_PASCALS / 1000, "1.5 ft3 at 6 gpm and 10 °C: 4.1 psi by hand");
    }
}
