// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.AtomicWeights;
import dev.brinebook.resin.Salt;
import java.util.Objects;

/**
 * What regenerating sends to the drain in a year. The resin exchanges no chloride, so all the chloride of the salt leaves
 * with the waste water, in whatever water it was dissolved.
 *
 * @param salt which salt, taken as pure
 * @param saltKilogramsPerYear dissolved
 * @param regenerationLitresPerYear water of all regenerations
 */
public record SaltDischarge(Salt salt, double saltKilogramsPerYear, double regenerationLitresPerYear) {

    private static final double MILLIGRAMS_PER_KILOGRAM = 1e6;

    public SaltDischarge {
        Objects.requireNonNull(salt, "salt");
        Guard.within(saltKilogramsPerYear, 0, YearlyUse.MAX_PER_YEAR, "saltKilogramsPerYear");
        Guard.within(regenerationLitresPerYear, 0, YearlyUse.MAX_PER_YEAR, "regenerationLitresPerYear");
    }

    /** Discharge of a year's use. */
    public static SaltDischarge of(YearlyUse use, Salt salt) {
        return new SaltDischarge(salt, use.saltKilograms(), use.waterLitres());
    }

    /**
     * Chloride in the salt of a year.
     *
     * <pre>m(Cl) = m · M(Cl) / M(salt)</pre>
     *
     * <p>m mass, kg per year; M molar mass, g/mol; the share is 0.6066 of sodium chloride, 0.4755 of potassium chloride.
     * Validity: pure salt.
     * Source: [CIAAW] atomic weights.
     * Deviation: none.
     */
    public double chlorideKilogramsPerYear() {
        return saltKilogramsPerYear * AtomicWeights.CHLORINE / salt.molarMassGramsPerMole();
    }

    /**
     * Chloride that the salt adds to each litre of the house's waste water, on the mean of a year.
     *
     * <pre>c = 10⁶ m(Cl) / (V_h + V_r)</pre>
     *
     * <p>c added chloride, mg/L; m(Cl) chloride, kg per year; V_h waste water of the household and V_r water of the regenerations,
     * L per year.
     * Validity: V_h + V_r above 0. The chloride of the raw water comes on top, and a day of regeneration is far above
     * the mean.
     * Source: [CIAAW] for the chloride; mass per volume, by definition.
     * Deviation: none.
     *
     * @param householdLitresPerYear waste water of the household without the regenerations; irrigation water is not included
     */
    public double addedChlorideMgPerL(double householdLitresPerYear) {
        Guard.within(householdLitresPerYear, 0, YearlyUse.MAX_PER_YEAR, "householdLitresPerYear");
        return chlorideKilogramsPerYear() * MILLIGRAMS_PER_KILOGRAM
                / Guard.positive(householdLitresPerYear + regenerationLitresPerYear, "wasteWaterLitresPerYear");
    }

    /** Line by line, how much less this is than {@code other}: salt, chloride in it and water may each be negative. */
    public Less lessThan(SaltDischarge other) {
        return new Less(other.saltKilogramsPerYear - saltKilogramsPerYear,
                other.chlorideKilogramsPerYear() - chlorideKilogramsPerYear(),
                other.regenerationLitresPerYear - regenerationLitresPerYear);
    }

    /**
     * A difference of two discharges.
     *
     * @param saltKilogramsPerYear less salt, of whichever kind
     * @param chlorideKilogramsPerYear less chloride
     * @param regenerationLitresPerYear less water
     */
    public record Less(double saltKilogramsPerYear, double chlorideKilogramsPerYear, double regenerationLitresPerYear) {
    }
}
