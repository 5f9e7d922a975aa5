package dev.brinebook.softener;

import dev.brinebook.quantity.CapacityUnit;
import dev.brinebook.regeneration.MeteredDelayed;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Reserve;

/**
 * What to set on a delayed metered controller.
 *
 * @param hardnessGpg whole grains per US gallon
 * @param capacityGrams capacity, a whole number of hundred grains, in grams as CaCO3
 * @param meterLitres water from one regeneration to the next
 * @param reserveLitres part of it kept back for the day after the count is read
 * @param overrideDays days after which it regenerates whatever was used
 */
public record MeterSettings(int hardnessGpg, double capacityGrams, double meterLitres, double reserveLitres,
        int overrideDays) {

    /** Hour with the least use, at which a controller regenerates. Source: [CP-CYCLE]; [DAIAD] hours 2 to 4. */
    public static final int REGENERATION_HOUR = 2;
    /** Days after which a meter regenerates whatever was used, where iron would build up: 3 to 4. Source: [CP-CYCLE]. */
    public static final int OVERRIDE_DAYS_WITH_IRON = 4;
    /** Step in which controllers take a capacity, grains. */
    public static final double ASSUMED_CAPACITY_STEP_GRAINS = 100;

    /**
     * Settings that make the most of a dose without running hard more often than the duty allows.
     *
     * <p>The meter counts water: capacity over the hardness set. The reserve covers a day of the busiest weekday with the
     * probability that the duty asks for.
     */
    public static MeterSettings of(DosedSoftener dosed, Duty duty) {
        double capacity = wholeHundredsDown(dosed.capacityGrams());
        double meterLitres = Policy.nearestMeterLitres(1000 * capacity / duty.settingMgPerL());
        double reserveLitres = new Reserve.PercentileDay(duty.reserveProbability())
                .litres(meterLitres, duty.demand().model().busiestMonthMeans(), duty.demand().variation().cv());
        return new MeterSettings(duty.settingGpg(), capacity, meterLitres, reserveLitres, overrideDays(duty));
    }

    /** Days after which a meter should regenerate whatever was used. */
    static int overrideDays(Duty duty) {
        return duty.iron() ? OVERRIDE_DAYS_WITH_IRON : Policy.DEFAULT_OVERRIDE_DAYS;
    }

    /** The controller so set. */
    public Policy policy() {
        return new MeteredDelayed(meterLitres, Math.min(reserveLitres, Policy.MAX_METER_LITRES), overrideDays);
    }

    /** A capacity as a controller takes it: rounded down, so that the meter never counts on what is not there. */
    static double wholeHundredsDown(double capacityGrams) {
        double grains = CapacityUnit.GRAIN.fromBase(capacityGrams);
        double hundreds = Math.floor(grains / ASSUMED_CAPACITY_STEP_GRAINS + 1e-6);
        return CapacityUnit.GRAIN.toBase(Math.max(1, hundreds) * ASSUMED_CAPACITY_STEP_GRAINS);
    }
}
