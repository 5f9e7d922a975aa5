// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.regeneration.LongRun;
import dev.brinebook.regeneration.YearlyTotals;

/**
 * What a meter saves over a clock on the same bed, each set so that it costs least while it keeps to the same service standard.
 *
 * <p>A clock adds up days and knows nothing of the level of use: set once it must serve the highest levels, set again every season
 * only the present one. What metering saves lies between the two.
 *
 * <pre>set every season = Σ w(i) clock(q(i)),   set once = clock for the mean over q</pre>
 *
 * <p>q level of use over its mean; w its weight, three Gauss-Hermite nodes of the household's level spread.
 * Source: [DAIAD] real homes at equal observed service: 24 to 30 % of the salt over a clock set perfectly every season, 36 to 46 %
 * over one set once and left.
 *
 * @param everySeason the clock set again every season, a mean year
 * @param once the clock set once and left
 * @param onceSet how that clock is set
 * @param meter the meter
 */
public record MeteringWorth(Control everySeason, Control once, TunedClock onceSet, Control meter) {

    /**
     * What a control takes in a year.
     *
     * @param saltGrams salt
     * @param waterLitres regeneration water
     * @param hardDays hard days to be expected
     * @param regenerations regenerations
     * @param cost salt and water at their prices
     */
    public record Control(double saltGrams, double waterLitres, double hardDays, double regenerations, double cost) {

        static Control of(YearlyTotals year, RunningCost cost) {
            return new Control(year.saltGrams(), year.waterLitres(), year.hardDays(), year.regenerations(), cost.ofYear(year));
        }

        Control plus(double share, Control other) {
            return new Control(saltGrams + share * other.saltGrams, waterLitres + share * other.waterLitres,
                    hardDays + share * other.hardDays, regenerations + share * other.regenerations, cost + share * other.cost);
        }
    }

    private static final Control NOTHING = new Control(0, 0, 0, 0, 0);

    /** Of a softener, whose best meter settings are known. */
    public static MeteringWorth of(DoseChoice.Option meter, DesignConditions duty, RunningCost cost) {
        Softener softener = meter.dosed().softener();
        TunedClock onceSet = TunedClock.of(softener, duty, cost);
        Control everySeason = NOTHING;
        for (LongRun.Season season : duty.longRun().seasons()) {
            DesignConditions then = duty.atLevel(season.level());
            everySeason = everySeason.plus(season.share(), clock(TunedClock.of(softener, then, cost), softener, then, cost));
        }
        return new MeteringWorth(everySeason, clock(onceSet, softener, duty, cost), onceSet, Control.of(meter.year(), cost));
    }

    private static Control clock(TunedClock clock, Softener softener, DesignConditions duty, RunningCost cost) {
        return Control.of(duty.year(clock.clock(), DosedSoftener.designed(softener, clock.saltDoseGramsPerLitre(),
                duty.water().temperatureCelsius()).regeneration()), cost);
    }

    /** Share of the salt that the meter saves over a clock; negative where it takes more, 0 where the clock takes none. */
    public double saltSavedShare(Control clock) {
        return clock.saltGrams() > 0 ? 1 - meter.saltGrams() / clock.saltGrams() : 0;
    }
}
