package dev.brinebook.regeneration;

import dev.brinebook.guard.Figure;
import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoAnswer;
import dev.brinebook.household.DrawnYears;

/** The smallest reserve of a delayed meter that keeps hard days as rare as asked. */
public final class SmallestReserve {

    /** A reserve is found to this share of the meter volume. */
    private static final double ACCURACY_SHARE = 1e-3;
    public static final double MAX_HARD_DAYS = 365;
    /** Digits that a reserve is worth: those found from other drawn years of an invented household differ by 8 %. */
    public static final int ASSUMED_DIGITS = 2;

    private SmallestReserve() {
    }

    /**
     * The smallest reserve, in litres, with which no more than {@code hardDaysPerYear} come on the mean of the years; none
     * when even regenerating every night does not do. Every reserve is tried on the same drawn years.
     *
     * @param meter the meter; its own reserve is not looked at
     */
    public static Figure litres(DrawnYears drawn, double hardnessMilligramsPerLitre, Regeneration regeneration,
            MeteredDelayed meter, double hardDaysPerYear) {
        Guard.within(hardDaysPerYear, 0, MAX_HARD_DAYS, "hardDaysPerYear");
        double low = 0;
        double high = meter.meterVolumeLitres();
        Tries tries = new Tries(drawn, hardnessMilligramsPerLitre, regeneration, meter);
        if (tries.hardDays(low) <= hardDaysPerYear) {
            return Figure.of(low);
        }
        if (tries.hardDays(high) > hardDaysPerYear) {
            return Figure.none(NoAnswer.HARD_EVERY_NIGHT);
        }
        while (high - low > ACCURACY_SHARE * meter.meterVolumeLitres()) {
            double middle = 0.5 * (low + high);
            if (tries.hardDays(middle) <= hardDaysPerYear) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return Figure.of(high);
    }

    private record Tries(DrawnYears drawn, double hardnessMilligramsPerLitre, Regeneration regeneration,
            MeteredDelayed meter) {

        /** Mean hard days of a year with a reserve. */
        double hardDays(double reserveLitres) {
            Policy policy = new MeteredDelayed(meter.meterVolumeLitres(), reserveLitres, meter.overrideDays());
            SimulatedYears simulated = SimulatedYears.of(drawn, hardnessMilligramsPerLitre, regeneration, policy);
            return simulated.spread(Totals::hardDays).mean();
        }
    }
}
