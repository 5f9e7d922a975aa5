// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.text.Localizable;

/** What is set on a softener. The constant's name is the stable name on the wire. */
public enum Setting implements Localizable {
    SALT_DOSE(Group.SALT, Measure.SALT_DOSE),
    REFILL(Group.SALT, Measure.MINUTES),
    CAPACITY(Group.SALT, Measure.CAPACITY),
    HARDNESS(Group.METER, Measure.HARDNESS),
    RESERVE(Group.METER, Measure.VOLUME),
    DAY_OVERRIDE(Group.METER, Measure.DAYS),
    INTERVAL(Group.CLOCK, Measure.DAYS),
    BACKWASH(Group.CYCLE, Measure.FLOW),
    SLOW_RINSE(Group.CYCLE, Measure.MINUTES),
    REGENERATION_HOUR(Group.CYCLE, Measure.HOUR);

    /** What kind of number is set. */
    public enum Measure {
        HARDNESS, CAPACITY, SALT_DOSE, MINUTES, DAYS, VOLUME, FLOW, HOUR
    }

    /** Settings that go together. */
    public enum Group {
        /** The dose, the refill that dissolves it, and the capacity that it restores. */
        SALT,
        /** What a meter counts, keeps back, and waits for at most. */
        METER,
        /** The days of a clock. */
        CLOCK,
        /** Flows, minutes and hour of the regeneration. */
        CYCLE
    }

    private final Group group;

    private final Measure measure;

    Setting(Group group, Measure measure) {
        this.group = group;
        this.measure = measure;
    }

    public Group group() {
        return group;
    }

    public Measure measure() {
        return measure;
    }

    @Override
    public String textId() {
        return Localizable.idOf("setting", this);
    }
}
