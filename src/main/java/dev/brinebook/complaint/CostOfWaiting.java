// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.complaint;

import dev.brinebook.complaint.CauseTable.Factor;
import dev.brinebook.household.Days;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.ExistingSoftener;
import dev.brinebook.softener.MeterSettings;
import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a cause takes in a year while it is left, more than the same softener without it.
 *
 * @param saltKilograms negative where less is used
 * @param waterLitres to the drain, likewise
 * @param hardDays days with hard water
 */
public record CostOfWaiting(double saltKilograms, double waterLitres, double hardDays) {

    /** Less of its capacity is as good as none. */
    private static final double LEAST_SHARE = 0.01;
    /** A change below this share of a year's salt or water is the rounding of two long runs. */
    private static final double ROUNDING_SHARE = 1e-5;
    private static final double MINUTES_PER_YEAR = 60.0 * 24 * Days.PER_YEAR;

    /**
     * Of a cause, with the numbers that were measured in place of typical ones.
     *
     * @param drainLitresPerMinute what runs to the drain in service, if it was measured
     */
    public static CostOfWaiting of(Cause cause, Collection<Observation> observations, OptionalDouble drainLitresPerMinute,
            ExistingSoftener found, DesignConditions duty) {
        Map<Factor, Double> factors = factors(cause, observations);
        if (factors.get(Factor.DRAIN) > 0 && drainLitresPerMinute.isPresent()) {
            factors.put(Factor.DRAIN, drainLitresPerMinute.getAsDouble());
        }
        Regeneration sound = found.setup().regeneration(duty.water().temperatureCelsius());
        Policy right = right(cause, found, duty, sound);
        YearlyTotals without = duty.year(right, sound);
        double occupied = Days.PER_YEAR * duty.demand().model().occupiedShare();
        if (CauseTable.of(cause).stops()) {
            return new CostOfWaiting(-without.saltGrams() / 1000, -without.waterLitres(), occupied - without.hardDays());
        }
        Regeneration left = new Regeneration(Math.max(LEAST_SHARE, factors.get(Factor.CAPACITY)) * sound.capacityGrams(),
                factors.get(Factor.SALT) * sound.saltGrams(), sound.waterLitres(), sound.minutes());
        Policy policy = cause == Cause.RESERVE_SMALL ? found.policy().withMeter(right.meterVolumeLitres())
                : factors.get(Factor.METER) == 1 ? right
                : right.withMeter(Policy.nearestMeterLitres(factors.get(Factor.METER) * right.meterVolumeLitres()));
        YearlyTotals with = duty.with(factors.get(Factor.HARDNESS), factors.get(Factor.USE)).year(policy, left);
        double hardDays = factors.get(Factor.RAW) > 0 ? occupied : with.hardDays();
        return new CostOfWaiting(change(with.saltGrams(), without.saltGrams()) / 1000, change(with.waterLitres(), without.waterLitres())
                + MINUTES_PER_YEAR * factors.get(Factor.DRAIN), Math.min(Days.PER_YEAR, hardDays) - without.hardDays());
    }

    private static double change(double with, double without) {
        return Math.abs(with - without) <= ROUNDING_SHARE * without ? 0 : with - without;
    }

    /** The control as it should be: its meter at the volume that the capacity softens. */
    private static Policy right(Cause cause, ExistingSoftener found, DesignConditions duty, Regeneration sound) {
        Policy policy = found.policy();
        double litres = Policy.nearestMeterLitres(sound.meterVolumeLitres(duty.loadMgPerL()));
        return policy.byClock() ? policy : cause == Cause.RESERVE_SMALL ? MeterSettings.delayed(litres, policy.overrideDays(), sound, duty)
                : policy.withMeter(litres);
    }

    private static Map<Factor, Double> factors(Cause cause, Collection<Observation> observations) {
        CauseTable.Row row = CauseTable.of(cause);
        Map<Factor, Double> factors = new EnumMap<>(row.factors());
        Optional<Observation> severity = observations.stream().filter(one -> row.severity().equals(Optional.of(one.sign()))
                && one.isKnown()).findFirst();
        severity.ifPresent(one -> row.replaced().forEach(factor -> factors.put(factor, cause == Cause.METER_NOT_COUNTING
                ? 1 / Math.max(LEAST_SHARE, one.value()) : Math.max(LEAST_SHARE, one.value()))));
        return factors;
    }
}
