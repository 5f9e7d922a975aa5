// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.OptionalResult;
import dev.brinebook.household.HourlyProfile;
import dev.brinebook.regeneration.BackwashRule;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.resin.BackwashEffect;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Looks at the backwash, the slow rinse and at the hour of the regeneration. */
final class CycleReview {

    /** How many times the use of the quietest hours an hour may have without a finding. */
    private static final double ASSUMED_BUSY_HOURS_RATIO = 4;

    /** Minutes are set to a tenth. */
    private static final double STEPS_PER_MINUTE = 10;

    private CycleReview() {
    }

    /**
     * Why the drain line flow control that is fitted should be another, and which; nothing where none is known. What the
     * size of the tank decides is not judged where that is assumed.
     */
    static List<Change> backwash(ExistingSoftener found, DesignConditions duty) {
        Softener softener = found.setup().softener();
        if (softener.flows().drainLitresPerMinute().isEmpty()) {
            return List.of();
        }
        Cycle cycle = found.setup().cycle(duty.water().temperatureCelsius());
        double flow = softener.flows().drainLitresPerMinute().getAsDouble();
        double right = softener.flows().withDrain(OptionalDouble.empty()).backwash(cycle.backwashTargetLitresPerMinute())
                .litresPerMinute();
        OptionalResult expansion = cycle.backwashExpansionShare();
        double room = softener.bed().freeboardShare(softener.tankHeightMetres());
        List<Finding.Code> codes = new ArrayList<>();
        if (cycle.backwashFlow().rule() != BackwashRule.FLOW_CONTROL) {
            codes.add(cycle.backwashFlow().rule() == BackwashRule.SUPPLY ? Finding.Code.BACKWASH_ABOVE_SUPPLY
                    : Finding.Code.BACKWASH_ABOVE_DRAIN);
        }
        if (found.tank().judges(Fit.Shortcoming.NO_ROOM_FOR_BACKWASH) && (!expansion.exists() || expansion.value() > room)) {
            codes.add(Finding.Code.BACKWASH_TOO_STRONG);
        } else if (found.tank().knowsDiameter() && BackwashEffect.isWeak(expansion) && flow < right) {
            codes.add(Finding.Code.BACKWASH_TOO_WEAK);
        }
        if (codes.isEmpty() || Math.abs(flow - right) <= Slack.ROUNDING_SHARE * right) {
            return List.of();
        }
        Change change = new Change(codes.get(0), Setting.BACKWASH, flow, right, setup ->
                setup.with(setup.softener().withDrain(OptionalDouble.empty())));
        return codes.size() == 1 ? List.of(change) : List.of(change, change.also(codes.get(1)));
    }

    /**
     * The slow rinse at the dose of a setup. Reviewed only where the minutes and the flow of the injector are both known: one without
     * the other says nothing.
     */
    static Optional<Change> slowRinse(SoftenerSettings setup, DesignConditions duty) {
        CycleFlows flows = setup.softener().flows();
        Cycle cycle = setup.cycle(duty.water().temperatureCelsius());
        Double set = setup.minutes().get(CycleStep.Kind.BRINE_AND_SLOW_RINSE);
        boolean known = flows.brineLitresPerMinute().isPresent() || flows.brineSuctionLitresPerMinute().isPresent();
        if (set == null || !known || cycle.rinsesTheVoids(setup.softener().bed().bead().voidShare())) {
            return Optional.empty();
        }
        double enough = cycle.brine().drawMinutes() + cycle.brine().slowRinseMinutes();
        return Optional.of(new Change(Finding.Code.SLOW_RINSE_TOO_SHORT, Setting.SLOW_RINSE, set,
                Math.ceil(enough * STEPS_PER_MINUTE) / STEPS_PER_MINUTE, other -> {
                    Map<CycleStep.Kind, Double> longer = new HashMap<>(other.minutes());
                    longer.put(CycleStep.Kind.BRINE_AND_SLOW_RINSE, enough);
                    return other.withDose(other.saltDoseGramsPerLitre(), longer);
                }));
    }

    static Optional<Change> hour(ExistingSoftener found, DesignConditions duty) {
        int hour = found.setup().regenerationHour();
        double minutes = Math.min(HourlyProfile.MAX_MINUTES,
                found.setup().cycle(duty.water().temperatureCelsius()).totalMinutes());
        double quiet = HourlyProfile.share(MeterSettings.REGENERATION_HOUR, minutes);
        boolean busy = found.knows(Setting.REGENERATION_HOUR)
                && HourlyProfile.share(hour, minutes) > ASSUMED_BUSY_HOURS_RATIO * quiet;
        return busy ? Optional.of(new Change(Finding.Code.REGENERATION_IN_USE_HOURS, Setting.REGENERATION_HOUR, hour,
                MeterSettings.REGENERATION_HOUR, setup -> setup.atHour(MeterSettings.REGENERATION_HOUR))) : Optional.empty();
    }
}
