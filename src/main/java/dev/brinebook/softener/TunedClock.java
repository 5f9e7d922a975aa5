package dev.brinebook.softener;

import dev.brinebook.guard.Figure;
import dev.brinebook.household.Days;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.resin.CapacityTable;

/**
 * The best that a clock can be set to: the interval and the dose that cost least without running hard on any of the duty's
 * days. It is set with hindsight, as no clock on site is.
 *
 * @param clock the clock
 * @param saltDoseGramsPerLitre the dose
 */
public record TunedClock(ClockEveryDays clock, double saltDoseGramsPerLitre) {

    /**
     * Every half pound per cubic foot with the longest interval that its capacity lasts, whichever days of the year they are,
     * up to the usual day override; where not even one day is covered, every night with the highest dose that is
     * recommended, or that the tables cover where the column settles to no cycle at that.
     */
    public static TunedClock of(Softener softener, Duty duty, RunningCost cost) {
        int longest = MeterSettings.overrideDays(duty);
        double usual = grams(softener, DoseChoice.HIGHEST_POUNDS_PER_CUBIC_FOOT);
        double highest = softener.capacity().isKnownAt(softener.salt(), usual) ? usual
                : CapacityTable.maxSaltDoseGramsPerLitre(softener.salt());
        TunedClock best = new TunedClock(new ClockEveryDays(1), highest);
        double least = Double.POSITIVE_INFINITY;
        double lowest = DoseChoice.lowestPoundsPerCubicFoot(duty.water());
        for (int step = 0; step <= DoseChoice.stepsFrom(lowest); step++) {
            double dose = grams(softener, lowest + step * DoseChoice.STEP_POUNDS_PER_CUBIC_FOOT);
            Figure held = softener.capacity().leastSaltDoseGramsPerLitre(softener.salt());
            if (!(held.exists() && dose >= held.value()) || !softener.capacity().isKnownAt(softener.salt(), dose)
                    || ClockReview.worstLoadGrams(duty, 1) > softener.capacityGrams(dose)) {
                continue;
            }
            int days = Math.min(longest, ClockReview.daysThatLast(softener.capacityGrams(dose), duty));
            DosedSoftener dosed = DosedSoftener.designed(softener, dose, duty.water().temperatureCelsius());
            double yearly = cost.ofRegeneration(dosed.saltGrams(), dosed.cycle().waterLitres()) * Days.PER_YEAR / days;
            if (yearly < least) {
                least = yearly;
                best = new TunedClock(new ClockEveryDays(days), dose);
            }
        }
        return best;
    }

    private static double grams(Softener softener, double poundsPerCubicFoot) {
        return softener.salt().fromSodiumChloride(SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(poundsPerCubicFoot));
    }
}
