// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.softener.DoseChoice.Option;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds the salt dose and the reserve that together cost least to run, metered, in the long run, while the service standard is kept.
 *
 * <p>Every half pound per cubic foot, or about that in the steps of the controller, is tried with the smallest reserve
 * that meets the standard. A low dose removes more hardness per salt, but regenerates more often, and each time the reserve is thrown
 * away and the rinse water is used: the cheapest lies where the two balance.
 */
public final class DoseSearch {

    /** Start of the search for a reserve. */
    private static final double LIKELY_RESERVE_DAYS = 2.2;

    private DoseSearch() {
    }

    /**
     * The dose and reserve of least expected cost that hold the end point of hardness, keep to the service standard and have
     * the salt efficiency that the duty asks for. When none has the efficiency, that limit is dropped; when none keeps to the
     * standard, the dose with fewest hard days, regenerated every night; when none holds the end point, the highest; and the
     * highest that the tables cover when the column settles to no cycle at any other. {@link DoseChoice#unmet} says what was dropped.
     *
     * <p>The fewest days between regenerations that the duty aims at do not decide: a dose just short of them would give way
     * to one that costs much more. {@link DoseChoice#prices} says what keeping to them would cost.
     */
    public static DoseChoice cheapest(Softener softener, DesignConditions duty, RunningCost cost) {
        return cheapest(softener, duty, cost, MeterStart.DELAYED);
    }

    /** The same for a meter of either kind. */
    public static DoseChoice cheapest(Softener softener, DesignConditions duty, RunningCost cost, MeterStart start) {
        return cheapest(softener, duty, cost, start, null);
    }

    /**
     * The same, found sooner where another choice is known for much the same duty.
     *
     * @param similar choice for the same softener in water of the same temperature, whose reserves are looked at first; null for none
     */
    public static DoseChoice cheapest(Softener softener, DesignConditions duty, RunningCost cost, MeterStart start, DoseChoice similar) {
        List<Option> options = new ArrayList<>();
        double likely = LIKELY_RESERVE_DAYS * duty.meanLitres();
        for (double dose : duty.dosesGramsPerLitre(softener)) {
            Option before = similar == null || options.size() >= similar.options().size() ? null : similar.options().get(options.size());
            if (before != null && before.dosed().saltDoseGramsPerLitre() == dose) {
                // Half a step below what it was, so that the same step is tried first.
                options.add(option(before.dosed(), before.regeneration(), duty, cost, start,
                        before.settings().reserveLitres() - duty.reserveStepLitres(0) / 2));
            } else if (softener.capacity().isKnownAt(softener.salt(), dose)) {
                options.add(option(softener, dose, duty, cost, start, likely));
            }
            likely = options.isEmpty() ? likely : options.get(options.size() - 1).settings().reserveLitres();
        }
        if (options.isEmpty()) {
            options.add(option(softener, CapacityTable.maxSaltDoseGramsPerLitre(softener.salt()), duty, cost, start, 0));
        }
        return DoseChoice.of(options, duty);
    }

    /**
     * The least costly option of a meter that starts at once, found sooner: doses in the order of what they cost by the mean use,
     * until one keeps to all limits; the highest where none does.
     */
    public static Option atOnce(Softener softener, DesignConditions duty, RunningCost cost, MeterStart start) {
        List<DosedSoftener> doses = new ArrayList<>();
        for (double dose : duty.dosesGramsPerLitre(softener)) {
            if (softener.capacity().isKnownAt(softener.salt(), dose) && softener.holdsEndPoint(dose)) {
                doses.add(DosedSoftener.designed(softener, dose, duty.water().temperatureCelsius()));
            }
        }
        Option last = null;
        int overrideDays = MeterSettings.overrideDays(duty);
        for (DosedSoftener dosed : doses.stream().sorted(Comparator.comparingDouble(one -> costPerDay(one, duty, overrideDays, cost)))
                .toList()) {
            Option option = option(softener, dosed.saltDoseGramsPerLitre(), duty, cost, start, 0);
            if (option.serves() && option.isEfficient(duty)) {
                return option;
            }
            last = last == null || dosed.saltDoseGramsPerLitre() > last.dosed().saltDoseGramsPerLitre() ? option : last;
        }
        return last != null ? last : option(softener, CapacityTable.maxSaltDoseGramsPerLitre(softener.salt()), duty, cost, start, 0);
    }

    /** By the capacity over the mean use, or by the override where that comes first. */
    private static double costPerDay(DosedSoftener dosed, DesignConditions duty, int overrideDays, RunningCost cost) {
        double days = Math.min(overrideDays, 1000 * dosed.capacityGrams() / duty.settingMgPerL()
                / Math.max(Double.MIN_NORMAL, duty.meanLitres()));
        return cost.ofRegeneration(dosed.saltGrams(), dosed.cycle().waterLitres()) / days;
    }

    /** One dose, metered, with the reserve that goes with it. */
    public static Option option(Softener softener, double saltDoseGramsPerLitre, DesignConditions duty, RunningCost cost) {
        return option(softener, saltDoseGramsPerLitre, duty, cost, MeterStart.DELAYED, 0);
    }

    /** The same for a meter of either kind. */
    public static Option option(Softener softener, double saltDoseGramsPerLitre, DesignConditions duty, RunningCost cost,
            MeterStart start) {
        return option(softener, saltDoseGramsPerLitre, duty, cost, start, 0);
    }

    private static Option option(Softener softener, double saltDoseGramsPerLitre, DesignConditions duty, RunningCost cost, MeterStart start,
            double likelyReserveLitres) {
        DosedSoftener dosed = DosedSoftener.designed(softener, saltDoseGramsPerLitre, duty.water().temperatureCelsius());
        return option(dosed, dosed.regeneration(), duty, cost, start, likelyReserveLitres);
    }

    private static Option option(DosedSoftener dosed, Regeneration regeneration, DesignConditions duty, RunningCost cost, MeterStart start,
            double likelyReserveLitres) {
        MeterSettings settings = MeterSettings.of(regeneration, duty, start, likelyReserveLitres);
        YearlyTotals year = duty.year(settings.policy(), regeneration);
        return new Option(dosed, regeneration, settings, year, Guard.notNegative(cost.ofYear(year), "costPerYear"));
    }
}
