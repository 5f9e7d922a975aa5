// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.Discriminator;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.regeneration.MeteredByHistory;
import dev.brinebook.regeneration.MeteredDelayed;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Reserve;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.text.Localizable;
import java.math.BigDecimal;

@SchemaDescription("Reserve of a delayed meter, for the day after it decides to regenerate.")
public record ReserveRequest(
        @Property(value = "The rule: a fixed volume; a share of the meter volume; a mean day, including days with nobody at home; the "
                + "rule of thumb of about 2.2 mean days at home (2.4 for a bed of 5 days, 2.0 for one of 9); a quantile of daily use; "
                + "or the largest or the mean use of the same weekday in the last four weeks. Until a weekday has four readings, the "
                + "weekday rules use the 0.9 quantile.",
                required = true, example = "\"dayPercentile\"") @Discriminator Rule rule,
        @Property(value = "The volume.", kinds = "volume", required = true, min = 0, max = Policy.MAX_METER_LITRES,
                unit = "L") VolumeQuantity volume,
        @Property(value = "The share of the meter volume.", kinds = "share", required = true, min = 0,
                max = Reserve.MAX_SHARE, example = "0.2") BigDecimal share,
        @Property(value = "Probability that the use of a day stays below the reserve.", kinds = "dayPercentile",
                min = Reserve.MIN_PROBABILITY, max = Reserve.MAX_PROBABILITY, example = "0.90",
                byDefault = ReserveRequest.ASSUMED_PROBABILITY) BigDecimal probability) {

    /**
     * Probability that a reserve covers the next day, when none is given: 9 days of 10. The rule alone says nothing of hard
     * days in a year: the same probability gives one household a tenth of a day and another more than one.
     */
    public static final double ASSUMED_PROBABILITY = 0.90;

    /** How the reserve is found. */
    public enum Rule implements Localizable {
        VOLUME,
        SHARE,
        MEAN_DAY,
        RULE_OF_THUMB,
        DAY_PERCENTILE,
        SAME_WEEKDAY_LARGEST,
        SAME_WEEKDAY_MEAN;

        @Override
        public String textId() {
            return Localizable.idOf("reserveRule", this);
        }
    }

    /** A delayed meter with this rule. */
    public Policy toPolicy(double meterLitres, DesignConditions duty, int overrideDays) {
        return switch (rule) {
            case VOLUME -> delayed(new Reserve.FixedVolume(volume.inBase()), meterLitres, duty, overrideDays);
            case SHARE -> delayed(new Reserve.ShareOfMeter(share.doubleValue()), meterLitres, duty, overrideDays);
            case MEAN_DAY -> delayed(new Reserve.MeanDay(duty.meanLitres()), meterLitres, duty, overrideDays);
            case RULE_OF_THUMB -> delayed(new Reserve.RuleOfThumb(duty.demand().means().meanLitres()), meterLitres, duty, overrideDays);
            case DAY_PERCENTILE -> delayed(percentile(), meterLitres, duty, overrideDays);
            case SAME_WEEKDAY_LARGEST -> byHistory(MeteredByHistory.Of.LARGEST, meterLitres, duty, overrideDays);
            case SAME_WEEKDAY_MEAN -> byHistory(MeteredByHistory.Of.MEAN, meterLitres, duty, overrideDays);
        };
    }

    /** The probability of a rule that has one, else null. */
    public BigDecimal dayProbability() {
        return rule != Rule.DAY_PERCENTILE ? null : probability == null ? BigDecimal.valueOf(ASSUMED_PROBABILITY) : probability;
    }

    private Reserve percentile() {
        return new Reserve.PercentileDay(probability == null ? ASSUMED_PROBABILITY : probability.doubleValue());
    }

    private static Policy delayed(Reserve reserve, double meterLitres, DesignConditions duty, int overrideDays) {
        return new MeteredDelayed(meterLitres, litres(reserve, meterLitres, duty), overrideDays);
    }

    /** Until four weeks are known it keeps back what one day stays below with the usual probability. */
    private Policy byHistory(MeteredByHistory.Of of, double meterLitres, DesignConditions duty, int overrideDays) {
        return new MeteredByHistory(meterLitres, of, litres(percentile(), meterLitres, duty), overrideDays);
    }

    private static double litres(Reserve reserve, double meterLitres, DesignConditions duty) {
        return Math.min(Policy.MAX_METER_LITRES, reserve.litres(meterLitres, duty.demand().model().busiestMonthMeans(),
                duty.demand().variation().cv()));
    }
}
