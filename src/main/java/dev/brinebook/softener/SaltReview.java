// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.Salt;
import dev.brinebook.resin.TotalCapacity;
import dev.brinebook.water.WaterCautions;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The salt to set: the dose of the target, and the refill that dissolves it.
 *
 * @param found the existing softener
 * @param target how it is set right
 * @param duty its design conditions
 * @param slack how far a setting may be off without being changed
 * @param doseChanges whether another dose is set
 * @param gramsPerLitre the salt that reaches the bed in the end
 */
record SaltReview(ExistingSoftener found, SetRight target, DesignConditions duty, Slack slack, boolean doseChanges, double gramsPerLitre) {

    private static final double ASSUMED_NAMEPLATE_SLACK = 0.05;
    /** The rule of thumb: 80 % of the nameplate. Source: [CP-NAMEPLATE]. */
    private static final double NAMEPLATE_SHARE = 0.80;
    /** 160 g/L is 10 lb/ft3. */
    private static final double DIGITS_OF_A_DOSE_SHARE = 5e-3;
    /** Refills are set to a tenth of a minute. */
    private static final double STEPS_PER_MINUTE = 10;

    static SaltReview of(ExistingSoftener found, SetRight target, DesignConditions duty, Slack slack) {
        double best = target.setup().saltDoseGramsPerLitre();
        double stated = found.statedDoseGramsPerLitre();
        if (!found.knows(Setting.SALT_DOSE)) {
            return new SaltReview(found, target, duty, slack, false, found.setup().saltDoseGramsPerLitre());
        }
        boolean otherInterval = found.policy().byClock() && ClockReview.changes(found, target);
        Slack forDose = otherInterval ? Slack.NONE : slack;
        boolean changes = leaks(found) || stated > best * (1 + forDose.doseAboveShare()) || stated < best * (1 - DIGITS_OF_A_DOSE_SHARE);
        double end = changes ? best : refillMisses(found, slack) ? stated : found.setup().saltDoseGramsPerLitre();
        return new SaltReview(found, target, duty, slack, changes, end);
    }

    /** Capacity that it restores in the end, grams as CaCO3. */
    double capacityGrams() {
        return found.setup().withDose(gramsPerLitre, Map.of()).capacityGrams();
    }

    List<Change> changes() {
        List<Change> changes = new ArrayList<>();
        if (doseChanges) {
            changes.add(new Change(doseCode(), Setting.SALT_DOSE, doseSet(), gramsPerLitre, setup -> setup.withDose(gramsPerLitre,
                    without(setup.minutes()))));
        }
        if (found.knows(Setting.SALT_DOSE) && refillChanges()) {
            double set = found.setup().minutes().get(CycleStep.Kind.REFILL);
            double needed = refillMinutes();
            changes.add(new Change(set < needed ? Finding.Code.REFILL_BELOW_DOSE : Finding.Code.REFILL_ABOVE_DOSE, Setting.REFILL,
                    set, inSteps(needed), setup -> setup.withDose(gramsPerLitre, without(setup.minutes()))));
        }
        return changes;
    }

    private Finding.Code doseCode() {
        if (leaks(found)) {
            return Finding.Code.DOSE_DOES_NOT_HOLD_END_POINT;
        }
        if (found.statedDoseGramsPerLitre() < gramsPerLitre) {
            return isTooLowForWater() ? Finding.Code.DOSE_TOO_LOW_FOR_WATER : Finding.Code.LESS_SALT_THAN_NEEDED;
        }
        boolean byRule = !found.policy().byClock() && found.meter().capacityGrams().isPresent()
                && isNameplateRule(found.meter().capacityGrams().getAsDouble());
        return byRule ? Finding.Code.NAMEPLATE_RULE : Finding.Code.MORE_SALT_THAN_NEEDED;
    }

    /** Whether a capacity was set by the rule, and not by what the dose restores, which may be as much. */
    private boolean isNameplateRule(double setGrams) {
        double rule = NAMEPLATE_SHARE * TotalCapacity.NAMEPLATE_GRAMS_PER_LITRE * found.setup().softener().bed().resinLitres();
        return Math.abs(setGrams / rule - 1) <= ASSUMED_NAMEPLATE_SLACK
                && setGrams < found.setup().capacityGrams() * (1 - ASSUMED_NAMEPLATE_SLACK);
    }

    /** Whether the dose does not keep its capacity in this water, whatever the bed could do without. */
    private boolean isTooLowForWater() {
        double lowest = DoseChoice.grams(found.setup().softener(), DoseChoice.lowestPoundsPerCubicFoot(duty.water()));
        return WaterCautions.lowestDosesWillNotHold(duty.water())
                && found.statedDoseGramsPerLitre() < lowest * (1 - DIGITS_OF_A_DOSE_SHARE);
    }

    private double doseSet() {
        return leaks(found) ? counted(found) : found.statedDoseGramsPerLitre();
    }

    /** Whether the dose that is meant leaves the water above the end point of hardness from the first litre on. */
    private static boolean leaks(ExistingSoftener found) {
        Softener softener = found.setup().softener();
        double dose = counted(found);
        return softener.capacity().isKnownAt(softener.salt(), dose) && !softener.holdsEndPoint(dose);
    }

    private static double counted(ExistingSoftener found) {
        Salt salt = found.setup().softener().salt();
        return Math.max(CapacityTable.minSaltDoseGramsPerLitre(salt), Math.min(CapacityTable.maxSaltDoseGramsPerLitre(salt),
                found.statedDoseGramsPerLitre()));
    }

    private static boolean refillMisses(ExistingSoftener found, Slack slack) {
        double stated = found.statedDoseGramsPerLitre();
        return found.setup().minutes().containsKey(CycleStep.Kind.REFILL)
                && Math.abs(found.setup().saltDoseGramsPerLitre() - stated) > slack.refillShare() * stated;
    }

    /** Whether the refill that is set, by a flow that is known, gives another dose than the one to set. */
    private boolean refillChanges() {
        boolean known = refillMisses(found, slack) || found.setup().minutes().containsKey(CycleStep.Kind.REFILL)
                && found.setup().softener().flows().refillLitresPerMinute().isPresent();
        return known && Math.abs(found.setup().saltDoseGramsPerLitre() - gramsPerLitre) > slack.refillShare() * gramsPerLitre;
    }

    private double refillMinutes() {
        return found.setup().softener().cycleDesign(gramsPerLitre, duty.water().temperatureCelsius()).cycle()
                .step(CycleStep.Kind.REFILL).minutes();
    }

    private static double inSteps(double minutes) {
        return Math.round(minutes * STEPS_PER_MINUTE) / STEPS_PER_MINUTE;
    }

    private static Map<CycleStep.Kind, Double> without(Map<CycleStep.Kind, Double> minutes) {
        Map<CycleStep.Kind, Double> others = new HashMap<>(minutes);
        others.remove(CycleStep.Kind.REFILL);
        return others;
    }
}
