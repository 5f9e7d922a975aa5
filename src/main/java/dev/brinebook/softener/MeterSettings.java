// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.OptionalResult;
import dev.brinebook.regeneration.MeteredDelayed;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.SmallestReserve;
import dev.brinebook.water.WaterCautions;

/**
 * What to set on a metered controller.
 *
 * @param start when the meter starts a regeneration
 * @param hardnessMgPerL hardness, in steps of the controller, mg/L as CaCO3
 * @param capacityGrams capacity, in steps of the controller, grams as CaCO3
 * @param meterLitres water from one regeneration to the next
 * @param reserveLitres part of it kept back for the day after the count is read; 0 where it starts at once
 * @param overrideDays days after which it regenerates whatever was used
 * @param keepsStandard whether the service standard is kept with them
 */
public record MeterSettings(MeterStart start, double hardnessMgPerL, double capacityGrams, double meterLitres, double reserveLitres,
        int overrideDays, boolean keepsStandard) {

    /** Hour with the least use, at which a controller regenerates. Source: [CP-CYCLE]; [DAIAD] hours 2 to 4. */
    public static final int REGENERATION_HOUR = 2;
    /** Fewest days after which a meter has to regenerate whatever was used, however much iron there is. Source: [WT-2010]. */
    public static final int SHORTEST_OVERRIDE_DAYS = 3;
    /** Tolerance of a rounding down, so that 14 days that come as 13.9999999999 are not 13. */
    private static final double WHOLE_TOLERANCE = 1e-9;

    /**
     * Settings that make the most of a dose within the service standard of the duty.
     *
     * <p>The meter counts water: capacity over the hardness set. The reserve is the smallest, in the steps of the controller,
     * that keeps to the standard; where none does, all that the meter counts, which regenerates every night.
     */
    public static MeterSettings of(DosedSoftener dosed, DesignConditions duty) {
        return of(dosed, duty, MeterStart.DELAYED);
    }

    /** The same for a meter of either kind. */
    public static MeterSettings of(DosedSoftener dosed, DesignConditions duty, MeterStart start) {
        return of(dosed.regeneration(), duty, start, 0);
    }

    /**
     * The same for a meter of either kind, looking at {@code likelyReserveLitres} first.
     *
     * <p>A meter that starts at once keeps nothing back. Where it does not keep to the standard with all of the capacity, what is
     * set leaves out what the bed may lack, since a meter set to all of it runs hard at the end of each run.
     */
    static MeterSettings of(Regeneration regeneration, DesignConditions duty, MeterStart start, double likelyReserveLitres) {
        int overrideDays = overrideDays(duty);
        if (start == MeterStart.DELAYED) {
            double capacity = duty.controller().capacityDownGrams(regeneration.capacityGrams());
            double meterLitres = meterLitres(capacity, duty);
            OptionalResult reserve = smallestReserve(new MeteredDelayed(meterLitres, 0, overrideDays), regeneration, duty,
                    likelyReserveLitres);
            return new MeterSettings(start, duty.settingMgPerL(), capacity, meterLitres,
                    reserve.exists() ? reserve.value() : meterLitres, overrideDays, reserve.exists());
        }
        MeterSettings full = atOnce(regeneration, duty, start, overrideDays, 1);
        return full.keepsStandard() ? full : atOnce(regeneration, duty, start, overrideDays, duty.standard().stressedCapacity());
    }

    private static MeterSettings atOnce(Regeneration regeneration, DesignConditions duty, MeterStart start, int overrideDays,
            double capacityShare) {
        double capacity = duty.controller().capacityDownGrams(capacityShare * regeneration.capacityGrams());
        double meterLitres = meterLitres(capacity, duty);
        return new MeterSettings(start, duty.settingMgPerL(), capacity, meterLitres, 0, overrideDays,
                duty.isServed(start.policy(meterLitres, 0, overrideDays), regeneration));
    }

    static double meterLitres(double capacityGrams, DesignConditions duty) {
        return Policy.nearestMeterLitres(1000 * capacityGrams / duty.settingMgPerL());
    }

    /** A delayed meter with the smallest reserve that keeps to the service standard, or all that it counts where none does. */
    public static Policy delayed(double meterLitres, int overrideDays, Regeneration regeneration, DesignConditions duty) {
        MeteredDelayed meter = new MeteredDelayed(meterLitres, 0, overrideDays);
        OptionalResult reserve = smallestReserve(meter, regeneration, duty, 0);
        return new MeteredDelayed(meterLitres, reserve.exists() ? reserve.value() : meterLitres, overrideDays);
    }

    /** The smallest reserve of a meter with which it keeps to the service standard; none when it cannot. */
    public static OptionalResult smallestReserve(Policy meter, Regeneration regeneration, DesignConditions duty, double likelyLitres) {
        return SmallestReserve.litres(duty.longRun(), duty.loadMgPerL(), regeneration, meter, duty.standard(),
                duty.reserveStepLitres(meter.meterVolumeLitres()), likelyLitres);
    }

    /** Days after which a softener should regenerate whatever was used: by its iron and manganese, and the practice of the country. */
    public static int overrideDays(DesignConditions duty) {
        double used = duty.practice().countsDaysOfUse() ? duty.usedShareOfDays() : 1;
        return Math.min(duty.practice().mostIdleDays(), overrideDays(duty.water().ironAndManganeseMgPerL() * used));
    }

    /**
     * Days after which a softener should regenerate whatever was used: so few that a litre of resin was fed no more iron and
     * manganese by then than within the usual 14 days in water at the limit of staining.
     *
     * <pre>days = 14 · 0.3 / ((Fe + Mn) u),  at most 14 and at least 3, rounded down to whole days</pre>
     *
     * <p>Fe, Mn mg/L as tested, in whatever form; u share of the days on which water runs, since none is fed on the others.
     * Validity: the same bed at both ends of the comparison, and the same use on a day on which water runs.
     * Source: [CP-CYCLE] 14 days; [NSDWR] 0.3 mg/L; [WT-2010] 3 days where there is iron or manganese.
     * Deviation: the source names three days and no concentration; here they are reached at 1.4 mg/L in a house that is always
     * lived in, so that there is no jump.
     *
     * @param metalsMgPerL (Fe + Mn) u
     */
    static int overrideDays(double metalsMgPerL) {
        double held = Policy.DEFAULT_OVERRIDE_DAYS * WaterCautions.IRON_STAINS_MG_PER_L;
        double days = Math.floor(held / metalsMgPerL + WHOLE_TOLERANCE);
        return (int) Math.max(SHORTEST_OVERRIDE_DAYS, Math.min(Policy.DEFAULT_OVERRIDE_DAYS, days));
    }

    /** The controller so set. */
    public Policy policy() {
        return start.policy(meterLitres, Math.min(reserveLitres, Policy.MAX_METER_LITRES), overrideDays);
    }
}
