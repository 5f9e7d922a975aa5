package dev.brinebook.softener;

import dev.brinebook.guard.Figure;
import dev.brinebook.guard.NoAnswer;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.TotalCapacity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Looks at the salt: whether the refill gives the dose, and whether the dose is needed. */
final class SaltReview {

    /** Refill and dose may part by this share without a finding: whole minutes and brine that is not quite saturated. */
    private static final double ASSUMED_REFILL_SLACK = 0.08;
    /** A dose may stand above the one needed by this share without a finding. */
    private static final double ASSUMED_DOSE_SLACK = 0.10;
    private static final double ASSUMED_NAMEPLATE_SLACK = 0.05;
    /** The rule of thumb: 80 % of the nameplate. Source: [CP-NAMEPLATE]. */
    private static final double NAMEPLATE_SHARE = 0.80;

    private SaltReview() {
    }

    static List<Finding> of(Found found, Duty duty, OptionalDouble capacityNeededGrams) {
        List<Finding> findings = new ArrayList<>();
        refill(found, duty, findings);
        dose(found, duty, capacityNeededGrams, findings);
        leakage(found, duty, findings);
        return findings;
    }

    /** Whether the salt that reaches the bed is enough to keep the water below the end point of hardness. */
    private static void leakage(Found found, Duty duty, List<Finding> findings) {
        Softener softener = found.setup().softener();
        double dose = found.setup().countedDoseGramsPerLitre();
        Figure least = softener.capacity().leastSaltDoseGramsPerLitre(softener.salt());
        if (softener.holdsEndPoint(dose) || !least.exists()) {
            return;
        }
        Map<CycleStep.Kind, Double> minutes = new HashMap<>(found.setup().minutes());
        minutes.remove(CycleStep.Kind.REFILL);
        findings.add(new Finding(Finding.Code.DOSE_DOES_NOT_HOLD_END_POINT, dose, least.value(),
                Review.difference(found, found.setup().withDose(least.value(), minutes), duty)));
    }

    /** Capacity of the bed once refill and dose are as the findings ask, grams as CaCO3. */
    static double mendedCapacityGrams(Found found, Duty duty, OptionalDouble capacityNeededGrams) {
        Setup setup = found.setup();
        OptionalDouble better = betterDose(found, duty, capacityNeededGrams);
        double dose = better.isPresent() ? better.getAsDouble()
                : refillMissesDose(found) ? found.statedDoseGramsPerLitre() : setup.saltDoseGramsPerLitre();
        return setup.withDose(dose, setup.minutes()).capacityGrams();
    }

    private static boolean refillMissesDose(Found found) {
        double stated = found.statedDoseGramsPerLitre();
        return found.setup().minutes().get(CycleStep.Kind.REFILL) != null
                && Math.abs(found.setup().saltDoseGramsPerLitre() - stated) > ASSUMED_REFILL_SLACK * stated;
    }

    private static void refill(Found found, Duty duty, List<Finding> findings) {
        if (!refillMissesDose(found)) {
            return;
        }
        double minutes = found.setup().minutes().get(CycleStep.Kind.REFILL);
        double stated = found.statedDoseGramsPerLitre();
        double real = found.setup().saltDoseGramsPerLitre();
        double celsius = duty.water().temperatureCelsius();
        double needed = found.setup().softener().cycleDesign(stated, celsius).cycle().step(CycleStep.Kind.REFILL)
                .minutes();
        Map<CycleStep.Kind, Double> corrected = new HashMap<>(found.setup().minutes());
        corrected.put(CycleStep.Kind.REFILL, needed);
        findings.add(new Finding(real < stated ? Finding.Code.REFILL_BELOW_DOSE : Finding.Code.REFILL_ABOVE_DOSE, minutes,
                needed, Review.difference(found, found.setup().withDose(stated, corrected), duty)));
    }

    private static void dose(Found found, Duty duty, OptionalDouble capacityNeededGrams, List<Finding> findings) {
        OptionalDouble better = betterDose(found, duty, capacityNeededGrams);
        if (better.isEmpty()) {
            return;
        }
        double needed = capacityNeededGrams.getAsDouble();
        double litres = found.setup().softener().bed().resinLitres();
        boolean rule = found.meter() != null && found.meter().capacityGrams().isPresent()
                && Math.abs(needed / (NAMEPLATE_SHARE * TotalCapacity.NAMEPLATE_GRAMS_PER_LITRE * litres) - 1)
                <= ASSUMED_NAMEPLATE_SLACK;
        Map<CycleStep.Kind, Double> minutes = new HashMap<>(found.setup().minutes());
        minutes.remove(CycleStep.Kind.REFILL);
        findings.add(new Finding(rule ? Finding.Code.NAMEPLATE_RULE : Finding.Code.MORE_SALT_THAN_NEEDED,
                found.statedDoseGramsPerLitre(), better.getAsDouble(),
                Review.difference(found, found.setup().withDose(better.getAsDouble(), minutes), duty)));
    }

    /** The dose for the capacity that is used, g/L, where the one meant is clearly higher. */
    private static OptionalDouble betterDose(Found found, Duty duty, OptionalDouble capacityNeededGrams) {
        if (capacityNeededGrams.isEmpty()) {
            return OptionalDouble.empty();
        }
        Softener softener = found.setup().softener();
        Figure dose = softener.capacity().saltDoseGramsPerLitre(softener.salt(),
                capacityNeededGrams.getAsDouble() / softener.bed().resinLitres());
        double lowest = softener.salt().fromSodiumChloride(SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(
                DoseChoice.lowestPoundsPerCubicFoot(duty.water())));
        double better = Math.max(lowest, dose.exists() ? dose.value() : tooMuchOrTooLittle(dose, softener));
        return found.statedDoseGramsPerLitre() > better * (1 + ASSUMED_DOSE_SLACK) ? OptionalDouble.of(better)
                : OptionalDouble.empty();
    }

    /** Capacity that is used between two regenerations: what the meter counts on, or what a clock needs. */
    static OptionalDouble capacityNeededGrams(Found found, Duty duty) {
        Policy policy = found.policy();
        if (!policy.byClock()) {
            return found.meter().capacityGrams();
        }
        Setup setup = found.setup();
        double most = setup.withDose(CapacityTable.maxSaltDoseGramsPerLitre(setup.softener().salt()), setup.minutes()).capacityGrams();
        return ClockReview.capacityThatServes(policy, setup.regeneration(duty.water().temperatureCelsius()), most, duty);
    }

    /** Where no dose gives just the capacity: the lowest that holds the end point when any gives more, else the highest. */
    private static double tooMuchOrTooLittle(Figure dose, Softener softener) {
        return dose.reason() == NoAnswer.CAPACITY_BELOW_TABLE
                ? softener.capacity().leastSaltDoseGramsPerLitre(softener.salt()).value()
                : CapacityTable.maxSaltDoseGramsPerLitre(softener.salt());
    }
}
