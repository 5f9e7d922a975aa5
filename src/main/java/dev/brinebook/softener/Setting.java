package dev.brinebook.softener;

import dev.brinebook.wording.Worded;

/** What is set on a softener. The constant's name is the stable name on the wire. */
public enum Setting implements Worded {
    SALT_DOSE(Group.SALT, Measure.SALT_DOSE, "salt dose"),
    REFILL(Group.SALT, Measure.MINUTES, "brine refill"),
    CAPACITY(Group.SALT, Measure.CAPACITY, "capacity"),
    HARDNESS(Group.METER, Measure.HARDNESS, "hardness"),
    RESERVE(Group.METER, Measure.VOLUME, "reserve"),
    DAY_OVERRIDE(Group.METER, Measure.DAYS, "day override"),
    INTERVAL(Group.CLOCK, Measure.DAYS, "interval"),
    BACKWASH(Group.CYCLE, Measure.FLOW, "backwash flow"),
    SLOW_RINSE(Group.CYCLE, Measure.MINUTES, "brine draw and slow rinse"),
    REGENERATION_HOUR(Group.CYCLE, Measure.HOUR, "hour of regeneration");

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
    private final String words;

    Setting(Group group, Measure measure, String words) {
        this.group = group;
        this.measure = measure;
        this.words = words;
    }

    public Group group() {
        return group;
    }

    public Measure measure() {
        return measure;
    }

    @Override
    public String words() {
        return words;
    }
}
