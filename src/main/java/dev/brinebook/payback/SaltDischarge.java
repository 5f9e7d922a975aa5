package dev.brinebook.payback;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.AtomicWeights;
import dev.brinebook.resin.Salt;

/**
 * What a year of softening sends down the drain.
 *
 * @param saltKilograms salt
 * @param chlorideKilograms chloride in it
 * @param waterLitres regeneration water
 * @param chlorideMgPerL chloride that it adds to a litre of waste water, on the mean
 */
public record SaltDischarge(double saltKilograms, double chlorideKilograms, double waterLitres, double chlorideMgPerL) {

    /**
     * The discharge of a year.
     *
     * <pre>c = m M(Cl) / M(salt) / (V_h + V_r)</pre>
     *
     * <p>c chloride added to waste water; m salt; M molar masses; V_h waste water of the household, V_r regeneration water.
     * Validity: all salt that is bought leaves by the drain.
     * Source: [CIAAW] atomic weights; 60.7 % of sodium chloride is chloride.
     * Deviation: none.
     */
    public static SaltDischarge of(Salt salt, double saltKilograms, double waterLitres, double householdLitres) {
        double chloride = Guard.notNegative(saltKilograms, "saltKilograms") * AtomicWeights.CHLORINE
                / salt.molarMassGramsPerMole();
        double waste = Guard.notNegative(householdLitres, "householdLitres") + Guard.notNegative(waterLitres, "waterLitres");
        return new SaltDischarge(saltKilograms, chloride, waterLitres, waste == 0 ? 0 : 1e6 * chloride / waste);
    }
}
