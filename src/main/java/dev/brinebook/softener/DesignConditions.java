// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.caution.Caution;
import dev.brinebook.guard.Guard;
import dev.brinebook.household.Days;
import dev.brinebook.household.Demand;
import dev.brinebook.household.UseChange;
import dev.brinebook.household.UseModel;
import dev.brinebook.regeneration.HardDays;
import dev.brinebook.regeneration.LongRun;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.ServiceStandard;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.resin.Salt;
import dev.brinebook.water.CompensatedHardness;
import dev.brinebook.water.HardnessStep;
import dev.brinebook.water.SoftenedWater;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterCautions;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * What a softener is there to do.
 *
 * @param water the water as tested
 * @param hardness its hardness, once iron and manganese count
 * @param demand the household
 * @param days the days as measured, or an example of a year where dates are needed; nothing is chosen on them
 * @param longRun what any policy does in this household in the long run: what every choice rests on
 * @param standard how seldom hard water may pass
 * @param controller the units and steps in which the controller takes its settings
 * @param minimumIntervalDays fewest days of mean use that the capacity should last
 * @param minimumSaltEfficiencyGramsPerGram least hardness removed per salt that a dose should have, 0 for none
 * @param practice how a softener is judged
 */
public record DesignConditions(WaterAnalysis water, CompensatedHardness hardness, Demand demand, Days days, LongRun longRun,
        ServiceStandard standard, ControllerTerms controller, double minimumIntervalDays,
        double minimumSaltEfficiencyGramsPerGram, Practice practice) {

    public DesignConditions {
        Objects.requireNonNull(water, "water");
        Objects.requireNonNull(demand, "demand");
        Objects.requireNonNull(days, "days");
        Objects.requireNonNull(longRun, "longRun");
        Objects.requireNonNull(standard, "standard");
        Objects.requireNonNull(controller, "controller");
        Objects.requireNonNull(practice, "practice");
        Guard.positive(hardness.realMgPerL(), "real hardness");
        Guard.positive(minimumIntervalDays, "minimumIntervalDays");
        Guard.within(minimumSaltEfficiencyGramsPerGram, 0, Salt.SODIUM_CHLORIDE.ceilingGramsPerGram(),
                "minimumSaltEfficiencyGramsPerGram");
    }

    /** With the usual steps of a controller in the United States. */
    public DesignConditions(WaterAnalysis water, CompensatedHardness hardness, Demand demand, Days days, ServiceStandard standard,
            double minimumIntervalDays, double minimumSaltEfficiencyGramsPerGram) {
        this(water, hardness, demand, days, LongRun.of(demand.model()), standard, ControllerTerms.US,
                minimumIntervalDays, minimumSaltEfficiencyGramsPerGram, Practice.USUAL);
    }

    /** The same with the hardness load and the use multiplied by these factors. */
    public DesignConditions with(double hardnessFactor, double useFactor) {
        return new DesignConditions(water, hardness.times(hardnessFactor), demand, days, longRun.times(useFactor), standard,
                controller, minimumIntervalDays, minimumSaltEfficiencyGramsPerGram, practice);
    }

    /** The same conditions with another model of the household's use. */
    public DesignConditions with(UseModel model) {
        return new DesignConditions(water, hardness, demand, days, LongRun.of(model), standard, controller, minimumIntervalDays,
                minimumSaltEfficiencyGramsPerGram, practice);
    }

    /** The same for a bed that is still to be bought, with its controller. */
    public DesignConditions forNewBed() {
        return new DesignConditions(water, hardness, demand, days, longRun, standard, controller.forNewBed(),
                minimumIntervalDays, minimumSaltEfficiencyGramsPerGram, practice);
    }

    /** The same with the household's level of use held at {@code factor} times the mean. */
    public DesignConditions atLevel(double factor) {
        return new DesignConditions(water, hardness, demand, days, longRun.ifItStays().times(factor), standard, controller,
                minimumIntervalDays, minimumSaltEfficiencyGramsPerGram, practice);
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
        return longRun.year(policy, loadMgPerL(), regeneration);
    }

    /** Hard days of a year, with how far years differ. */
    public HardDays hardDays(Policy policy, Regeneration regeneration) {
        return longRun.hardDays(policy, loadMgPerL(), regeneration);
    }

    /** Whether a policy keeps to the service standard. */
    public boolean isServed(Policy policy, Regeneration regeneration) {
        return standard.isMet(longRun, policy, loadMgPerL(), regeneration);
    }

    /** Hardness that a mean day loads on the resin, grams as CaCO3. */
    public double dailyLoadGrams() {
        return meanLitres() * loadMgPerL() / 1000;
    }

    /**
     * What a litre takes from the bed, mg/L as CaCO3: calcium, magnesium, dissolved iron and manganese by their equivalents. The
     * trade's larger factors for iron are a margin of the setting; they exhaust nothing.
     */
    public double loadMgPerL() {
        return hardness.realMgPerL();
    }

    /**
     * The hardness to set on the controller, in its steps, with the uncertainty of the test, at least one step; mg/L as CaCO3.
     */
    public double settingMgPerL() {
        HardnessStep step = controller.hardness();
        return step.unit().toBase(Math.max(step.size(), hardness.setting(step, water.hardnessUncertaintyMgPerL())));
    }

    /** One step of the reserve of a meter that counts {@code meterLitres}. */
    public double reserveStepLitres(double meterLitres) {
        return controller.reserveStep().litres(meterLitres, meanLitres());
    }

    /** The doses to try, as they can be set, g/L of the softener's salt. */
    List<Double> dosesGramsPerLitre(Softener softener) {
        return controller.saltStep().dosesGramsPerLitre(softener, DoseChoice.lowestPoundsPerCubicFoot(water),
                water.temperatureCelsius());
    }

    /** The water after a softener that is regenerated with {@code salt}. */
    public SoftenedWater softenedWith(Salt salt) {
        return SoftenedWater.of(hardness, water.sodiumMgPerL(), salt == Salt.POTASSIUM_CHLORIDE);
    }

    /** Whether iron and manganese ask for a shorter day override than the usual one. */
    public boolean iron() {
        return MeterSettings.overrideDays(this) < practice.mostIdleDays();
    }

    /** Cautions on the water and the household, whatever the softener. */
    public Set<Caution> cautions() {
        Set<Caution> cautions = WaterCautions.of(water);
        if (water.ironAndManganeseMgPerL() > WaterCautions.IRON_STAINS_MG_PER_L && isMostlyEmpty()) {
            cautions.add(Caution.IDLE_BED_WITH_IRON);
        }
        return cautions;
    }

    /** Whether nothing is used on more days than something is. */
    public boolean isMostlyEmpty() {
        return usedShareOfDays() < 0.5;
    }

    /** Share of the days of a year on which water runs. */
    double usedShareOfDays() {
        return demand.model().occupancy().occupiedShare(days.firstDate(), Days.PER_YEAR) * demand.means().weekdaysWithUse()
                / DayOfWeek.values().length;
    }
}
