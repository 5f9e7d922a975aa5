// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.LastResultCache;
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
     * The rule of thumb: about 2.2 mean days at home, somewhat more for a small bed.
     * <pre>R = m (2.4 at V = 5 m, 2.2 at 7 m, 2.0 at 9 m; straight lines between, level beyond)</pre>
     * R: reserve; m: mean day at home; V: what the meter counts down from.
     *
     * <p>Source: [DAIAD] what gave one hard day a year on average over 45 metered homes, in hindsight. It says nothing of one home.
     *
     * @param meanDayAtHomeLitres mean use of a day with somebody at home
     */
    record RuleOfThumb(double meanDayAtHomeLitres) implements Reserve {

        private static final double SMALL_BED_DAYS = 5;
        private static final double LARGE_BED_DAYS = 9;
        private static final double MOST_DAYS = 2.4;
        private static final double FEWEST_DAYS = 2.0;

        /** Refuses what no household draws. */
        public RuleOfThumb {
            Guard.within(meanDayAtHomeLitres, 0, WeekdayMeans.MAX_WEEKDAY_LITRES, "meanDayAtHomeLitres");
        }

        @Override
        public double litres(double meterVolumeLitres, WeekdayMeans means, double cv) {
            double days = meanDayAtHomeLitres == 0 ? LARGE_BED_DAYS
                    : Policy.checkedMeter(meterVolumeLitres) / meanDayAtHomeLitres;
            double share = Math.max(0, Math.min(1, (days - SMALL_BED_DAYS) / (LARGE_BED_DAYS - SMALL_BED_DAYS)));
            return meanDayAtHomeLitres * (MOST_DAYS - share * (MOST_DAYS - FEWEST_DAYS));
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

        private static final LastResultCache<Asked, Double> QUANTILE = new LastResultCache<>(asked ->
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
