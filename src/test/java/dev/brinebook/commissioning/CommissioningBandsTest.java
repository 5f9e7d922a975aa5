// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.commissioning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.quantity.FlowUnit;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.MassUnit;
import dev.brinebook.quantity.VolumeUnit;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class CommissioningBandsTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/commissioning/worked-bands.csv")
    void areThoseOfTheWorkedCase(String check, double from, double to, String unit, double share) {
        PassBand band = check.equals("SALT") ? Worked.bands().salt()
                : Worked.bands().band(CommissioningCheck.valueOf(check), OptionalDouble.empty());
        assertEquals(base(from, unit), band.lowPass(), Math.abs(base(from, unit)) * share);
        assertEquals(base(to, unit), band.highPass(), base(to, unit) * share);
    }

    private static double base(double value, String unit) {
        return switch (unit) {
            case "gpm" -> FlowUnit.GPM.toBase(value);
            case "gal" -> VolumeUnit.US_GALLON.toBase(value);
            case "lb" -> MassUnit.POUND.toBase(value);
            case "gpg" -> HardnessUnit.GPG.toBase(value);
            default -> value;
        };
    }

    /** Hand arithmetic on a band of 100 ± 2·10 and ± 3·10, where 10 is all of the equipment. */
    @ParameterizedTest
    @CsvSource({"100, 0, true, WITHIN", "119.9, 0, true, WITHIN", "120.1, 0, true, BETWEEN_LIMITS", "130.1, 0, true, ABOVE",
            "69.9, 0, true, BELOW", "69.9, 0, false, FLOW_NOT_KNOWN", "75, 0, false, BETWEEN_LIMITS", "100, 10.1, true, TOO_UNCERTAIN",
            "100, 9.9, true, WITHIN"})
    void judgesReadings(double value, double uncertainty, boolean known, ReadingOutcome outcome) {
        assertEquals(outcome, new PassBand(100, 70, 80, 120, 130, 20).outcome(value, uncertainty, known));
    }

    /** A reading that may be off by more widens its band, so that sound equipment does not fail by the bucket. */
    @Test
    void allowsForTheReading() {
        PassBand fine = Worked.bands().band(CommissioningCheck.REFILL_FLOW, OptionalDouble.of(0.01));
        PassBand coarse = Worked.bands().band(CommissioningCheck.REFILL_FLOW, OptionalDouble.of(0.15));
        assertTrue(coarse.highPass() > fine.highPass() && coarse.lowFail() < fine.lowFail());
        assertEquals(fine.allowed(), coarse.allowed(), 1e-12);
    }

    /** 1.2 fl oz of 5.25 % for 1 ft³: 178 mg/L in voids of 0.38. Source: hand arithmetic, 35.5 mL · 1.08 · 5.25 % · 0.953 / 10.76 L. */
    @Test
    void dosesBleach() {
        double bleach = ResinSanitising.bleachLitres(VolumeUnit.CUBIC_FOOT.toBase(1), ResinSanitising.USUAL_PERCENT);
        assertEquals(0.0355, bleach, 0.00005);
        assertEquals(178, ResinSanitising.chlorineMgPerL(bleach, ResinSanitising.USUAL_PERCENT, 0.38 * 28.3168), 0.5);
        assertEquals(2, ResinSanitising.bleachLitres(1, 5) / ResinSanitising.bleachLitres(1, 10), 1e-12);
    }

    /** 1.5 ft³ in 10 × 54 in leaves 27 L of room: ln(870 / 220) of it. Source: hand arithmetic, nominal sizes. */
    @Test
    void rinsesOnUntilTheLimit() {
        assertEquals(37.0, Worked.regeneration().moreRinseLitres(870, 220), 0.5);
    }

    /** Molar conductivities of 76.4 and 50.1 over 35.45 g/mol. Source: SM 2510, from memory. */
    @Test
    void addsConductivityByChloride() {
        assertEquals(3.57, Worked.regeneration().conductivityPerChloride(), 0.005);
    }
}
