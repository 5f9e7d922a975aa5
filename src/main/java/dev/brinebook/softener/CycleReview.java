package dev.brinebook.softener;

import dev.brinebook.guard.Figure;
import dev.brinebook.household.HourlyProfile;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleDesign;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.resin.BackwashEffect;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Looks at the backwash, the slow rinse and at the hour of the regeneration. */
final class CycleReview {

    /** How many times the use of the quietest hours an hour may have without a finding. */
    private static final double ASSUMED_BUSY_HOURS_RATIO = 4;

    private CycleReview() {
    }

    static List<Finding> of(Found found, Duty duty) {
        List<Finding> findings = new ArrayList<>();
        Cycle cycle = found.setup().cycle(duty.water().temperatureCelsius());
        backwash(found, duty, cycle, findings);
        slowRinse(found, duty, cycle, findings);
        hour(found, duty, cycle, findings);
        return findings;
    }

    private static void backwash(Found found, Duty duty, Cycle cycle, List<Finding> findings) {
        Softener softener = found.setup().softener();
        double designed = CycleDesign.nextDrainFlowLitresPerMinute(cycle.backwashTargetLitresPerMinute());
        double flow = softener.flows().drainLitresPerMinute().orElse(designed);
        if (found.supplyLitresPerMinute().isPresent() && flow > found.supplyLitresPerMinute().getAsDouble()) {
            findings.add(new Finding(Finding.Code.BACKWASH_ABOVE_SUPPLY, flow, found.supplyLitresPerMinute().getAsDouble(),
                    Setup.Difference.NONE));
        }
        if (softener.flows().drainLitresPerMinute().isEmpty()) {
            return;
        }
        Figure expansion = cycle.backwashExpansionShare();
        double room = softener.bed().freeboardShare(softener.tankHeightMetres());
        Finding.Code code = !expansion.exists() || expansion.value() > room ? Finding.Code.BACKWASH_TOO_STRONG
                : expansion.value() < BackwashEffect.ASSUMED_WEAK_EXPANSION_SHARE ? Finding.Code.BACKWASH_TOO_WEAK : null;
        if (code != null && flow != designed) {
            findings.add(new Finding(code, flow, designed, Review.difference(found,
                    found.setup().with(softener.withDrain(OptionalDouble.of(designed))), duty)));
        }
    }

    /** Looked at where the minutes and the flow of the injector are both known: one without the other tells nothing. */
    private static void slowRinse(Found found, Duty duty, Cycle cycle, List<Finding> findings) {
        Setup setup = found.setup();
        CycleFlows flows = setup.softener().flows();
        Double set = setup.minutes().get(CycleStep.Kind.BRINE_AND_SLOW_RINSE);
        boolean known = flows.brineLitresPerMinute().isPresent() || flows.brineSuctionLitresPerMinute().isPresent();
        if (set == null || !known || cycle.rinsesTheVoids(setup.softener().bed().bead().voidShare())) {
            return;
        }
        double enough = cycle.brine().drawMinutes() + cycle.brine().slowRinseMinutes();
        Map<CycleStep.Kind, Double> longer = new EnumMap<>(setup.minutes());
        longer.put(CycleStep.Kind.BRINE_AND_SLOW_RINSE, enough);
        findings.add(new Finding(Finding.Code.SLOW_RINSE_TOO_SHORT, set, enough, Review.difference(found,
                setup.withDose(setup.saltDoseGramsPerLitre(), longer), duty)));
    }

    private static void hour(Found found, Duty duty, Cycle cycle, List<Finding> findings) {
        int hour = found.setup().regenerationHour();
        double minutes = Math.min(HourlyProfile.MAX_MINUTES, cycle.totalMinutes());
        double quiet = HourlyProfile.share(MeterSettings.REGENERATION_HOUR, minutes);
        if (HourlyProfile.share(hour, minutes) > ASSUMED_BUSY_HOURS_RATIO * quiet) {
            findings.add(new Finding(Finding.Code.REGENERATION_IN_USE_HOURS, hour, MeterSettings.REGENERATION_HOUR,
                    Review.difference(found, found.setup().atHour(MeterSettings.REGENERATION_HOUR), duty)));
        }
    }
}
