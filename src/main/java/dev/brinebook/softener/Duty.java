package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.household.Days;
import dev.brinebook.household.Demand;
import dev.brinebook.household.UseChange;
import dev.brinebook.household.UseModel;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.VolumeUnit;
import dev.brinebook.regeneration.HardDays;
import dev.brinebook.regeneration.LongRun;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.ServiceStandard;
import dev.brinebook.regeneration.SmallestReserve;
import dev.brinebook.regeneration.YearlyTotals;
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
 * @param days the days as measured, or an example of a year where dates are needed; nothing is chosen on them
 * @param longRun what any policy does in this household in the long run: what every choice rests on
 * @param standard how seldom hard water may pass
 * @param reserveStepLitres step in which the controller takes a reserve
 * @param minimumIntervalDays fewest days of mean use that the capacity should last
 * @param minimumSaltEfficiencyGramsPerGram least hardness removed per salt that a dose should have, 0 for none
 */
public record Duty(WaterAnalysis water, CompensatedHardness hardness, Demand demand, Days days, LongRun longRun,
        ServiceStandard standard, double reserveStepLitres, double minimumIntervalDays,
        double minimumSaltEfficiencyGramsPerGram) {

    /** Step in which controllers take a reserve: ten gallons. No source is at hand. */
    public static final double ASSUMED_RESERVE_STEP_LITRES = VolumeUnit.US_GALLON.toBase(10);

    public Duty {
        Objects.requireNonNull(water, "water");
        Objects.requireNonNull(demand, "demand");
        Objects.requireNonNull(days, "days");
        Objects.requireNonNull(longRun, "longRun");
        Objects.requireNonNull(standard, "standard");
        Guard.within(reserveStepLitres, SmallestReserve.MIN_STEP_LITRES, SmallestReserve.MAX_STEP_LITRES, "reserveStepLitres");
        Guard.positive(hardness.totalMgPerL(), "compensated hardness");
        Guard.positive(minimumIntervalDays, "minimumIntervalDays");
        Guard.within(minimumSaltEfficiencyGramsPerGram, 0, Salt.SODIUM_CHLORIDE.ceilingGramsPerGram(),
                "minimumSaltEfficiencyGramsPerGram");
    }

    /** With the usual steps of a controller. */
    public Duty(WaterAnalysis water, CompensatedHardness hardness, Demand demand, Days days, ServiceStandard standard,
            double minimumIntervalDays, double minimumSaltEfficiencyGramsPerGram) {
        this(water, hardness, demand, days, LongRun.of(demand.model()), standard, ASSUMED_RESERVE_STEP_LITRES,
                minimumIntervalDays, minimumSaltEfficiencyGramsPerGram);
    }

    /** The same for a water so many times as hard, and days that use so many times as much. */
    public Duty with(double hardnessFactor, double useFactor) {
        return new Duty(water, hardness.times(hardnessFactor), demand, days, longRun.times(useFactor), standard,
                reserveStepLitres, minimumIntervalDays, minimumSaltEfficiencyGramsPerGram);
    }

    /** The same household where otherwise is known of it. */
    public Duty with(UseModel model) {
        return new Duty(water, hardness, demand, days, LongRun.of(model), standard, reserveStepLitres, minimumIntervalDays,
                minimumSaltEfficiencyGramsPerGram);
    }

    /** The same where the household's level stays at so many times the mean. */
    Duty atLevel(double factor) {
        return new Duty(water, hardness, demand, days, longRun.ifItStays().times(factor), standard, reserveStepLitres,
                minimumIntervalDays, minimumSaltEfficiencyGramsPerGram);
    }

    /** Whether the level of use is known no better than from the number of people. */
    public boolean useIsHardlyKnown() {
        return demand.model().change().levelSpread() >= UseChange.LEVEL_SPREAD_OF_PEOPLE_ALONE;
    }

    /** Use of a mean day, vacant ones included. */
    public double meanLitres() {
        return longRun.meanLitres();
    }

    /** Expected totals of a year. */
    public YearlyTotals year(Policy policy, Regeneration regeneration) {
        return longRun.year(policy, hardness.totalMgPerL(), regeneration);
    }

    /** Hard days of a year, with how far years differ. */
    public HardDays hardDays(Policy policy, Regeneration regeneration) {
        return longRun.hardDays(policy, hardness.totalMgPerL(), regeneration);
    }

    /** Whether a policy keeps to the service standard. */
    public boolean isServed(Policy policy, Regeneration regeneration) {
        return standard.isMet(longRun, policy, hardness.totalMgPerL(), regeneration);
    }

    /** Hardness that a mean day loads on the resin, grams as CaCO3. */
    public double dailyLoadGrams() {
        return meanLitres() * hardness.totalMgPerL() / 1000;
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
