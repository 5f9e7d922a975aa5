package dev.brinebook.verdict;

import dev.brinebook.wording.Worded;

/** What can be improved on a softener beyond its settings and its control. */
public enum Improvement implements Worded {
    /** A second bed of the same size, of which one is always in service. */
    SECOND_TANK("add a second tank"),
    /** The next larger standard tank, with the resin it is sold with. */
    LARGER_BED("fit a larger tank of resin"),
    /** Brine against the direction of service. */
    COUNTER_CURRENT("draw the brine against the direction of service"),
    /** Some hard water mixed in, so that the water is still soft by its class, but not without hardness. */
    MIXING_VALVE("mix some hard water in"),
    /** Cold taps stay hard. */
    HOT_WATER_ONLY("soften hot water only");

    private final String words;

    Improvement(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
