package dev.brinebook.regeneration;

import dev.brinebook.wording.Worded;

/** What started a regeneration, with the sentence that says so. */
public enum Reason implements Worded {
    /** The time clock, whatever was used. */
    CLOCK("The clock starts it."),
    /** The meter had counted its volume, or all but the reserve. */
    METER("The meter starts it."),
    /** The longest time allowed between two regenerations had passed. */
    OVERRIDE("The day override starts it.");

    private final String words;

    Reason(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
