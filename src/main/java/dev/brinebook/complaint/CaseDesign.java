// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.complaint;

import dev.brinebook.household.Days;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleDesign;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.ExistingSoftener;
import dev.brinebook.softener.SoftenerSettings;

/**
 * What the sound softener of a case would show: what signs are measured against, in base units.
 *
 * @param suctionLitresPerMinute brine that the injector draws
 * @param drainLitresPerMinute in backwash
 * @param refillLitres water of one refill
 * @param saltKilograms of one regeneration, as set
 * @param capacityGrams hardness that this salt lets the bed take up, as CaCO₃
 * @param hardnessMgPerL raw hardness by the water test, as CaCO₃
 * @param loadMgPerL what a litre takes from the bed
 * @param litresPerDay use of a mean day
 * @param regenerationsPerDay by right settings
 * @param resinLitres as given
 */
public record CaseDesign(double suctionLitresPerMinute, double drainLitresPerMinute, double refillLitres, double saltKilograms,
        double capacityGrams, double hardnessMgPerL, double loadMgPerL, double litresPerDay, double regenerationsPerDay,
        double resinLitres) {

    /** More chloride in the first water than raw water has calls for a longer rinse. */
    public static final double CHLORIDE_LIMIT_MG_PER_L = 50;
    private static final double MINUTES_PER_HOUR = 60;

    /** Of a softener in its case. */
    public static CaseDesign of(ExistingSoftener found, DesignConditions duty) {
        SoftenerSettings setup = found.setup();
        double celsius = duty.water().temperatureCelsius();
        double saltGrams = setup.softener().saltGrams(found.statedDoseGramsPerLitre());
        Cycle cycle = setup.cycle(celsius);
        CycleFlows flows = setup.softener().flows();
        Cycle.BrineDraw brine = cycle.brine();
        double diluted = brine.bedVolumesPerHour() * setup.softener().bed().resinLitres() / MINUTES_PER_HOUR;
        Policy right = found.policy().withMeter(meterLitres(setup.capacityGrams(), duty.loadMgPerL()));
        return new CaseDesign(flows.brineSuctionLitresPerMinute().orElse(diluted * brine.saturatedLitres() / brine.dilutedLitres()),
                cycle.backwashFlow().litresPerMinute(), CycleDesign.refillLitres(setup.softener().salt(), saltGrams,
                celsius), saltGrams / 1000, setup.capacityGrams(), duty.water().hardnessMgPerL(), duty.loadMgPerL(), duty.meanLitres(),
                setup.with(right).year(duty).totals().regenerations() / Days.PER_YEAR, setup.softener().bed().resinLitres());
    }

    /** Volume at which a meter calls when the bed is exhausted. */
    static double meterLitres(double capacityGrams, double loadMgPerL) {
        return Policy.nearestMeterLitres(1000 * capacityGrams / loadMgPerL);
    }

    /** Volume that the capacity softens. */
    public double softenedLitres() {
        return 1000 * capacityGrams / loadMgPerL;
    }

    /** What 1 of a sign means, in its base unit; 1 for shares of something else. */
    public double scale(Sign sign) {
        return switch (sign) {
            case SUCTION -> suctionLitresPerMinute;
            case DRAIN_FLOW -> drainLitresPerMinute;
            case REFILL_WATER -> refillLitres;
            case SALT_BY_BOOKS -> saltKilograms;
            case BREAKTHROUGH -> capacityGrams;
            case RAW_CHANGE -> hardnessMgPerL;
            case SOFT_DAYS -> softenedLitres() / litresPerDay;
            case REGENERATION_RATE -> regenerationsPerDay;
            case METERED_USE -> litresPerDay;
            case METER_SETTING -> softenedLitres();
            case RESIN_VOLUME -> resinLitres;
            case CHLORIDE_EXCESS -> CHLORIDE_LIMIT_MG_PER_L;
            default -> 1;
        };
    }

    /** A number that was measured, in its base unit, with its standard uncertainty; unknown where the case expects none. */
    public Observation observed(Sign sign, double value, double uncertainty) {
        double one = scale(sign);
        if (!(one > 0 && one < Double.POSITIVE_INFINITY)) {
            return Observation.none(sign);
        }
        return new Observation(sign, value / one, Math.max(uncertainty / one, Diagnosis.ASSUMED_LEAST_UNCERTAINTY_SHARE));
    }
}
