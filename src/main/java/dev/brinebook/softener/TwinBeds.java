package dev.brinebook.softener;

import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.TwinAlternating;
import java.util.Optional;

/**
 * Two beds of which one is always in service, at one salt dose: nothing is kept back for another day. Where the service standard
 * asks for it the capacity set leaves out what the bed may lack, since a meter set to all of it runs hard at the end of each run.
 *
 * @param policy what starts their regenerations
 * @param saltDoseGramsPerLitre the dose
 */
public record TwinBeds(Policy policy, double saltDoseGramsPerLitre) {

    /**
     * The dose that costs least to run of those that hold the end point, have the salt efficiency asked for and keep to the
     * service standard; the highest where none does, none where no dose has a capacity.
     *
     * <p>Held against each other by the volume of the meter over the mean use, or by the override where that comes first.
     */
    public static Optional<TwinBeds> of(Softener each, Duty duty, RunningCost cost) {
        TwinBeds best = null;
        TwinBeds last = null;
        double least = Double.POSITIVE_INFINITY;
        double lowest = DoseChoice.lowestPoundsPerCubicFoot(duty.water());
        for (int step = 0; step <= DoseChoice.stepsFrom(lowest); step++) {
            double dose = DoseChoice.grams(each, lowest + step * DoseChoice.STEP_POUNDS_PER_CUBIC_FOOT);
            if (!each.capacity().isKnownAt(each.salt(), dose)) {
                continue;
            }
            DosedSoftener dosed = DosedSoftener.designed(each, dose, duty.water().temperatureCelsius());
            last = new TwinBeds(meter(dosed.capacityGrams(), duty), dose);
            if (!duty.isServed(last.policy(), dosed.regeneration())) {
                last = new TwinBeds(meter(dosed.capacityGrams() * duty.standard().stressedCapacity(), duty), dose);
            }
            double days = Math.min(last.policy().overrideDays(), last.policy().meterVolumeLitres()
                    / Math.max(Double.MIN_NORMAL, duty.meanLitres()));
            double perDay = cost.ofRegeneration(dosed.saltGrams(), dosed.cycle().waterLitres()) / days;
            if (perDay < least && each.holdsEndPoint(dose)
                    && dosed.saltEfficiencyGramsPerGram() >= duty.minimumSaltEfficiencyGramsPerGram()
                    && duty.isServed(last.policy(), dosed.regeneration())) {
                least = perDay;
                best = last;
            }
        }
        return Optional.ofNullable(best == null ? last : best);
    }

    private static Policy meter(double capacityGrams, Duty duty) {
        return new TwinAlternating(Policy.nearestMeterLitres(1000 * MeterSettings.wholeHundredsDown(capacityGrams)
                / duty.settingMgPerL()), MeterSettings.overrideDays(duty));
    }
}
