// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;

/**
 * The smallest reserve of a delayed meter that meets a service standard, in the steps in which it can be set. Hard days fall
 * as the reserve rises.
 */
public final class SmallestReserve {

    public static final double MIN_STEP_LITRES = 0.1;
    /** For a step given as a volume; a step given as a share or in days of use may be larger. */
    public static final double MAX_STEP_LITRES = 1_000;
    /** Keeps the logarithm of no hard days finite. */
    private static final double LEAST_HARD_DAYS = 1e-12;
    private static final double STEP_ROUNDING = 1e-9;
    /** Limit of the stride, in steps; strides double up to it. */
    private static final int MOST_TIMES = 1 << 20;

    private final LongRun longRun;
    private final double meterLitres;
    private final double bedLitres;
    private final int overrideDays;
    private final ServiceStandard standard;
    private final double stepLitres;
    private final int mostSteps;
    /** Litres of reserve that take the hard days down by the factor e. */
    private final double fallOffLitres;

    /** What decides a reserve. */
    record Asked(double hardnessMilligramsPerLitre, Regeneration regeneration, Policy meter, ServiceStandard standard, double stepLitres) {
    }

    private SmallestReserve(LongRun longRun, double bedLitres, Policy meter, ServiceStandard standard, double stepLitres) {
        this.longRun = longRun;
        this.bedLitres = bedLitres;
        this.standard = standard;
        this.stepLitres = Guard.within(stepLitres, MIN_STEP_LITRES, Double.MAX_VALUE, "stepLitres");
        meterLitres = meter.meterVolumeLitres();
        overrideDays = meter.overrideDays();
        fallOffLitres = longRun.fallOffLitres();
        mostSteps = (int) Math.ceil(meterLitres / stepLitres - STEP_ROUNDING);
    }

    /**
     * The reserve, in litres; none when even regenerating every night does not keep to the standard. All that the meter counts
     * is the most that can be kept back, and regenerates every night.
     *
     * @param meter the meter; its own reserve is ignored
     * @param stepLitres a reserve is a whole number of these
     * @param likelyLitres where to look first
     */
    public static OptionalResult litres(LongRun longRun, double hardnessMilligramsPerLitre, Regeneration regeneration, Policy meter,
            ServiceStandard standard, double stepLitres, double likelyLitres) {
        return longRun.smallestReserve(new Asked(hardnessMilligramsPerLitre, regeneration, meter, standard, stepLitres), asked ->
                searched(longRun, hardnessMilligramsPerLitre, regeneration, meter, standard, stepLitres, likelyLitres));
    }

    private static OptionalResult searched(LongRun longRun, double hardnessMilligramsPerLitre, Regeneration regeneration, Policy meter,
            ServiceStandard standard, double stepLitres, double likelyLitres) {
        double bed = hardnessMilligramsPerLitre > 0 ? regeneration.meterVolumeLitres(hardnessMilligramsPerLitre)
                : Double.POSITIVE_INFINITY;
        SmallestReserve search = new SmallestReserve(longRun, bed, meter, standard, stepLitres);
        // Below this the bed is exhausted before the meter calls: hardly any standard allows that, and it is slow to look at.
        double outlasted = Math.max(0, meter.meterVolumeLitres() - bed * standard.stressedCapacity());
        int likely = (int) Math.min(search.mostSteps, Math.max(likelyLitres, outlasted) / stepLitres + 1);
        int steps = search.smallest(likely);
        return steps < 0 ? OptionalResult.none(NoResultReason.HARD_EVERY_NIGHT) : OptionalResult.of(search.litres(steps));
    }

    /**
     * The same for a reserve that follows the level of use: the value is for the mean level, and it is scaled with the level
     * of use.
     */
    public static OptionalResult thatFollowsUse(LongRun longRun, double hardnessMilligramsPerLitre, Regeneration regeneration, Policy meter,
            ServiceStandard standard, double stepLitres) {
        int enough = (int) Math.ceil(meter.meterVolumeLitres() / stepLitres - STEP_ROUNDING);
        int low = -1;
        if (!isEnough(enough * stepLitres, longRun, hardnessMilligramsPerLitre, regeneration, meter, standard)) {
            return OptionalResult.none(NoResultReason.HARD_EVERY_NIGHT);
        }
        while (enough - low > 1) {
            int middle = (low + enough) / 2;
            if (isEnough(middle * stepLitres, longRun, hardnessMilligramsPerLitre, regeneration, meter, standard)) {
                enough = middle;
            } else {
                low = middle;
            }
        }
        return OptionalResult.of(Math.min(meter.meterVolumeLitres(), enough * stepLitres));
    }

    private static boolean isEnough(double reserveLitres, LongRun longRun, double hardness, Regeneration regeneration, Policy meter,
            ServiceStandard standard) {
        MeteredDelayed delayed = new MeteredDelayed(meter.meterVolumeLitres(), Math.min(meter.meterVolumeLitres(), reserveLitres),
                meter.overrideDays());
        return longRun.hardDaysOfReserveThatFollowsUse(delayed, hardness, regeneration, 1) <= standard.allowed(false)
                && longRun.hardDaysOfReserveThatFollowsUse(delayed, hardness, standard.stressed(regeneration),
                standard.stressedUse()) <= standard.allowed(true);
    }

    private double litres(int steps) {
        return Math.min(meterLitres, steps * stepLitres);
    }

    /** The fewest steps that are enough for both lines of the standard, looking at {@code likely} first; -1 where none are. */
    private int smallest(int likely) {
        double asItIs = excess(likely, false);
        double underStress = excess(likely, true);
        boolean harder = underStress > asItIs;
        int steps = smallest(harder, 0, likely, harder ? underStress : asItIs);
        if (steps < 0 || steps == likely) {
            return steps;
        }
        double other = excess(steps, !harder);
        return other > 0 ? smallest(!harder, steps, steps, other) : steps;
    }

    /** The fewest steps from {@code least} on that meet one limit; -1 where none do. */
    private int smallest(boolean stressed, int least, int first, double atFirst) {
        int low = least - 1;
        int high = first;
        double atLow = Double.NaN;
        double atHigh = atFirst;
        for (int times = 1; atHigh > 0; times = Math.min(MOST_TIMES, 2 * times)) {
            if (high == mostSteps) {
                return -1;
            }
            low = high;
            atLow = atHigh;
            high = (int) Math.min(mostSteps, high + (long) times * stride(atLow));
            atHigh = excess(high, stressed);
        }
        for (int times = 1; Double.isNaN(atLow) && high > least; times = Math.min(MOST_TIMES, 2 * times)) {
            int next = (int) Math.max(least, high - (long) times * stride(-atHigh));
            double value = excess(next, stressed);
            if (value > 0) {
                low = next;
                atLow = value;
            } else {
                high = next;
                atHigh = value;
            }
        }
        boolean halve = false;
        while (high - low > 1 && !Double.isNaN(atLow)) {
            double share = halve ? 0.5 : atLow / (atLow - atHigh);
            int middle = Math.max(low + 1, Math.min(high - 1, (int) Math.ceil(low + share * (high - low))));
            int before = high - low;
            double value = excess(middle, stressed);
            if (value > 0) {
                low = middle;
                atLow = value;
            } else {
                high = middle;
                atHigh = value;
            }
            halve = high - low > before / 2;
        }
        return high;
    }

    /** Steps after which a logarithm of hard days so far off should be right: a day's use falls off by its scale or more. */
    private int stride(double excess) {
        return (int) Math.max(1, Math.min(mostSteps, Math.ceil(excess * fallOffLitres / stepLitres)));
    }

    /** Logarithm of hard days over those allowed. */
    private double excess(int steps, boolean stressed) {
        double use = stressed ? standard.stressedUse() : 1;
        double capacity = stressed ? standard.stressedCapacity() : 1;
        double days = longRun.delayedHardDays(meterLitres / use, (meterLitres - litres(steps)) / use, bedLitres * capacity / use,
                overrideDays);
        return StrictMath.log((days + LEAST_HARD_DAYS) / standard.allowed(stressed));
    }
}
