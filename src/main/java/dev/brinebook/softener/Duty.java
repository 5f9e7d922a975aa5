package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.household.Days;
import dev.brinebook.household.Demand;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.resin.Salt;
import dev.brinebook.water.CompensatedHardness;
import dev.brinebook.water.SoftenedWater;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterCautions;
import java.util.Objects;

/**
 * What a softener is there to do.
 *
 * @param water the water as tested
 * @param hardness its hardness, once iron and manganese count
 * @param demand the household
 * @param days the days that every choice is tried on
 * @param reserveProbability probability that the reserve of a meter covers the next day
 * @param minimumIntervalDays fewest days of mean use that the capacity should last
 * @param minimumSaltEfficiencyGramsPerGram least hardness removed per salt that a dose should have, 0 for none
 */
public record Duty(WaterAnalysis water, CompensatedHardness hardness, Demand demand, Days days,
        double reserveProbability, double minimumIntervalDays, double minimumSaltEfficiencyGramsPerGram) {

    public Duty {
        Objects.requireNonNull(water, "water");
        Objects.requireNonNull(demand, "demand");
        Objects.requireNonNull(days, "days");
        Guard.positive(hardness.totalMgPerL(), "compensated hardness");
        Guard.positive(minimumIntervalDays, "minimumIntervalDays");
        Guard.within(minimumSaltEfficiencyGramsPerGram, 0, Salt.SODIUM_CHLORIDE.ceilingGramsPerGram(),
                "minimumSaltEfficiencyGramsPerGram");
    }

    /** Hardness that a mean day loads on the resin, grams as CaCO3. */
    public double dailyLoadGrams() {
        return days.meanLitres() * hardness.totalMgPerL() / 1000;
    }

    /** The hardness to set on a controller: whole grains per gallon, with the uncertainty of the test, at least one. */
    public int settingGpg() {
        return Math.max(1, hardness.settingGpg(water.hardnessUncertaintyMgPerL()));
    }

    /** {@link #settingGpg} in mg/L as CaCO3. */
    public double settingMgPerL() {
        return HardnessUnit.GPG.toBase(settingGpg());
    }

    /** The water after a softener that is regenerated with {@code salt}. */
    public SoftenedWater softenedWith(Salt salt) {
        return SoftenedWater.of(hardness, water.sodiumMgPerL(), salt == Salt.POTASSIUM_CHLORIDE);
    }

    /** Whether iron asks for a shorter day override: above the staining level, where it builds up on idle resin. */
    public boolean iron() {
        return water.ironMgPerL().orElse(0) > WaterCautions.IRON_STAINS_MG_PER_L;
    }
}
