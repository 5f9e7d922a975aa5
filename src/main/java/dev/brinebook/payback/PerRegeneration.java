package dev.brinebook.payback;

import dev.brinebook.guard.Guard;

/**
 * What one regeneration uses.
 *
 * @param saltKilograms dissolved
 * @param waterLitres sent to drain
 */
public record PerRegeneration(double saltKilograms, double waterLitres) {

    public PerRegeneration {
        Guard.notNegative(saltKilograms, "saltKilograms");
        Guard.notNegative(waterLitres, "waterLitres");
    }

    /** What a year of so many regenerations uses, beside the visits paid for. */
    public YearlyUse inOneYear(double regenerationsPerYear, double serviceVisits) {
        return new YearlyUse(regenerationsPerYear, regenerationsPerYear * saltKilograms,
                regenerationsPerYear * waterLitres, serviceVisits);
    }
}
