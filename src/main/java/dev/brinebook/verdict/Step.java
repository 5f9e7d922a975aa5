package dev.brinebook.verdict;

import dev.brinebook.wording.Worded;

/** What can be done, from the least to the most. */
public enum Step implements Worded {
    /** The water is soft enough. */
    NONE_NEEDED("no softener is needed"),
    /** Something else must be taken out of the water first. */
    TREAT_FIRST("treat the water first"),
    /** The softener as it is set. */
    AS_FOUND("leave it as it is"),
    /** The same control, its best settings. */
    SET_RIGHT("correct the settings"),
    /** A metered controller on the same bed. */
    CONVERT("convert to a metered controller"),
    /** One of {@link Improvement}. */
    IMPROVE("improve the softener"),
    /** Another softener. */
    REPLACE("replace the softener");

    private final String words;

    Step(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
