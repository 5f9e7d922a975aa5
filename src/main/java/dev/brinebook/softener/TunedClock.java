// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.OptionalResult;
import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.resin.CapacityTable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The best that a clock can be set to beforehand: the interval and the dose that cost least in the long run while the service
 * standard is kept, the same that a meter is held to.
 *
 * @param clock the clock
 * @param saltDoseGramsPerLitre the dose
 * @param keepsStandard whether the standard is kept
 */
public record TunedClock(ClockEveryDays clock, double saltDoseGramsPerLitre, boolean keepsStandard) {

    /** The one that costs least to run. */
    public static TunedClock of(Softener softener, DesignConditions duty, RunningCost cost) {
        return possible(softener, duty).stream().min(Comparator.comparingDouble(clock -> {
            DosedSoftener dosed = DosedSoftener.designed(softener, clock.saltDoseGramsPerLitre(),
                    duty.water().temperatureCelsius());
            return cost.ofRegeneration(dosed.saltGrams(), dosed.cycle().waterLitres()) / clock.clock().days();
        })).orElseThrow();
    }

    /**
     * Every dose that {@link DoseChoice} looks at, with the longest interval at which it keeps to the standard, up to the usual day
     * override, but for doses that take more than a lower one for the same interval; where none does, every night
     * with the highest dose that is recommended, or that the tables cover where the
     * column settles to no cycle at that.
     */
    public static List<TunedClock> possible(Softener softener, DesignConditions duty) {
        List<TunedClock> possible = new ArrayList<>();
        Regeneration last = null;
        int lastDays = 0;
        List<Double> doses = duty.dosesGramsPerLitre(softener);
        for (double dose : doses) {
            OptionalResult held = softener.capacity().leastSaltDoseGramsPerLitre(softener.salt());
            if (held.exists() && dose >= held.value() && softener.capacity().isKnownAt(softener.salt(), dose)) {
                Regeneration each = DosedSoftener.designed(softener, dose, duty.water().temperatureCelsius()).regeneration();
                boolean more = last != null && each.capacityGrams() >= last.capacityGrams();
                int days = ClockReview.daysThatServe(more ? lastDays : 0, each, duty);
                boolean dearer = last != null && days <= lastDays && each.saltGrams() >= last.saltGrams()
                        && each.waterLitres() >= last.waterLitres();
                if (days > 0 && !dearer) {
                    possible.add(new TunedClock(new ClockEveryDays(days), dose, true));
                    last = each;
                    lastDays = days;
                }
            }
        }
        if (possible.isEmpty()) {
            double most = CapacityTable.maxSaltDoseGramsPerLitre(softener.salt());
            double usual = doses.isEmpty() ? most : doses.get(doses.size() - 1);
            possible.add(new TunedClock(new ClockEveryDays(1),
                    softener.capacity().isKnownAt(softener.salt(), usual) ? usual : most, false));
        }
        return possible;
    }
}
