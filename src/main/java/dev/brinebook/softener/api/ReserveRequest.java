package dev.brinebook.softener.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.quantity.api.VolumeQuantity;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Reserve;
import java.math.BigDecimal;

@About("What a delayed meter keeps back for the day after its count is read.")
public record ReserveRequest(
        @Property(value = "The rule: a fixed volume, a share of the meter volume, a mean day, or what a day stays below"
                + " with a given probability.", required = true, example = "\"dayPercentile\"") Rule rule,
        @Property(value = "With the rule volume: the volume.", min = 0, max = Policy.MAX_METER_LITRES, unit = "L")
        VolumeQuantity volume,
        @Property(value = "With the rule share: the share of the meter volume.", min = 0, max = Reserve.MAX_SHARE,
                example = "0.2") BigDecimal share,
        @Property(value = "With the rule dayPercentile: the probability.", min = Reserve.MIN_PROBABILITY,
                max = Reserve.MAX_PROBABILITY, example = "0.90", fallback = "0.90") BigDecimal probability)
        implements Checked {

    /** Probability that a reserve covers the next day, when none is given: 9 days of 10, which leaves some two hard days a year. */
    public static final double ASSUMED_PROBABILITY = 0.90;

    /** How the reserve is found. */
    public enum Rule {
        VOLUME, SHARE, MEAN_DAY, DAY_PERCENTILE
    }

    @Override
    public void check(Violations at) {
        needs(Rule.VOLUME, volume, "volume", at);
        needs(Rule.SHARE, share, "share", at);
        if (rule != null && rule != Rule.DAY_PERCENTILE && probability != null) {
            at.add("probability", Code.INCONSISTENT, "must be left out unless the rule is dayPercentile");
        }
    }

    private void needs(Rule wanted, Object value, String name, Violations at) {
        if (rule == wanted && value == null && !at.at(name).here()) {
            at.add(name, Code.MISSING, name + " is missing: the rule " + name + " needs it");
        } else if (rule != null && rule != wanted && value != null) {
            at.add(name, Code.INCONSISTENT, "must be left out unless the rule is " + name);
        }
    }

    /** The rule in the domain. */
    public Reserve toDomain() {
        return switch (rule) {
            case VOLUME -> new Reserve.FixedVolume(volume.inBase());
            case SHARE -> new Reserve.ShareOfMeter(share.doubleValue());
            case MEAN_DAY -> new Reserve.MeanDay();
            case DAY_PERCENTILE -> new Reserve.PercentileDay(
                    probability == null ? ASSUMED_PROBABILITY : probability.doubleValue());
        };
    }
}
