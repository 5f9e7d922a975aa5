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

    /** What a year's use sends to the drain. */
    public static SaltDischarge of(YearlyUse use, Salt salt) {
        return new SaltDischarge(salt, use.saltKilograms(), use.waterLitres());
    }

    /**
     * Chloride in the salt of a year.
     *
     * <pre>m(Cl) = m · M(Cl) / M(salt)</pre>
     *
     * <p>m kilograms; M molar masses: 0.6066 of sodium chloride, 0.4755 of potassium chloride.
     * Validity: pure salt.
     * Source: [CIAAW] atomic weights.
     */
    public double chlorideKilogramsPerYear() {
        return saltKilogramsPerYear * AtomicWeights.CHLORINE / salt.molarMassGramsPerMole();
    }

    /**
     * Chloride that the salt adds to each litre of the house's waste water, on the mean of a year.
     *
     * <pre>c = 10⁶ m(Cl) / (V_h + V_r)</pre>
     *
     * <p>c mg/L; m(Cl) kilograms a year; V_h waste water of the household and V_r water of the regenerations, litres a year.
     * Validity: V_h + V_r above 0. What the water brought in itself comes on top, and a day of regeneration is far above
     * the mean.
     * Source: [CIAAW] for the chloride; a mass by the volume that it is in.
     *
     * @param householdLitresPerYear waste water of the household without the regenerations; what is watered with is none
     */
    public double addedChlorideMgPerL(double householdLitresPerYear) {
        Guard.within(householdLitresPerYear, 0, YearlyUse.MAX_PER_YEAR, "householdLitresPerYear");
        return chlorideKilogramsPerYear() * MILLIGRAMS_PER_KILOGRAM
                / Guard.positive(householdLitresPerYear + regenerationLitresPerYear, "wasteWaterLitresPerYear");
    }
}
