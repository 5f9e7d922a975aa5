package dev.brinebook.softener;

import dev.brinebook.caution.Severity;
import dev.brinebook.wording.Worded;
import java.util.Objects;

/**
 * A setting found on site that should be another.
 *
 * @param code why it should
 * @param setting which setting
 * @param set what is set, in the base unit of the setting's measure
 * @param shouldBe what to set instead, likewise, in the steps that a controller takes
 * @param step its place on the path from the settings found, from 1; what has the same step is changed together
 * @param difference what it costs in a year after the steps before; of several of one step the first carries all
 */
public record Finding(Code code, Setting setting, double set, double shouldBe, int step, Setup.Difference difference) {

    /** What a change is for, in the order in which changes are made. */
    public enum Purpose {
        /** It protects the bed, or the water from leakage, whatever it costs. */
        PROTECT,
        /** It stops hard water. */
        SOFTEN,
        /** It saves salt and water. */
        SAVE
    }

    /** The mistakes that are looked for, and why each is one. The constant's name is the stable code on the wire. */
    public enum Code implements Worded {
        BACKWASH_ABOVE_SUPPLY(Severity.STOP, Purpose.PROTECT, "CP-INSTALLATION", "The backwash asks for more water than the"
                + " supply can give, so the bed is not cleaned: a smaller drain line flow control, or a smaller tank."),
        BACKWASH_ABOVE_DRAIN(Severity.STOP, Purpose.PROTECT, "CP-INSTALLATION", "The backwash sends more water to the drain"
                + " than it takes: a smaller drain line flow control, or a larger drain line."),
        BACKWASH_TOO_STRONG(Severity.STOP, Purpose.PROTECT, "RICHARDSON-ZAKI", "At the water's temperature the backwash lifts"
                + " the bed higher than the tank has room for: resin goes down the drain. Cold water lifts more."),
        BACKWASH_TOO_WEAK(Severity.WARNING, Purpose.PROTECT, "RICHARDSON-ZAKI", "The backwash hardly lifts the bed, so dirt and"
                + " iron stay in it: half of its depth is aimed at."),
        CAPACITY_ABOVE_DOSE(Severity.WARNING, Purpose.SOFTEN, "CP-WORKING-TABLE", "The meter counts on more capacity than"
                + " the salt restores, so it waits too long and hard water passes."),
        CLOCK_INTERVAL_TOO_LONG(Severity.WARNING, Purpose.SOFTEN, "WQP-2009", "In the days of highest use the bed is exhausted"
                + " before the clock regenerates it."),
        DOSE_DOES_NOT_HOLD_END_POINT(Severity.WARNING, Purpose.PROTECT, "HELFFERICH", "In this water so little salt leaves"
                + " so much hardness on the resin that the softened water is above the end point from the first litre on."),
        HARDNESS_WITHOUT_IRON(Severity.WARNING, Purpose.PROTECT, "CP-IRON-FACTORS", "The hardness set leaves out what iron,"
                + " manganese and the uncertainty of the test count for, so the meter waits too long."),
        HARDNESS_TOO_LOW(Severity.WARNING, Purpose.SOFTEN, "CP-IRON-FACTORS", "The hardness set is below that of the water,"
                + " so the meter waits too long."),
        OVERRIDE_TOO_LONG_FOR_IRON(Severity.WARNING, Purpose.PROTECT, "CP-CYCLE", "With iron in the water the resin must be"
                + " regenerated every 3 to 4 days, whatever was used, or iron builds up on it."),
        NAMEPLATE_RULE(Severity.WARNING, Purpose.SAVE, "CP-NAMEPLATE", "The capacity is 80 % of the nameplate, by"
                + " the rule of thumb, and the dose is higher than that capacity takes: less salt does the same."),
        REFILL_BELOW_DOSE(Severity.WARNING, Purpose.SOFTEN, "SALT-INSTITUTE", "The refill dissolves less salt than the dose"
                + " asks for, so the bed gets less capacity than is counted on. A gallon of water dissolves about 3 lb.",
                "The refill dissolves less salt than the dose asks for, so the bed gets less capacity than is counted on. A"
                + " litre of water dissolves about 0.36 kg."),
        REFILL_ABOVE_DOSE(Severity.WARNING, Purpose.SAVE, "SALT-INSTITUTE", "The refill dissolves more salt than the dose to set"
                + " asks for. A gallon of water dissolves about 3 lb, while a gallon of brine holds only 2.65 lb.",
                "The refill dissolves more salt than the dose to set asks for. A litre of water dissolves about 0.36 kg, while a"
                + " litre of brine holds only 0.32 kg."),
        REGENERATION_IN_USE_HOURS(Severity.WARNING, Purpose.SOFTEN, "DAIAD", "It regenerates when water is used, and what is"
                + " used then is hard."),
        SLOW_RINSE_TOO_SHORT(Severity.WARNING, Purpose.PROTECT, "UFC-3-240-13FN", "The step of brine and slow rinse ends"
                + " before the rinse has driven the brine out of the voids of the bed: brine is left that did not work, and"
                + " the fast rinse sends it to the drain."),
        RESERVE_TOO_SMALL(Severity.WARNING, Purpose.SOFTEN, "DAIAD", "With the settings to set, the reserve does not"
                + " cover the next day often enough."),
        MORE_SALT_THAN_NEEDED(Severity.INFO, Purpose.SAVE, "CP-WORKING-TABLE", "A lower dose removes more hardness for"
                + " each weight of salt, and is enough for this household."),
        LESS_SALT_THAN_NEEDED(Severity.INFO, Purpose.SOFTEN, "CP-WORKING-TABLE", "A higher dose restores more capacity, so the"
                + " softener regenerates less often or runs hard less often."),
        CAPACITY_BELOW_DOSE(Severity.INFO, Purpose.SAVE, "CP-WORKING-TABLE", "The meter counts on less capacity than the"
                + " salt restores, so salt and water are wasted."),
        CAPACITY_FOLLOWS_DOSE(Severity.INFO, Purpose.SAVE, "CP-WORKING-TABLE", "The capacity set belongs to another dose. Set"
                + " what the dose to set restores."),
        CAPACITY_LEAVES_NO_MARGIN(Severity.WARNING, Purpose.SOFTEN, "CP-WORKING-TABLE", "A meter that starts immediately keeps"
                + " nothing back, so it must count on a little less than the salt restores."),
        CLOCK_INTERVAL_SHORTER_THAN_NEEDED(Severity.INFO, Purpose.SAVE, "WQP-2009", "With the dose to set, the bed lasts longer"
                + " even in the days of highest use: salt and water are wasted."),
        CLOCK_INTERVAL_FOLLOWS_DOSE(Severity.INFO, Purpose.SAVE, "WQP-2009", "A lower dose lasts fewer days, and takes less salt"
                + " over the year."),
        HARDNESS_TOO_HIGH(Severity.INFO, Purpose.SAVE, "CP-IRON-FACTORS", "The hardness set is above that of the water,"
                + " so it regenerates too early."),
        NO_DAY_OVERRIDE(Severity.INFO, Purpose.PROTECT, "CP-CYCLE", "Without a day override an unused bed stands for weeks; 14"
                + " days are usual."),
        OVERRIDE_SHORTER_THAN_NEEDED(Severity.INFO, Purpose.SAVE, "CP-CYCLE", "It regenerates before the meter asks for it,"
                + " more often than the bed needs."),
        RESERVE_LARGER_THAN_NEEDED(Severity.INFO, Purpose.SAVE, "DAIAD", "The reserve is larger than the days of this"
                + " household ask for, and what is left of it is thrown away at each regeneration.");

        private final Severity severity;
        private final Purpose purpose;
        private final String sourceKey;
        private final String words;
        private final String metricWords;

        Code(Severity severity, Purpose purpose, String sourceKey, String words, String metricWords) {
            this.severity = severity;
            this.purpose = purpose;
            this.sourceKey = sourceKey;
            this.words = words;
            this.metricWords = metricWords;
        }

        Code(Severity severity, Purpose purpose, String sourceKey, String words) {
            this(severity, purpose, sourceKey, words, words);
        }

        public Severity severity() {
            return severity;
        }

        /** What the change is for. */
        public Purpose purpose() {
            return purpose;
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

    public Finding {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(setting, "setting");
        Objects.requireNonNull(difference, "difference");
    }
}
