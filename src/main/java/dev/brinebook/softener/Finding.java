package dev.brinebook.softener;

import dev.brinebook.caution.Severity;
import dev.brinebook.wording.Worded;
import java.util.Comparator;
import java.util.Objects;

/**
 * A setting found on site that should be another.
 *
 * @param code which mistake
 * @param set what is set, in the base unit of the code's measure
 * @param shouldBe what to set instead, likewise
 * @param difference what it costs in a year
 */
public record Finding(Code code, double set, double shouldBe, Setup.Difference difference) {

    /** What kind of number is set. */
    public enum Measure {
        HARDNESS, CAPACITY, SALT_DOSE, MINUTES, DAYS, VOLUME, FLOW, HOUR
    }

    /** The mistakes that are looked for, and why each is one. The constant's name is the stable code on the wire. */
    public enum Code implements Worded {
        BACKWASH_ABOVE_SUPPLY(Severity.STOP, Measure.FLOW, "CP-INSTALLATION", "The backwash asks for more water than the"
                + " supply can give, so the bed is not cleaned: a smaller drain line flow control, or a smaller tank."),
        BACKWASH_TOO_STRONG(Severity.STOP, Measure.FLOW, "RICHARDSON-ZAKI", "At the water's temperature the backwash lifts"
                + " the bed higher than the tank has room for: resin goes down the drain. Cold water lifts more."),
        BACKWASH_TOO_WEAK(Severity.WARNING, Measure.FLOW, "RICHARDSON-ZAKI", "The backwash hardly lifts the bed, so dirt and"
                + " iron stay in it: half of its depth is aimed at."),
        CAPACITY_ABOVE_DOSE(Severity.WARNING, Measure.CAPACITY, "CP-WORKING-TABLE", "The meter counts on more capacity than"
                + " the salt restores, so it waits too long and hard water passes."),
        CLOCK_INTERVAL_TOO_LONG(Severity.WARNING, Measure.DAYS, "WQP-2009", "In the days of highest use the bed is exhausted"
                + " before the clock regenerates it."),
        DOSE_DOES_NOT_HOLD_END_POINT(Severity.WARNING, Measure.SALT_DOSE, "HELFFERICH", "In this water so little salt leaves"
                + " so much hardness on the resin that the softened water is above the end point from the first litre on."),
        HARDNESS_WITHOUT_IRON(Severity.WARNING, Measure.HARDNESS, "CP-IRON-FACTORS", "The hardness set leaves out what iron,"
                + " manganese and the uncertainty of the test count for, so the meter waits too long."),
        HARDNESS_TOO_LOW(Severity.WARNING, Measure.HARDNESS, "CP-IRON-FACTORS", "The hardness set is below that of the water,"
                + " so the meter waits too long."),
        OVERRIDE_TOO_LONG_FOR_IRON(Severity.WARNING, Measure.DAYS, "CP-CYCLE", "With iron in the water the resin must be"
                + " regenerated every 3 to 4 days, whatever was used, or iron builds up on it."),
        NAMEPLATE_RULE(Severity.WARNING, Measure.SALT_DOSE, "CP-NAMEPLATE", "The capacity is 80 % of the nameplate, by"
                + " the rule of thumb, and the dose is higher than that capacity takes: less salt does the same."),
        REFILL_BELOW_DOSE(Severity.WARNING, Measure.MINUTES, "SALT-INSTITUTE", "The refill dissolves less salt than the dose"
                + " asks for, so the bed gets less capacity than is counted on. A gallon of water dissolves about 3 lb.",
                "The refill dissolves less salt than the dose asks for, so the bed gets less capacity than is counted on. A"
                + " litre of water dissolves about 0.36 kg."),
        REFILL_ABOVE_DOSE(Severity.WARNING, Measure.MINUTES, "SALT-INSTITUTE", "The refill dissolves more salt than the dose"
                + " asks for. A gallon of water dissolves about 3 lb, while a gallon of brine holds only 2.65 lb.",
                "The refill dissolves more salt than the dose asks for. A litre of water dissolves about 0.36 kg, while a"
                + " litre of brine holds only 0.32 kg."),
        REGENERATION_IN_USE_HOURS(Severity.WARNING, Measure.HOUR, "DAIAD", "It regenerates when water is used, and what is"
                + " used then is hard."),
        SLOW_RINSE_TOO_SHORT(Severity.WARNING, Measure.MINUTES, "UFC-3-240-13FN", "The step of brine and slow rinse ends"
                + " before the rinse has driven the brine out of the voids of the bed: brine is left that did not work, and"
                + " the fast rinse sends it to the drain."),
        RESERVE_TOO_SMALL(Severity.WARNING, Measure.VOLUME, "DAIAD", "The reserve does not cover the next day often enough."),
        MORE_SALT_THAN_NEEDED(Severity.INFO, Measure.SALT_DOSE, "CP-WORKING-TABLE", "A lower dose restores the capacity that"
                + " is used between regenerations: the rest of the salt is wasted."),
        CAPACITY_BELOW_DOSE(Severity.INFO, Measure.CAPACITY, "CP-WORKING-TABLE", "The meter counts on less capacity than the"
                + " salt restores, so salt and water are wasted."),
        CLOCK_INTERVAL_SHORTER_THAN_NEEDED(Severity.INFO, Measure.DAYS, "WQP-2009", "Even in the days of highest use the bed"
                + " would last longer: salt and water are wasted. A meter would see that by itself."),
        HARDNESS_TOO_HIGH(Severity.INFO, Measure.HARDNESS, "CP-IRON-FACTORS", "The hardness set is above that of the water,"
                + " so it regenerates too early."),
        NO_DAY_OVERRIDE(Severity.INFO, Measure.DAYS, "CP-CYCLE", "Without a day override an unused bed stands for weeks; 14"
                + " days are usual."),
        RESERVE_LARGER_THAN_NEEDED(Severity.INFO, Measure.VOLUME, "DAIAD", "The reserve is larger than the days of this"
                + " household ask for, and what is left of it is thrown away at each regeneration.");

        private final Severity severity;
        private final Measure measure;
        private final String sourceKey;
        private final String words;
        private final String metricWords;

        Code(Severity severity, Measure measure, String sourceKey, String words, String metricWords) {
            this.severity = severity;
            this.measure = measure;
            this.sourceKey = sourceKey;
            this.words = words;
            this.metricWords = metricWords;
        }

        Code(Severity severity, Measure measure, String sourceKey, String words) {
            this(severity, measure, sourceKey, words, words);
        }

        public Severity severity() {
            return severity;
        }

        public Measure measure() {
            return measure;
        }

        public String sourceKey() {
            return sourceKey;
        }

        @Override
        public String words() {
            return words;
        }

        @Override
        public String metricWords() {
            return metricWords;
        }
    }

    /** Gravest first, then by code. */
    public static final Comparator<Finding> ORDER = Comparator.comparing((Finding finding) -> finding.code().severity())
            .thenComparing(finding -> finding.code().name());

    public Finding {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(difference, "difference");
    }
}
