// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.YearlyTotals;
import java.util.Map;
import java.util.Optional;

/**
 * The existing control, on the same bed, set so that it costs least in the long run while the service standard is kept:
 * chosen beforehand, without knowing any year, for a home whose use changes.
 *
 * @param setup all that is set
 * @param each what one regeneration restores and uses
 * @param year expected totals of a year
 * @param keepsStandard whether the service standard is kept
 * @param everySeason a year of a clock that is set again every season; absent for a meter, which follows the use by itself, and
 *     where it was not requested
 * @param metered the settings of a meter; absent for a clock
 */
public record SetRight(SoftenerSettings setup, Regeneration each, YearlyTotals year, boolean keepsStandard,
        Optional<MeteringWorth.Control> everySeason, Optional<DoseChoice.Option> metered) {

    /** The control of a softener that was found, with a drain flow that suits its bed. */
    public static SetRight of(ExistingSoftener found, DesignConditions duty, RunningCost cost) {
        Softener softener = Review.withRightDrain(found, duty);
        return found.policy().byClock() ? ofClock(softener, TunedClock.of(softener, duty, cost), Optional.empty(), duty)
                : ofMeter(DoseSearch.cheapest(softener, duty, cost, MeterStart.of(found.policy())).best());
    }

    /** The clock of {@code worth}, set once. */
    public static SetRight ofClock(Softener softener, MeteringWorth worth, DesignConditions duty) {
        return ofClock(softener, worth.onceSet(), Optional.of(worth.everySeason()), duty);
    }

    private static SetRight ofClock(Softener softener, TunedClock clock, Optional<MeteringWorth.Control> everySeason,
            DesignConditions duty) {
        DosedSoftener dosed = DosedSoftener.designed(softener, clock.saltDoseGramsPerLitre(), duty.water().temperatureCelsius());
        SoftenerSettings setup = new SoftenerSettings(softener, clock.saltDoseGramsPerLitre(), Map.of(), clock.clock(),
                MeterSettings.REGENERATION_HOUR);
        return new SetRight(setup, dosed.regeneration(), duty.year(clock.clock(), dosed.regeneration()), clock.keepsStandard(),
                everySeason, Optional.empty());
    }

    /**
     * The same with the settings found that are close enough to stay, so that it is what the findings of a review come to; unchanged
     * where a setting was not read, or the findings end elsewhere.
     */
    public SetRight reachedFrom(ExistingSoftener found, DesignConditions duty, RunningCost cost) {
        if (found.unknown().stream().anyMatch(one -> one != Setting.REGENERATION_HOUR)) {
            return this;
        }
        SoftenerSettings.Year end = Review.path(found, this, duty, cost).corrected();
        Regeneration reached = end.setup().regeneration(duty.water().temperatureCelsius());
        boolean close = Math.abs(cost.ofYear(end.totals()) - cost.ofYear(year)) <= DoseChoice.ASSUMED_EQUAL_COST_SHARE * cost.ofYear(year);
        return close && duty.isServed(end.setup().policy(), reached) == keepsStandard
                ? new SetRight(end.setup(), reached, end.totals(), keepsStandard, everySeason, metered) : this;
    }

    /** A meter with a dose and its settings. */
    public static SetRight ofMeter(DoseChoice.Option option) {
        SoftenerSettings setup = new SoftenerSettings(option.dosed().softener(), option.dosed().saltDoseGramsPerLitre(), Map.of(),
                option.settings().policy(), MeterSettings.REGENERATION_HOUR);
        return new SetRight(setup, option.dosed().regeneration(), option.year(),
                option.settings().keepsStandard() && option.holdsEndPoint(), Optional.empty(), Optional.of(option));
    }
}
