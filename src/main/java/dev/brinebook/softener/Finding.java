// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.caution.Severity;
import dev.brinebook.text.Localizable;
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
public record Finding(Code code, Setting setting, double set, double shouldBe, int step, SoftenerSettings.Difference difference) {

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
    public enum Code implements Localizable {
        BACKWASH_ABOVE_SUPPLY(Severity.STOP, Purpose.PROTECT, "CP-INSTALLATION"),
        BACKWASH_ABOVE_DRAIN(Severity.STOP, Purpose.PROTECT, "CP-INSTALLATION"),
        BACKWASH_TOO_STRONG(Severity.STOP, Purpose.PROTECT, "RICHARDSON-ZAKI"),
        BACKWASH_TOO_WEAK(Severity.WARNING, Purpose.PROTECT, "RICHARDSON-ZAKI"),
        CAPACITY_ABOVE_DOSE(Severity.WARNING, Purpose.SOFTEN, "CP-WORKING-TABLE"),
        CLOCK_INTERVAL_TOO_LONG(Severity.WARNING, Purpose.SOFTEN, "WQP-2009"),
        DOSE_DOES_NOT_HOLD_END_POINT(Severity.WARNING, Purpose.PROTECT, "HELFFERICH"),
        DOSE_TOO_LOW_FOR_WATER(Severity.WARNING, Purpose.PROTECT, "TRADE-EFFICIENT"),
        HARDNESS_WITHOUT_IRON(Severity.WARNING, Purpose.PROTECT, "CP-IRON-FACTORS"),
        HARDNESS_TOO_LOW(Severity.WARNING, Purpose.SOFTEN, "CP-IRON-FACTORS"),
        OVERRIDE_TOO_LONG_FOR_IRON(Severity.WARNING, Purpose.PROTECT, "CP-CYCLE"),
        OVERRIDE_TOO_LONG_FOR_HYGIENE(Severity.WARNING, Purpose.PROTECT, "DIN-19636-100"),
        NAMEPLATE_RULE(Severity.WARNING, Purpose.SAVE, "CP-NAMEPLATE"),
        REFILL_BELOW_DOSE(Severity.WARNING, Purpose.SOFTEN, "SALT-INSTITUTE"),
        REFILL_ABOVE_DOSE(Severity.WARNING, Purpose.SAVE, "SALT-INSTITUTE"),
        REGENERATION_IN_USE_HOURS(Severity.WARNING, Purpose.SOFTEN, "DAIAD"),
        SLOW_RINSE_TOO_SHORT(Severity.WARNING, Purpose.PROTECT, "UFC-3-240-13FN"),
        RESERVE_TOO_SMALL(Severity.WARNING, Purpose.SOFTEN, "DAIAD"),
        MORE_SALT_THAN_NEEDED(Severity.INFO, Purpose.SAVE, "CP-WORKING-TABLE"),
        LESS_SALT_THAN_NEEDED(Severity.INFO, Purpose.SOFTEN, "CP-WORKING-TABLE"),
        CAPACITY_BELOW_DOSE(Severity.INFO, Purpose.SAVE, "CP-WORKING-TABLE"),
        CAPACITY_FOLLOWS_DOSE(Severity.INFO, Purpose.SAVE, "CP-WORKING-TABLE"),
        CAPACITY_LEAVES_NO_MARGIN(Severity.WARNING, Purpose.SOFTEN, "CP-WORKING-TABLE"),
        CLOCK_INTERVAL_SHORTER_THAN_NEEDED(Severity.INFO, Purpose.SAVE, "WQP-2009"),
        CLOCK_INTERVAL_FOLLOWS_DOSE(Severity.INFO, Purpose.SAVE, "WQP-2009"),
        HARDNESS_TOO_HIGH(Severity.INFO, Purpose.SAVE, "CP-IRON-FACTORS"),
        NO_DAY_OVERRIDE(Severity.INFO, Purpose.PROTECT, "CP-CYCLE"),
        OVERRIDE_SHORTER_THAN_NEEDED(Severity.INFO, Purpose.SAVE, "CP-CYCLE"),
        RESERVE_LARGER_THAN_NEEDED(Severity.INFO, Purpose.SAVE, "DAIAD");

        private final Severity severity;

        private final Purpose purpose;
        private final String sourceKey;

        Code(Severity severity, Purpose purpose, String sourceKey) {
            this.severity = severity;
            this.purpose = purpose;
            this.sourceKey = sourceKey;
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
        public String textId() {
            return Localizable.idOf("finding", this);
        }
    }

    public Finding {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(setting, "setting");
        Objects.requireNonNull(difference, "difference");
    }
}
