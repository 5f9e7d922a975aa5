package dev.brinebook.payback;

import dev.brinebook.guard.Guard;
import dev.brinebook.household.Days;

/**
 * How often a softener regenerates in a year on yearly averages alone. Not for a household whose days are known: a
 * simulation also sees whole days, day overrides and days above the mean, and so regenerates more often.
 */
public final class ExpectedRegenerations {

    public static final double MIN_INTERVAL_DAYS = 1;
    public static final double MAX_INTERVAL_DAYS = 365;

    private ExpectedRegenerations() {
    }

    /**
     * Regenerations a year by time clock, whatever is used.
     * <pre>n = 365 / T</pre>
     * n regenerations per year; T days between regenerations, 1 to 365, the mean where weekdays are chosen.
     * <p>Source: what a time clock is, by definition
     */
    public static double byClock(double intervalDays) {
        return Days.PER_YEAR / Guard.within(intervalDays, MIN_INTERVAL_DAYS, MAX_INTERVAL_DAYS, "intervalDays");
    }

    /**
     * Regenerations a year by meter.
     * <pre>n = 365 L / (C - R)</pre>
     * n regenerations per year; L hardness charge of the mean day, g CaCO3 per day, 0 or above; C capacity, g CaCO3,
     * above R; R reserve held back, g CaCO3, 0 or above.
     * <p>Valid for constant use and a meter that regenerates the moment the reserve is reached. A meter that waits for
     * the night, with a day override, or with days above the mean regenerates more often.
     * <p>Source: [WQP-2009] days of a run are capacity over daily load; here less the reserve, and for a year
     */
    public static double byMeter(double dailyLoadGrams, double capacityGrams, double reserveGrams) {
        Guard.notNegative(dailyLoadGrams, "dailyLoadGrams");
        Guard.positive(capacityGrams, "capacityGrams");
        Guard.notNegative(reserveGrams, "reserveGrams");
        Guard.positive(capacityGrams - reserveGrams, "capacityGrams less reserveGrams");
        return Days.PER_YEAR * dailyLoadGrams / (capacityGrams - reserveGrams);
    }
}
