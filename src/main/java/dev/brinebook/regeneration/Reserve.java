package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.LastResult;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.WeekdayMeans;

/**
 * How much of its volume a delayed meter keeps back for the day after its count is read.
 *
 * <p>A rule may ask for more than the meter holds; that is answered as it is, and such a meter regenerates every night.
 */
public sealed interface Reserve {

    double MAX_SHARE = 0.9;
    double MIN_PROBABILITY = 0.5;
    double MAX_PROBABILITY = 0.999;

    /**
     * The reserve in litres.
     *
     * @param meterVolumeLitres what the meter counts down from
     * @param means use expected of each weekday
     * @param cv scatter of a day about its mean, {@link DayVariation#cv()}
     */
    double litres(double meterVolumeLitres, WeekdayMeans means, double cv);

    /** A volume set by hand. */
    record FixedVolume(double volumeLitres) implements Reserve {

        /** Refuses what no meter could hold. */
        public FixedVolume {
            Guard.within(volumeLitres, 0, Policy.MAX_METER_LITRES, "volumeLitres");
        }

        @Override
        public double litres(double meterVolumeLitres, WeekdayMeans means, double cv) {
            return volumeLitres;
        }
    }

    /** A share of the meter volume. */
    record ShareOfMeter(double share) implements Reserve {

        /** Refuses a share that leaves next to nothing to use. */
        public ShareOfMeter {
            Guard.within(share, 0, MAX_SHARE, "share");
        }

        @Override
        public double litres(double meterVolumeLitres, WeekdayMeans means, double cv) {
            return share * Policy.checkedMeter(meterVolumeLitres);
        }
    }

    /**
     * One mean day, days with nobody at home among them: enough on about half of the days of a house that is always lived in.
     *
     * @param meanDayLitres mean use of a day, {@link dev.brinebook.household.UseModel#meanLitres}
     */
    record MeanDay(double meanDayLitres) implements Reserve {

        /** Refuses what no household draws. */
        public MeanDay {
            Guard.within(meanDayLitres, 0, WeekdayMeans.MAX_WEEKDAY_LITRES, "meanDayLitres");
        }

        @Override
        public double litres(double meterVolumeLitres, WeekdayMeans means, double cv) {
            return meanDayLitres;
        }
    }

    /**
     * What one day of the busiest weekday stays below with the given probability.
     * <pre>R = m q(CV, p)</pre>
     * R: reserve in litres; m: mean of the weekday with the highest mean, because the count may be read on its eve;
     * q: quantile of a day's use of mean 1; CV: scatter; p: probability, {@value Reserve#MIN_PROBABILITY} to
     * {@value Reserve#MAX_PROBABILITY}.
     *
     * <p>Source: [DAIAD] gamma days.
     */
    record PercentileDay(double probability) implements Reserve {

        private record Asked(double cv, double probability) {
        }

        private static final LastResult<Asked, Double> QUANTILE = new LastResult<>(asked ->
                DayVariation.gammaQuantile(asked.cv(), asked.probability()));

        /** Refuses a reserve that fails on most days. */
        public PercentileDay {
            Guard.within(probability, MIN_PROBABILITY, MAX_PROBABILITY, "probability");
        }

        @Override
        public double litres(double meterVolumeLitres, WeekdayMeans means, double cv) {
            return means.busiestLitres() * QUANTILE.of(new Asked(cv, probability));
        }
    }
}
