package dev.brinebook.regeneration;

/** What started a regeneration. */
public enum Reason {
    /** The time clock, whatever was used. */
    CLOCK,
    /** The meter had counted its volume, or all but the reserve. */
    METER,
    /** The longest time allowed between two regenerations had passed. */
    OVERRIDE
}
